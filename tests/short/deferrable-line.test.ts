import { describe, expect, it } from "vitest";
import type { CatalogueRow, SupplierRow } from "../../src/fleet/rows.ts";
import { offerOfLine } from "../../src/orders/lots-of-schedule.ts";
import { lineCostOf } from "../../src/orders/prices.ts";
import type { OrderLine } from "../../src/orders/types.ts";
import { DeferrableLine } from "../../src/short/deferrable-line.ts";
import { KeptOrder } from "../../src/short/kept-order.ts";
import type { ShortModel } from "../../src/short/short-model.ts";
import { catalogueRow, day, fleetWith, policyWith, supplierRow } from "../orders/made-up.ts";

const LEAVES = day("2027-03-01");
const NEXT_YEAR = day("2028-01-01");
const policy = policyWith({ priceRisePerYear: 0.1 });

/** A line of so many units at 10.00, there on 31 March 2027, in an order of its own. */
function lineOf(quantity: number, row: Partial<CatalogueRow> = {}, terms: Partial<SupplierRow> = { orderFee: null }) {
  const fleet = fleetWith({ catalogue: [catalogueRow({ item: "Pads", ...row })], suppliers: [supplierRow(terms)] });
  const known = { item: "Pads", supplier: "North Supplies", orderBy: LEAVES, arriveBy: day("2027-03-31") };
  const offer = offerOfLine(known as OrderLine, fleet, policy);
  const lineCost = lineCostOf(offer, policy, LEAVES, quantity);
  const line = { ...known, id: "1", quantity, boxes: quantity / offer.unitsPerBox, lineCost } as OrderLine;
  const spans: ShortModel["spans"] = (lots) =>
    lots.map(({ quantity: units, availableFrom, usableUntil }) => ({
      units,
      from: availableFrom,
      to: usableUntil ?? 0,
    }));
  const one = new DeferrableLine(line, "pads", fleet, policy, { spans } as ShortModel);
  one.startYear(NEXT_YEAR, new KeptOrder(offer));
  return one;
}

describe("what of a line to put off next", () => {
  const next = (toSpare: number, ...line: Parameters<typeof lineOf>) => lineOf(...line).nextUnits(toSpare);

  // By hand: an eighth of 80 units is 10; 35.00 are spared by 4 of them, 40.00 exactly by 4, too; an eighth of 3 boxes is one
  it("is an eighth of its boxes, or as many as spare enough", () => {
    expect([next(99_999, 80), next(3500, 80), next(4000, 80), next(4001, 80)]).toEqual([10, 4, 4, 5]);
    expect(next(99_999, 30, { unitsPerBox: 10 })).toBe(10);
    expect(next(1, 1)).toBe(1);
  });

  // By hand: 20 at 8.00 are 160.00; 19, 18, 17 and 16 at 10.00 are no less, 15 are 150.00
  it("is so much that a missed price break does not cost more", () => {
    expect(next(1000, 20, { priceBreaks: [{ from: 20, price: "8.00" }] })).toBe(5);
  });

  // By hand: of 24 with a minimum order of 10 no fewer than 10 go, and 14 stay; of 19 the 9 that would stay go, too
  it("is a minimum order, and leaves one", () => {
    expect(next(3000, 24, { minimumOrder: 10 })).toBe(10);
    expect(next(3000, 20, { minimumOrder: 10 })).toBe(10);
    expect(next(3000, 19, { minimumOrder: 10 })).toBe(19);
    // 10 have gone already: a step of 3 more can follow, and 11 stay
    const one = lineOf(24, { minimumOrder: 10 });
    one.deferredUnits = 10;
    expect(one.nextUnits(99_999)).toBe(3);
    one.deferredUnits = 13;
    expect(one.nextUnits(99_999)).toBe(11);
  });

  // By hand: 8 for 80.00 and a fee of 25.00; 7 gone spare 70.00, the last the fee, too
  it("spares the fee with the last unit alone", () => {
    const one = lineOf(8, {}, { orderFee: "25.00" });
    expect([1, 7, 8].map((units) => one.savesBy(units))).toEqual([1000, 7000, 10_500]);
    one.deferredUnits = 7;
    expect([one.keptUnits, one.savesBy(1), one.savesBy(-7)]).toEqual([1, 3500, -7000]);
  });
});

describe("a line of which some is put off", () => {
  // By hand: 5 of 20 leave 306 days later, and are there on 31 January 2028; from 25 November 2027 on a unit costs 11.00
  it("is two orders, the later at its own price", () => {
    const one = lineOf(20);
    one.deferredUnits = 5;
    const told = one.split().map(({ line }) => [line.quantity, line.boxes, line.orderBy, line.arriveBy, line.lineCost]);
    expect(told).toEqual([
      [15, 15, LEAVES, day("2027-03-31"), 15_000],
      [5, 5, NEXT_YEAR, day("2028-01-31"), 5500],
    ]);
  });

  it("is one where nothing, or all of it, is put off", () => {
    const one = lineOf(20);
    expect(one.split().map(({ line }) => line)).toEqual([one.line]);
    one.deferredUnits = 20;
    expect(one.split().map(({ line }) => [line.quantity, line.orderBy])).toEqual([[20, NEXT_YEAR]]);
  });

  // By hand: what arrives in March 2027 with 12 months of life lasts to 31 March 2028 less 14 days, later 31 January 2029 less 14
  it("serves from its arrivals to the ends of its lives", () => {
    const one = lineOf(20, { arrivesWithMonths: 12 });
    one.deferredUnits = 5;
    expect(one.spans()).toEqual([
      { units: 15, from: day("2027-03-31"), to: day("2028-03-17") },
      { units: 5, from: day("2028-01-31"), to: day("2029-01-17") },
    ]);
  });
});
