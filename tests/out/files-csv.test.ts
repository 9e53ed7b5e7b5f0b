import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { datesCsv } from "../../src/out/dates-csv.ts";
import { ordersCsv } from "../../src/out/orders-csv.ts";
import { packsCsv } from "../../src/out/packs-csv.ts";
import { setAsideCsv } from "../../src/out/set-aside-csv.ts";
import { aPlan } from "./a-plan.ts";

const rowsOf = (text: string) => Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true }).data;

describe("the CSV files", () => {
  it("ordersCsv: money in major units, one line an order line", () => {
    expect(rowsOf(ordersCsv(aPlan()))).toEqual([
      {
        order_by: "2026-11-01",
        late: "yes",
        supplier: "Fenwold Batteries",
        item: "pack-md",
        quantity: "12",
        boxes: "12",
        unit_price: "389.00",
        line_cost: "4668.00",
        fee_share: "65.00",
        currency: "EUR",
        arrive_by: "2026-12-13",
        uncovered_until: "2026-12-12",
        covers_from: "2026-11",
        covers_to: "2027-04",
        expected_waste: "0",
        reason: "Twelve packs fade.",
        order: "Fenwold Batteries / 2026-11-01",
        id: "Fenwold Batteries / pack-md / 2026-11",
        gtin: "09521234543213",
        forecast: "no",
      },
    ]);
  });
  it("ordersCsv: blank where no price is known or no currency named, and forecast after the next plan", () => {
    const [line] = aPlan().orders;
    const unpriced = { ...line!, unitPrice: "0", lineCost: 0, feeShare: 0, currency: "XXX", orderBy: "2026-12-02" };
    const unnamed = { ...line!, currency: "XXX", orderBy: "2026-12-01" };
    const rows = rowsOf(ordersCsv(aPlan({ orders: [unpriced, unnamed] })));
    expect(rows[0]).toMatchObject({ unit_price: "", line_cost: "", currency: "", forecast: "yes" });
    expect(rows[1]).toMatchObject({ unit_price: "389.00", line_cost: "4668.00", currency: "", forecast: "no" });
  });
  it("packsCsv: capacities in percent, blanks where nothing is known", () => {
    const [first, second] = rowsOf(packsCsv(aPlan()));
    expect(first).toMatchObject({
      serial: "M22-001",
      replace_by: "2027-02-14",
      capacity_percent: "80.51",
      readings: "9",
    });
    expect(second).toMatchObject({
      serial: "M25-002",
      device: "",
      replace_by: "",
      capacity_percent: "",
      basis: "typical",
    });
  });
  it("datesCsv: one line a row of dated stock", () => {
    expect(rowsOf(datesCsv({ ...aPlan(), heldStock: [] }))).toEqual([
      {
        item: "pads-adult",
        lot: "W2708",
        serial: "",
        expiry: "2027-08-31",
        swap_by: "2027-08-17",
        quantity: "30",
        place: "Central Store",
        chance_used: "0.25",
        held: "",
      },
    ]);
  });
  it("datesCsv: says which units may not be used, and why", () => {
    const [row] = aPlan().datedStock;
    const held = { ...row!, held: "box torn", installed: false };
    const text = datesCsv({ datedStock: [row!, { ...row!, lot: "B" }, row!], heldStock: [held] });
    expect(rowsOf(text).map(({ lot, held: why }) => [lot, why])).toEqual([
      ["W2708", "box torn"],
      ["B", ""],
      ["W2708", ""],
    ]);
  });
  it("setAsideCsv: rows as they stood, formulas disarmed, by file and line", () => {
    const row = { file: "b.csv", sheet: null, reason: "total-row", message: "A total." };
    const text = setAsideCsv([
      { ...row, line: 9, cells: ["Total", null, 52] },
      { ...row, file: "a.csv", line: 3, cells: ["=1+1"] },
    ]);
    expect(text).toBe(
      [
        "file,sheet,line,reason,message,cell_1,cell_2,cell_3",
        "a.csv,,3,total-row,A total.,'=1+1,,",
        "b.csv,,9,total-row,A total.,Total,,52",
        "",
      ].join("\r\n"),
    );
  });
  it("setAsideCsv: a header alone where nothing was set aside", () => {
    expect(setAsideCsv([])).toBe("file,sheet,line,reason,message\r\n");
  });
});
