import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import type { DatedStockRow } from "../../src/fleet/rows.ts";
import { lapsesByItem } from "../../src/out/lapses.ts";
import { placesToSwap } from "../../src/out/places-to-swap.ts";
import { tallyStock } from "../../src/supplies/stock-tally.ts";
import { day, stock } from "../fleet/make-rows.ts";
import { stockOf } from "../supplies/stock-of.ts";

const policy = { ...defaultPolicy(day("2026-11-01")), horizonMonths: 12, swapBeforeExpiryDays: 0 };

/** Rows of one item that are to be swapped on the day of their expiry; a quarter of their units is used before. */
function quarterUsed(rows: [expiry: string, place: string | null, facts?: Partial<DatedStockRow>][]) {
  return stockOf(
    rows.map((row) => stock("Pads", ...row)),
    policy,
    0.25,
  );
}

describe("placesToSwap", () => {
  // By hand: places with overdue units first, then by units of the year; held and empty rows are no part of it
  it("counts overdue, soon and the year by place", () => {
    const units = quarterUsed([
      ["2027-08-17", "Store", { quantity: 30 }],
      ["2026-10-17", "AED-04"],
      ["2027-02-10", "AED-04", { quantity: 2 }],
      ["2027-01-31", "MD-01", { quantity: 3 }],
      ["2027-10-31", null, { quantity: 4 }],
      ["2027-11-01", "MD-02", { quantity: 9 }],
      ["2027-01-01", "MD-03", { quantity: 0 }],
      ["2027-01-01", "MD-04", { held: "damaged box" }],
    ]);
    expect(
      placesToSwap(units, tallyStock(units, policy)).map(({ place, overdue, soon, year }) => [
        place,
        overdue,
        soon,
        year,
      ]),
    ).toEqual([
      ["AED-04", 1, 0, 3],
      ["Store", 0, 0, 30],
      ["(no place given)", 0, 0, 4],
      ["MD-01", 0, 3, 3],
    ]);
  });
});

describe("a place that rows spell in two ways", () => {
  it("is one place, under the name met first", () => {
    const units = quarterUsed([
      ["2027-01-31", "Ward 3", { quantity: 2 }],
      ["2026-10-31", "ward  3 ", { quantity: 5 }],
    ]);
    expect(placesToSwap(units, tallyStock(units, policy))).toEqual([{ place: "Ward 3", overdue: 5, soon: 2, year: 7 }]);
  });
});

describe("lapsesByItem", () => {
  // By hand: 30 units, a quarter of them used; what is overdue, held or later than the horizon is no part of it
  it("tells what lapses inside the horizon, and what moves save of it", () => {
    const units = quarterUsed([
      ["2027-08-17", "Store", { quantity: 30 }],
      ["2026-10-31", "Store"],
      ["2027-11-01", "Store"],
      ["2027-08-17", "Store", { held: "recalled" }],
    ]);
    const moves = [0.8, 0.46].map((unitsSaved) => ({ item: "Pads", unitsSaved }));
    expect(lapsesByItem(units, tallyStock(units, policy), moves)).toEqual([
      { item: "Pads", due: 30, used: 7.5, saved: 1.26 },
    ]);
  });
});
