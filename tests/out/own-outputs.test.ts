import { describe, expect, it } from "vitest";
import { datesCsv } from "../../src/out/dates-csv.ts";
import { ordersCsv } from "../../src/out/orders-csv.ts";
import { ordersIcs } from "../../src/out/orders-ics.ts";
import { packsCsv } from "../../src/out/packs-csv.ts";
import { traceCsv } from "../../src/out/trace-csv.ts";
import { ordersWorkbook } from "../../src/out/workbook/orders-workbook.ts";
import { canonicalRows } from "../../src/sheets/canonical-rows.ts";
import { openWorkbooks } from "../../src/sheets/open-file.ts";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import { AS_OF } from "../sheets/sheet-file.ts";
import { aPlan } from "./a-plan.ts";

const plan = aPlan();
const text = (written: string) => new TextEncoder().encode(written);

/** What the program writes that is no clean sheet, by file name. */
const WRITTEN: Record<string, Uint8Array> = {
  "orders.csv": text(ordersCsv(plan)),
  "orders.xlsx": await ordersWorkbook(plan),
  "orders.ics": text(ordersIcs(plan)),
  "packs.csv": text(packsCsv(plan)),
  "dates.csv": text(datesCsv({ ...plan, heldStock: [] })),
  "trace.csv": text(traceCsv({ stock: [], packs: [], orders: [], places: [] } as never, [], AS_OF)),
  "plan.json": text(JSON.stringify(plan)),
  "page.html": text("<!doctype html><title>Plan</title><table><tr><td>item<td>quantity</table>"),
};

describe("readSheets: what this program wrote itself", () => {
  it.each(Object.keys(WRITTEN))("reads nothing from %s", async (name) => {
    const files = [{ name, bytes: WRITTEN[name]!, fromFolder: true }];
    await openWorkbooks(files);
    const reading = readSheets(files, { asOf: AS_OF, dateOrder: null });
    expect(Object.values(canonicalRows(reading.fleet)).flat()).toEqual([]);
    expect(reading.refused).toEqual([]);
    expect(reading.findings.length).toBeGreaterThan(0);
    for (const { code } of reading.findings) expect(["own-output", "no-table"]).toContain(code);
    for (const { rows, setAside } of reading.inputs) expect(setAside).toBe(rows);
  });

  it("sets every line of a schedule aside and says where what was ordered belongs", () => {
    const { findings, setAside } = readSheets([{ name: "orders.csv", bytes: WRITTEN["orders.csv"]! }], {
      asOf: AS_OF,
      dateOrder: null,
    });
    expect(setAside.map(({ reason }) => reason)).toEqual(plan.orders.map(() => "own-output"));
    expect(findings).toMatchObject([{ code: "own-output", severity: "warning", line: 1 }]);
    expect(findings[0]!.fix).toContain("What was ordered belongs in a sheet of its own");
  });
});
