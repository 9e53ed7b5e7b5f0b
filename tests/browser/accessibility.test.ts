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
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(AXE);
  const results = await page.evaluate(
    (values) =>
      (window as unknown as { axe: { run: (options: unknown) => Promise<AxeResults> } }).axe.run({
        runOnly: { type: "tag", values },
        // what is in order need not be told
        resultTypes: ["violations"],
      }),
    LEVELS,
  );
  return results.violations.flatMap((broken) => broken.nodes.map((node) => `${broken.id}: ${node.html}`));
}

/** A plan from dropped sheets, with the page's tools in use. */
async function useTools(page: Page): Promise<void> {
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
  // the sections behind it are still being made anew
  await chartsDrawn(page);
}

type Scheme = "light" | "dark";

/** Each state of the page, as it is brought about in a scheme, and looked at in every width. */
const STATES: [string, (colorScheme: Scheme) => Promise<Page>][] = [
  [
    "with a plan",
    async (colorScheme) => {
      const { page } = await openPage(browser, { plan: smallPlan, reading: smallReading }, { colorScheme });
      await chartsDrawn(page);
      for (const details of await page.locator("details > summary").all()) await details.click();
      return page;
    },
  ],
  [
    "with its tools in use",
    async (colorScheme) => {
      const { page } = await openPage(browser, null, { colorScheme });
      await useTools(page);
      return page;
    },
  ],
  [
    "without a plan",
    async (colorScheme) => {
      const { page } = await openPage(browser, null, { colorScheme });
      await page.locator("details > summary").first().click();
      return page;
    },
  ],
];

describe("the page's accessibility, by axe-core at WCAG 2.2 AA", () => {
  for (const [state, reach] of STATES) {
    for (const colorScheme of ["light", "dark"] as const) {
      it(`has no violation ${state}, ${colorScheme}, 320, 768 and 1440 px wide`, async () => {
        const page = await reach(colorScheme);
        for (const width of [320, 768, 1440]) {
          await page.setViewportSize({ width, height: 900 });
          expect(await violations(page), `${width} px`).toEqual([]);
          expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
        }
      });
    }
  }
});
