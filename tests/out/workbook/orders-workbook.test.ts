import { readXlsx } from "hucre/xlsx";
import { describe, expect, it } from "vitest";
import type { Plan } from "../../../src/out/plan-schema.ts";
import { ordersWorkbook } from "../../../src/out/workbook/orders-workbook.ts";
import { aPlan } from "../a-plan.ts";

const [line] = aPlan().orders;
const order = (changes: Partial<Plan["orders"][number]>) => ({ ...line!, ...changes });

async function tabsOf(orders: Plan["orders"]) {
  const { sheets } = await readXlsx(await ordersWorkbook(aPlan({ orders })));
  return sheets.map(({ name, rows }) => ({ name, rows }));
}

const LINE_HEADER = [
  "order_by",
  "late",
  "item",
  "quantity",
  "boxes",
  "unit_price",
  "line_cost",
  "fee_share",
  "total",
  "currency",
  "arrive_by",
  "covers_from",
  "covers_to",
  "order",
  "reason",
  "gtin",
];
const TOTALS_HEADER = ["supplier", "orders", "lines", "line_cost", "fee_share", "total", "currency"];
const day = (iso: string) => new Date(`${iso}T00:00:00Z`);

describe("ordersWorkbook", () => {
  // 32,767 characters a cell: common practice, no source
  it("clips a cell that no workbook could hold", async () => {
    const [, tab] = await tabsOf([order({ supplier: "A", item: "x".repeat(40_000) })]);
    expect(tab!.rows[1]![2]).toBe(`${"x".repeat(32_766)}\u2026`);
  });
  // By hand: 12 at 389.00 are 4668.00, with the fee 4733.00; the second order adds 100.05 and 6.10
  it("has a tab for each supplier, by name, with dates as dates and totals that are the sums of lines", async () => {
    const other = order({
      supplier: "Acre & Sons",
      order: "Acre & Sons / 2027-01-05",
      orderBy: "2027-01-05",
      item: "=pads",
      lineCost: 10_005,
      feeShare: 610,
      late: false,
    });
    const [totals, acre, fenwold, ...more] = await tabsOf([line!, other]);
    expect(more).toEqual([]);
    expect(totals).toEqual({
      name: "Totals",
      rows: [
        TOTALS_HEADER,
        ["Acre & Sons", 1, 1, 100.05, 6.1, 106.15, "EUR"],
        ["Fenwold Batteries", 1, 1, 4668, 65, 4733, "EUR"],
        ["Total", null, null, 4768.05, 71.1, 4839.15, "EUR"],
      ],
    });
    expect(fenwold!.name).toBe("Fenwold Batteries");
    const [dueBy, arriveBy] = [day("2026-11-01"), day("2026-12-13")];
    const lineRow = [dueBy, "yes", "pack-md", 12, 12, 389, 4668, 65, 4733, "EUR", arriveBy, "2026-11", "2027-04"];
    expect(fenwold!.rows.slice(0, 2)).toEqual([LINE_HEADER, [...lineRow, line!.order, line!.reason, "09521234543213"]]);
    expect(fenwold!.rows[2]!.slice(0, 10)).toEqual([null, null, "Total", null, null, null, 4668, 65, 4733, "EUR"]);
    expect(acre!.rows[1]!.slice(0, 3)).toEqual([day("2027-01-05"), "no", "'=pads"]);
  });

  it("never adds currencies, and leaves money blank where no price is known", async () => {
    const yen = order({ currency: "JPY", lineCost: 5000, feeShare: 0, unitPrice: "1000", item: "gel" });
    const free = order({ currency: "XXX", lineCost: 0, feeShare: 0, unitPrice: "0", item: "paper" });
    const [totals, fenwold] = await tabsOf([line!, yen, free]);
    expect(totals!.rows.slice(1).map((row) => [row[0], row[5], row[6]])).toEqual([
      ["Fenwold Batteries", 4733, "EUR"],
      ["Fenwold Batteries", 5000, "JPY"],
      ["Fenwold Batteries", null, null],
      ["Total", 4733, "EUR"],
      ["Total", 5000, "JPY"],
    ]);
    expect(fenwold!.rows.slice(3).map((row) => [row[2], row[5] ?? null, row[8] ?? null, row[9] ?? null])).toEqual([
      ["paper", null, null, null],
      ["Total", null, 4733, "EUR"],
      ["Total", null, 5000, "JPY"],
    ]);
  });

  it("has the totals' header alone where nothing is ordered", async () => {
    expect(await tabsOf([])).toEqual([{ name: "Totals", rows: [TOTALS_HEADER] }]);
  });
});
