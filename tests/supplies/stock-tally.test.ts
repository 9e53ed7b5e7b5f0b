import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { tallyStock } from "../../src/supplies/stock-tally.ts";
import { day, stock } from "../fleet/make-rows.ts";
import { stockOf } from "./stock-of.ts";

const of = (horizonMonths: number) => {
  const policy = { ...defaultPolicy(day("2026-11-01")), horizonMonths, swapBeforeExpiryDays: 0 };
  const rows = ["2026-10-15", "2026-11-15", "2027-01-31", "2027-02-01", "2027-05-01", "2027-10-31", "2027-11-01"];
  const units = stockOf(
    rows.map((expiry, at) => stock("Pads", expiry, "Store", { quantity: 10 ** at })),
    policy,
    0.5,
  );
  return tallyStock(units, policy);
};

describe("tallyStock", () => {
  // quantities are powers of ten: each figure's digits say which rows are in it
  it("counts what is overdue, due in the first three months, and in the first year of the plan", () => {
    const { units, atPlaces } = of(36);
    expect(units).toBe(1_111_111);
    expect(atPlaces).toEqual([{ overdue: 1, soon: 110, year: 111_111 }]);
  });

  it("counts no more than the plan's months where it is shorter than a year", () => {
    expect(of(6).atPlaces).toEqual([{ overdue: 1, soon: 110, year: 1111 }]);
  });

  it("parts units by month, with what is overdue first and what comes after the plan last", () => {
    const { due, used } = of(6);
    expect(due).toEqual([[1, 10, 0, 100, 1000, 0, 0, 1_110_000]]);
    expect([...used]).toEqual([0.5 * 1110]);
  });
});
