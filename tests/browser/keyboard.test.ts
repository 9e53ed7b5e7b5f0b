import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { SMALL_SHEETS } from "./fixtures/small-sheets.ts";
import { openPage, startBrowser } from "./open-page.ts";
import { planned } from "./page-actions.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

/** Presses Tab until something that the selector names has the focus; never touches the mouse. */
async function tabTo(page: Page, selector: string): Promise<void> {
  for (let presses = 0; presses < 400; presses += 1) {
    if (await page.evaluate((wanted) => document.activeElement?.matches(wanted) ?? false, selector)) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`Tab never reached ${selector}`);
}

describe("the page by keyboard alone", () => {
  it("takes sheets, reads a chart, opens a pack, traces, saves, scans, changes an assumption and takes it back", async () => {
    const { page } = await openPage(browser, null);
    await tabTo(page, ".intake details > summary");
    await page.keyboard.press("Enter");
    await tabTo(page, "#pasted-rows");
    // All sheets in one paste: their tables stand one below the other.
    await page.keyboard.insertText(
      SMALL_SHEETS.map(({ buffer }) => buffer.toString().replaceAll(",", "\t")).join("\n"),
    );
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await planned(page);

    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await tabTo(page, "#ahead input[type=range]");
    const says = page.locator("#ahead output").first();
    const before = await says.textContent();
    await page.keyboard.press("ArrowRight");
    expect(await says.textContent()).not.toBe(before);

    await tabTo(page, "#packs tbody button.link");
    const serial = await page.evaluate(() => document.activeElement?.textContent);
    await page.keyboard.press("Enter");
    expect(await page.locator("#pack-choice").inputValue()).toBe(serial);

    await tabTo(page, "#trace");
    await page.keyboard.type("L1");
    await page.keyboard.press("Enter");
    await page.locator("#traced table", { hasText: "Stands in" }).waitFor();
    expect(await page.locator("#traced table", { hasText: "Stands in" }).locator("tbody tr").count()).toBe(2);

    await tabTo(page, ".downloads button");
    const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Enter")]);
    expect(download.suggestedFilename()).toBe("plan.json");

    await tabTo(page, "#scan");
    await page.keyboard.type("(01)09521234543213(17)280200(10)LOT7");
    await page.keyboard.press("Enter");
    await page.locator("#scanned tbody tr").waitFor();
    await page.keyboard.press("Escape");
    await page.locator("#scanned tbody tr").waitFor({ state: "detached" });

    await tabTo(page, "#policy-end_of_life_percent");
    await page.keyboard.press("Control+A");
    await page.keyboard.type("90");
    await page.keyboard.press("Enter");
    await page.locator(".changed").waitFor();

    await tabTo(page, "#reset-assumptions");
    await page.keyboard.press("Enter");
    await page.locator("#reset-assumptions").waitFor({ state: "detached" });
    expect(await page.locator("#policy-end_of_life_percent").inputValue()).toBe("80");
    // The button is gone; the keyboard is not thrown back to the top of the page.
    await page.waitForFunction(() => document.activeElement?.id === "assumptions-heading");
  });

  it("shows where the focus is", async () => {
    const { page } = await openPage(browser, null);
    await tabTo(page, "#try-sample");
    const outline = await page.evaluate(() => getComputedStyle(document.activeElement as Element).outlineStyle);
    expect(outline).toBe("solid");
  });
});
