import type { Browser, Worker } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { openPage, startBrowser } from "./open-page.ts";
import { planned } from "./page-actions.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

/** Counts the workers that the engine's worker starts and ends from here on. */
async function countWorkers(engine: Worker): Promise<() => Promise<{ started: number; ended: number }>> {
  await engine.evaluate(() => {
    const counts = { started: 0, ended: 0 };
    const Plain = self.Worker;
    self.Worker = class extends Plain {
      constructor(url: string | URL) {
        super(url);
        counts.started++;
      }
      override terminate(): void {
        counts.ended++;
        super.terminate();
      }
    };
    Object.assign(self, { counts });
  });
  return () => engine.evaluate(() => (self as unknown as { counts: { started: number; ended: number } }).counts);
}

it("learns how items' packs fade on several processors, where there are, and ends the workers", async () => {
  const { page, complaints } = await openPage(browser, null);
  const counts = await countWorkers(page.workers()[0]!);
  await page
    .getByRole("button", { name: /sample/i })
    .first()
    .click();
  await planned(page);
  const processors = await page.evaluate(() => navigator.hardwareConcurrency);
  const { started, ended } = await counts();
  if (processors > 1) expect(started).toBeGreaterThan(1);
  expect(started).toBeLessThanOrEqual(2 * Math.min(8, processors));
  expect(ended).toBe(started);
  expect(complaints).toEqual([]);
});
