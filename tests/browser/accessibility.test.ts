import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { smallPlan, smallReading } from "./fixtures/small-plan.ts";
import { BROKEN_TESTS, SMALL_SHEETS } from "./fixtures/small-sheets.ts";
import { chartsDrawn, openPage, startBrowser } from "./open-page.ts";
import { planned } from "./page-actions.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const LEVELS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

/** Every rule of axe-core that the page breaks, with the elements that break it. */
async function violations(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  const results = await page.evaluate(
    (values) =>
      (window as unknown as { axe: { run: (options: unknown) => Promise<AxeResults> } }).axe.run({
        runOnly: { type: "tag", values },
      }),
    LEVELS,
  );
  return results.violations.flatMap((broken) => broken.nodes.map((node) => `${broken.id}: ${node.html}`));
}

/** Every rule broken by a plan from dropped sheets, with its tools in use. */
async function violationsWithTools(page: Page): Promise<string[]> {
  await page.locator("input[data-chooses=files]").setInputFiles([...SMALL_SHEETS, BROKEN_TESTS]);
  await planned(page);
  for (const summary of await page.locator("details.columns > summary").all()) await summary.click();
  await page.locator("details.columns select").first().waitFor();
  await page.getByRole("button", { name: "Correct it" }).click();
  await page.locator("#scan").fill("(01)09521234543213(17)280200(10)LOT7");
  await page.locator("#scan").press("Enter");
  await page.locator("#scanned tbody tr").waitFor();
  await page.locator("#policy-end_of_life_percent").fill("90");
  await page.locator("#policy-end_of_life_percent").press("Enter");
  await page.locator(".changed").waitFor();
  return violations(page);
}

describe("the page's accessibility, by axe-core at WCAG 2.2 AA", () => {
  for (const colorScheme of ["light", "dark"] as const) {
    for (const width of [320, 768, 1440]) {
      it(`has no violation with a plan, ${colorScheme}, ${width} px wide`, async () => {
        const data = { plan: smallPlan, reading: smallReading };
        const { page } = await openPage(browser, data, { colorScheme, viewport: { width, height: 900 } });
        await chartsDrawn(page);
        for (const details of await page.locator("details > summary").all()) await details.click();
        expect(await violations(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      });

      it(`has no violation with its tools in use, ${colorScheme}, ${width} px wide`, async () => {
        const { page } = await openPage(browser, null, { colorScheme, viewport: { width, height: 900 } });
        expect(await violationsWithTools(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      });

      it(`has no violation without a plan, ${colorScheme}, ${width} px wide`, async () => {
        const { page } = await openPage(browser, null, { colorScheme, viewport: { width, height: 900 } });
        await page.locator("details > summary").first().click();
        expect(await violations(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      });
    }
  }
});
