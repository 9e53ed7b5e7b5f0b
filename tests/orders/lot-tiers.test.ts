import { describe, expect, it } from "vitest";
import type { Policy } from "../../src/fleet/policy.ts";
import type { CatalogueRow, SupplierRow } from "../../src/fleet/rows.ts";
import { lotTiersOf } from "../../src/orders/lot-tiers.ts";
import { offersForItem } from "../../src/orders/offers.ts";
import { AS_OF, catalogueRow, day, fleetWith, policyWith, supplierRow } from "./made-up.ts";

const ALONE = { lines: 0, total: 0 };

function tiersWith(row: Partial<CatalogueRow>, terms: Partial<SupplierRow>, choices: Partial<Policy> = {}) {
  const policy = policyWith(choices);
  const fleet = fleetWith({ catalogue: [catalogueRow({ item: "Pads", ...row })], suppliers: [supplierRow(terms)] });
  return lotTiersOf(offersForItem("Pads", fleet, policy, 0.95).offers[0]!, policy);
}

/** From so many units on: cents a unit, cents a lot. */
const told = (tiers: ReturnType<ReturnType<typeof tiersWith>>) =>
  tiers.map(({ fromUnits, unitCost, lotCost }) => [fromUnits, unitCost, lotCost]);

describe("lotTiersOf", () => {
  // By hand: 30 at 8.00 are 240.00; 38 are 304.00, the first over 300.00; 50 at 7.00 are 350.00
  it("begins at the minimum order, at the price there, and has a tier from where the order is free", () => {
    const priceBreaks = [
      { from: 20, price: "8.00" },
      { from: 50, price: "7.00" },
    ];
    const tiers = tiersWith({ minimumOrder: 30, priceBreaks }, { freeOver: "300.00" });
    expect(told(tiers(AS_OF, ALONE))).toEqual([
      [30, 800, 2500],
      [38, 800, 0],
      [50, 700, 0],
    ]);
  });

  // By hand: 15 at 10.00 are 150.00 and free; 20 at 6.00 are 120.00 and are not, 25 are 150.00 again
  it("charges the fee again where a lower price takes the order below the limit", () => {
    const tiers = tiersWith({ priceBreaks: [{ from: 20, price: "6.00" }] }, { freeOver: "150.00" });
    expect(told(tiers(AS_OF, ALONE))).toEqual([
      [1, 1000, 2500],
      [15, 1000, 0],
      [20, 600, 2500],
      [25, 600, 0],
    ]);
  });

  // By hand: lines for 50.00 pay the fee already; with 3 units they reach 80.00 and save it
  it("charges what the fee changes by beside other lines", () => {
    const tiers = tiersWith({}, { freeOver: "80.00" });
    expect(told(tiers(AS_OF, { lines: 1, total: 5000 }))).toEqual([
      [1, 1000, 0],
      [3, 1000, -2500],
    ]);
    expect(told(tiers(AS_OF, { lines: 1, total: 8000 }))).toEqual([[1, 1000, 0]]);
    expect(told(tiers(AS_OF, { lines: 2, total: 7000 }))).toEqual([[1, 1000, -2500]]);
  });

  // By hand: 15 at 10.00 would be free, but 15 cost 9.00 each; 17 at 9.00 are 153.00
  it("has no tier that would be free at a price which it no longer has", () => {
    const tiers = tiersWith({ priceBreaks: [{ from: 15, price: "9.00" }] }, { freeOver: "150.00" });
    expect(told(tiers(AS_OF, ALONE))).toEqual([
      [1, 1000, 2500],
      [15, 900, 2500],
      [17, 900, 0],
    ]);
  });

  // By hand: 3 for 10.00 are 3.33 1/3 each: 6 are 20.00, 4 are 13.33; 8 for 1.00 are 0.125 each: 3 are 0.375, so 0.38
  it.each([
    [3, "10.00", "20.00", 6],
    [3, "10.00", "13.33", 4],
    [3, "10.00", "13.34", 5],
    [8, "1.00", "0.38", 3],
    [8, "1.00", "0.39", 4],
  ])("rounds a line once, half up: of %i a box for %s, %s are reached by %i", (unitsPerBox, price, freeOver, units) => {
    const tiers = tiersWith({ pricePer: "box", unitsPerBox, price }, { freeOver })(AS_OF, ALONE);
    expect(tiers.map(({ fromUnits, lotCost }) => [fromUnits, lotCost])).toEqual([
      [1, 2500],
      [units, 0],
    ]);
  });

  it("has one tier of nothing but the fee where the price is not known", () => {
    const [tier, ...more] = tiersWith({ price: null }, { freeOver: "20.00" })(AS_OF, ALONE);
    expect(tier).toMatchObject({ fromUnits: 1, unitCost: 0, lotCost: 2500 });
    expect(tier!.holdingCost).toBeGreaterThan(0);
    expect(more).toEqual([]);
  });

  // By hand: 12.00 at 10 % a year are 0.10 a month; a 24th of a life of 24 months is 0.50
  it.each([
    ["pads", 24, 60],
    ["pads", null, 10],
    ["pack", 24, 10],
  ] as const)(
    "charges a month on the shelf of %s with %j months of life %i cents",
    (kind, arrivesWithMonths, cents) => {
      const tiers = tiersWith({ kind, arrivesWithMonths, price: "12.00" }, {}, { holdingRatePerYear: 0.1 });
      expect(tiers(AS_OF, ALONE)[0]!.holdingCost).toBeCloseTo(cents, 9);
    },
  );

  // By hand: 10.00 and 5 % more from the anniversary of 25 November 2026 on, 11.025 from the second
  it("prices a lot at what a unit costs on the day it is ordered", () => {
    const tiers = tiersWith({}, {}, { priceRisePerYear: 0.05 });
    const on = (iso: string) => tiers(day(iso), ALONE)[0]!.unitCost;
    expect(on("2027-11-24")).toBe(1000);
    expect(on("2027-11-25")).toBeCloseTo(1050, 9);
    expect(on("2028-11-25")).toBeCloseTo(1102.5, 9);
  });
});
