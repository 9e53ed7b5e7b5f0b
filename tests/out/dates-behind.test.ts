import { describe, expect, it } from "vitest";
import { monthOfDay } from "../../src/calendar/month.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import type { DatedStockRow } from "../../src/fleet/rows.ts";
import { lapsesByItem } from "../../src/out/lapses.ts";
import { placesToSwap } from "../../src/out/places-to-swap.ts";
import { day, stock } from "../fleet/make-rows.ts";

const policy = { ...defaultPolicy(day("2026-11-01")), horizonMonths: 12 };

function unit(swapBy: string, place: string | null, facts: Partial<DatedStockRow> = {}, chanceUsed = 0.25) {
  const row = stock("Pads", "2028-01-31", place, facts);
  return { row, swapBy: day(swapBy), swapMonth: monthOfDay(day(swapBy)), chanceUsed };
}

describe("placesToSwap", () => {
  // By hand: places with overdue units first, then by units of the year; held and empty rows are no part of it
  it("counts overdue, soon and the year by place", () => {
    const units = [
      unit("2027-08-17", "Store", { quantity: 30 }),
      unit("2026-10-17", "AED-04"),
      unit("2027-02-10", "AED-04", { quantity: 2 }),
      unit("2027-01-31", "MD-01", { quantity: 3 }),
      unit("2027-10-31", null, { quantity: 4 }),
      unit("2027-11-01", "MD-02", { quantity: 9 }),
      unit("2027-01-01", "MD-03", { quantity: 0 }),
      unit("2027-01-01", "MD-04", { held: "damaged box" }),
    ];
    expect(placesToSwap(units, policy).map(({ place, overdue, soon, year }) => [place, overdue, soon, year])).toEqual([
      ["AED-04", 1, 0, 3],
      ["Store", 0, 0, 30],
      ["(no place given)", 0, 0, 4],
      ["MD-01", 0, 3, 3],
    ]);
  });
});

describe("lapsesByItem", () => {
  // By hand: 30 units, a quarter of them used; what is overdue, held or later than the horizon is no part of it
  it("tells what lapses inside the horizon, and what moves save of it", () => {
    const units = [
      unit("2027-08-17", "Store", { quantity: 30 }),
      unit("2026-10-31", "Store"),
      unit("2027-11-01", "Store"),
      unit("2027-08-17", "Store", { held: "recalled" }),
    ];
    const moves = [0.8, 0.46].map((unitsSaved) => ({ item: "Pads", unitsSaved }));
    expect(lapsesByItem(units, moves, policy)).toEqual([{ item: "Pads", due: 30, used: 7.5, saved: 1.26 }]);
  });
});
