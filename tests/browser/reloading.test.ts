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

describe("two windows of the page", () => {
  it("tell the first that its work is kept no longer, once the second keeps another", async () => {
    const first = await pageWithPlan();
    await reloaded(first);
    await planned(first);
    const second = await first.context().newPage();
    await second.goto(first.url());
    // the same work: nothing is lost, and nothing is said
    await second.locator(".status", { hasText: "is back" }).waitFor();
    const kept = first.locator("#sheets", { hasText: "so that a reload finds them" });
    expect(await kept.count()).toBe(1);
    await second.locator("#policy-end_of_life_percent").fill("85");
    await second.locator("#policy-end_of_life_percent").press("Enter");
    await first.locator(".status", { hasText: "a reload loses your work" }).waitFor();
    expect(await kept.count()).toBe(0);
    // a new plan is kept again, in the place of the other's
    await first.locator("#policy-end_of_life_percent").fill("75");
    await first.locator("#policy-end_of_life_percent").press("Enter");
    await kept.waitFor();
    await second.locator(".status", { hasText: "a reload loses your work" }).waitFor();
  });
});
