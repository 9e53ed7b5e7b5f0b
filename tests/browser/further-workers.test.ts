import type { Browser, Worker } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { SMALL_SHEETS } from "./fixtures/small-sheets.ts";
import { openPage, startBrowser } from "./open-page.ts";
import { planned, saved } from "./page-actions.ts";

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

/** The small fleet with packs of four items, each of which is fitted by itself. */
const FOUR_ITEMS = SMALL_SHEETS.map((sheet) => {
  if (sheet.name !== "packs.csv" && sheet.name !== "runtime_tests.csv") return sheet;
  const [head, ...lines] = sheet.buffer.toString().trim().split("\n");
  const ofItem = (item: string) => lines.map((line) => line.replace("pack-a", `pack-${item}`).replace(/^/, item));
  return { ...sheet, buffer: Buffer.from([head, ..."abcd".split("").flatMap(ofItem)].join("\n")) };
});

/** Plans them as on a machine of so many processors: plan.json, and the workers started and ended besides. */
async function planOn(processors: number) {
  const { page, complaints } = await openPage(browser, null);
  const engine = page.workers()[0]!;
  await engine.evaluate((value) => Object.defineProperty(navigator, "hardwareConcurrency", { value }), processors);
  const counts = await countWorkers(engine);
  await page.locator("input[data-chooses=files]").setInputFiles(FOUR_ITEMS);
  await planned(page);
  expect(complaints).toEqual([]);
  return { plan: (await saved(page, "plan.json")).toString(), ...(await counts()) };
}

it("learns how items' packs fade in further workers where processors are left for them, and plans the same", async () => {
  const alone = await planOn(2);
  expect(alone).toMatchObject({ started: 0, ended: 0 });
  const beside = await planOn(4);
  expect(beside.started).toBeGreaterThanOrEqual(3);
  expect(beside.ended).toBe(beside.started);
  expect(beside.plan === alone.plan).toBe(true);
});
