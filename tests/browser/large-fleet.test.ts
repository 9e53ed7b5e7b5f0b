import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { largeFleet } from "./fixtures/large-fleet.ts";
import { chartsDrawn, openPage, startBrowser } from "./open-page.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

const PACKS = 2500;
const PATIENCE_MS = 500_000;

describe("a fleet of 2,500 packs", () => {
  it(
    "is planned and shown; the times are printed, not judged",
    async () => {
      const { page, complaints } = await openPage(browser, null);
      await page.locator("#try-sample").waitFor();
      await page.evaluate(() => {
        const long: number[] = [];
        new PerformanceObserver((list) => long.push(...list.getEntries().map(({ duration }) => duration))).observe({
          type: "longtask",
        });
        Object.assign(window, { long });
      });
      const start = Date.now();
      await page.locator("input[data-chooses=files]").setInputFiles(largeFleet(PACKS));
      await page.locator("canvas").first().waitFor({ timeout: PATIENCE_MS });
      const first = Date.now() - start;
      await page.locator("#assumptions").waitFor({ timeout: PATIENCE_MS });
      await chartsDrawn(page);
      const whole = Date.now() - start;
      const long = await page.evaluate(() => (window as unknown as { long: number[] }).long);
      console.log(
        `${PACKS} packs: first chart after ${first} ms, whole after ${whole} ms, longest hold-up ${Math.max(0, ...long)} ms`,
      );
      expect(await page.locator(".masthead .facts").nth(1).textContent()).toContain("2,500 packs in service");
      expect(await page.locator("#packs .more").textContent()).toBe("Show all 2,500 rows");
      expect(complaints).toEqual([]);
    },
    PATIENCE_MS,
  );
});
