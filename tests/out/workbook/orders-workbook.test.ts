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
  "forecast",
  "item",
  "gtin",
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
  "reason",
  "order",
];
const TOTALS_HEADER = ["supplier", "orders", "lines", "line_cost", "fee_share", "total", "currency"];
const NOTES = [
  "",
  "Planned as of 2026-11-01, for needs up to 2027-10.",
  "A line marked forecast leaves after the next plan, which may change it: do not order it yet.",
  "This is a planning aid only. It does not test, clear or condemn any device.",
];
const day = (iso: string) => new Date(`${iso}T00:00:00Z`);

describe("ordersWorkbook", () => {
  // 32,767 characters a cell: common practice, no source
  it("clips a cell that no workbook could hold", async () => {
    const [, tab] = await tabsOf([order({ supplier: "A", item: "x".repeat(40_000) })]);
    expect(tab!.rows[1]![3]).toBe(`${"x".repeat(32_766)}\u2026`);
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
    expect(totals!.name).toBe("Totals");
    expect(totals!.rows.slice(0, 4)).toEqual([
      TOTALS_HEADER,
      ["Acre & Sons", 1, 1, 100.05, 6.1, 106.15, "EUR"],
      ["Fenwold Batteries", 1, 1, 4668, 65, 4733, "EUR"],
      ["Total", null, null, 4768.05, 71.1, 4839.15, "EUR"],
    ]);
    expect(totals!.rows.slice(4).map(([first]) => first)).toEqual(NOTES);
    expect(fenwold!.name).toBe("Fenwold Batteries");
    const [dueBy, arriveBy] = [day("2026-11-01"), day("2026-12-13")];
    const lineRow = [
      dueBy,
      "yes",
      "no",
      "pack-md",
      "09521234543213",
      12,
      12,
      389,
      4668,
      65,
      4733,
      "EUR",
      arriveBy,
      "2026-11",
      "2027-04",
    ];
    expect(fenwold!.rows.slice(0, 2)).toEqual([LINE_HEADER, [...lineRow, line!.reason, line!.order]]);
    const before = [null, null, null, "Total", null, null, null, null];
    expect(fenwold!.rows[2]!.slice(0, 12)).toEqual([...before, 4668, 65, 4733, "EUR"]);
    // later than a month from as-of: the next plan comes before it
    expect(acre!.rows[1]!.slice(0, 4)).toEqual([day("2027-01-05"), "no", "yes", "'=pads"]);
  });

  it("never adds currencies, and leaves money blank where no price is known", async () => {
    const yen = order({ currency: "JPY", lineCost: 5000, feeShare: 0, unitPrice: "1000", item: "gel" });
    const free = order({ currency: "XXX", lineCost: 0, feeShare: 0, unitPrice: "0", item: "paper" });
    const [totals, fenwold] = await tabsOf([line!, yen, free]);
    expect(totals!.rows.slice(1, 6).map((row) => [row[0], row[5], row[6]])).toEqual([
      ["Fenwold Batteries", 4733, "EUR"],
      ["Fenwold Batteries", 5000, "JPY"],
      ["Fenwold Batteries", null, null],
      ["Total of priced lines", 4733, "EUR"],
      ["Total of priced lines", 5000, "JPY"],
    ]);
    expect(fenwold!.rows.slice(3).map((row) => [3, 7, 10, 11].map((at) => row[at] ?? null))).toEqual([
      ["paper", null, null, null],
      ["Total of priced lines", null, 4733, "EUR"],
      ["Total of priced lines", null, 5000, "JPY"],
    ]);
  });

  // By hand: 3 at 12.00 and a fee of 5.00 are 41.00; of the unpriced line the fee alone is known
  it("shows amounts that are known where no currency is named, and an order's fee where no price is", async () => {
    const plain = order({ currency: "XXX", quantity: 3, unitPrice: "12.00", lineCost: 3600, feeShare: 500 });
    const feeAlone = order({ unitPrice: "0", lineCost: 0, feeShare: 250, item: "gel" });
    const [totals, fenwold] = await tabsOf([plain, feeAlone]);
    expect(fenwold!.rows.slice(1, 3).map((row) => row.slice(7, 12))).toEqual([
      [12, 36, 5, 41, null],
      [null, null, 2.5, 2.5, "EUR"],
    ]);
    expect(totals!.rows.slice(3, 5).map((row) => row.slice(3, 7))).toEqual([
      [0, 2.5, 2.5, "EUR"],
      [36, 5, 41, null],
    ]);
  });

  // By hand: a thousand at 0.125 are 125.00, which nobody can check beside a price of 0.13; yen have no smaller unit
  it("shows a unit price with all its digits, and sums with those of their currency", async () => {
    const formatsOf = async (...orders: Plan["orders"]) => {
      const { sheets } = await readXlsx(await ordersWorkbook(aPlan({ orders })), { readStyles: true });
      return [7, 8, 10].map((column) => sheets[1]!.cells!.get(`1,${column}`)!.style!.numFmt);
    };
    const swab = order({ quantity: 1000, unitPrice: "0.125", lineCost: 12_500, feeShare: 0 });
    expect(await formatsOf(swab, line!)).toEqual(["#,##0.000", "#,##0.00", "#,##0.00"]);
    expect(await formatsOf(line!)).toEqual(["#,##0.00", "#,##0.00", "#,##0.00"]);
    const yen = order({ currency: "JPY", unitPrice: "250", lineCost: 3000, feeShare: 0 });
    expect(await formatsOf(yen)).toEqual(["#,##0", "#,##0", "#,##0"]);
    expect(await formatsOf({ ...yen, unitPrice: "250.5" })).toEqual(["#,##0.0", "#,##0", "#,##0"]);
  });

  it("has the totals' header alone where nothing is ordered", async () => {
    const [totals, ...more] = await tabsOf([]);
    expect(more).toEqual([]);
    expect(totals!.rows[0]).toEqual(TOTALS_HEADER);
    expect(totals!.rows.slice(1).map(([first]) => first)).toEqual(NOTES);
  });
});
