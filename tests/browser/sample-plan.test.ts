import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { readXlsx } from "hucre/xlsx";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { budgetText } from "../../src/out/budget-text.ts";
import { folderWith } from "../folders.ts";
import { openPage, startBrowser } from "./open-page.ts";
import { planned, saved, savedBy } from "./page-actions.ts";

const SAMPLE = readdirSync("sample-data")
  .filter((name) => name.endsWith(".csv"))
  .map((name) => join("sample-data", name));

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

/** Drops files on the page, as a hand would. */
async function drop(page: Page, paths: string[]): Promise<void> {
  const files = paths.map((path) => ({ name: path.split("/").at(-1)!, base64: readFileSync(path).toString("base64") }));
  await page.evaluate((dropped) => {
    const dataTransfer = new DataTransfer();
    for (const { name, base64 } of dropped) {
      dataTransfer.items.add(new File([Uint8Array.from(atob(base64), (c) => c.charCodeAt(0))], name));
    }
    document.dispatchEvent(new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }));
  }, files);
}

describe("the sample, dropped on the empty page", () => {
  it("gives the program's plan.json and tables, byte for byte, without asking the network for anything", async () => {
    const out = folderWith();
    const run = spawnSync(process.execPath, ["dist/wanecast.cjs", "plan", "sample-data", "--json", "--out", out], {
      maxBuffer: 1 << 28,
    });
    expect(run.status).toBe(0);

    const { page, complaints, requests } = await openPage(browser, null);
    await drop(page, SAMPLE);
    await planned(page);
    expect((await saved(page, "plan.json")).equals(run.stdout)).toBe(true);
    for (const file of ["orders.csv", "orders.ics", "packs.csv", "set-aside.csv"]) {
      expect((await saved(page, file)).equals(readFileSync(join(out, file))), file).toBe(true);
    }
    // as the verb orders writes it, 80 columns wide
    expect((await saved(page, "budget.txt")).toString()).toBe(
      budgetText(JSON.parse(String(run.stdout)), { width: 80 }),
    );
    const cells = async (bytes: Uint8Array) => (await readXlsx(bytes)).sheets.map(({ name, rows }) => ({ name, rows }));
    const workbook = await saved(page, "orders.xlsx");
    expect(await cells(workbook)).toEqual(await cells(readFileSync(join(out, "orders.xlsx"))));
    const clean = await savedBy(page, "#save-clean-workbook");
    expect((await cells(clean)).map(({ name }) => name)).toContain("runtime_tests");
    const { routine } = JSON.parse(
      spawnSync(process.execPath, ["dist/wanecast.cjs", "dates", "sample-data", "--json"]).stdout.toString(),
    );
    expect(routine.length).toBeGreaterThan(0);
    const tasks = page.locator("#dates table", { hasText: "Times a year" }).locator("tbody tr");
    const shown = await tasks.evaluateAll((rows) =>
      rows.map((row) => [...row.children].map(({ textContent }) => textContent)),
    );
    expect(shown.map(([item, task, , devices, perYear]) => [item, task, Number(devices), Number(perYear)])).toEqual(
      routine.map(({ item, task, devices, perYear }: Record<string, unknown>) => [item, task, devices, perYear]),
    );
    expect(complaints).toEqual([]);
    expect(requests).toEqual([]);
  });
});
