import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { SMALL_SHEETS } from "./fixtures/small-sheets.ts";
import { openPage, startBrowser } from "./open-page.ts";
import { planned, reloaded } from "./page-actions.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

async function pageWithPlan() {
  const { page } = await openPage(browser, null);
  await page.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
  await planned(page);
  return page;
}

describe("a reload", () => {
  it("ends at the part that the page's address names", async () => {
    const page = await pageWithPlan();
    await page.locator(".contents a", { hasText: "Orders" }).click();
    await reloaded(page);
    await planned(page);
    // right below the line of contents, which stays at the top
    const top = () => page.locator("#orders").evaluate((part) => part.getBoundingClientRect().top);
    await expect.poll(top).toBeGreaterThan(0);
    expect(await top()).toBeLessThan(120);
  });
});
