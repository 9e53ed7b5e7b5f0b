import { describe, expect, it } from "vitest";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import { fleetOfCase } from "./fleet-of-case.ts";
import { catalogueRow, certainDemand, fleetWith, policyWith, supplierRow } from "./made-up.ts";
import { randomCases } from "./random-cases.ts";

describe("the spend of futures that are all the same", () => {
  /*
   * By hand: 9 units are needed in March 2027, 9 in April and 9 in March 2028. Of 20 units each costs 8.00 instead of 10.00, so
   * 20 for 160.00 are less than 18 for 180.00, and 7 more for 70.00 do in 2028: to keep one for a year costs 3.00 at a rate of
   * 0.3, more than the 2.00 that it spares. Each order has a fee of 1.00.
   */
  it("is what is planned, where a price break makes an order larger than its months need", () => {
    const needs = Array.from({ length: 24 }, (_, month) => ([4, 5, 16].includes(month) ? 9 : 0));
    const fleet = fleetWith({
      catalogue: [catalogueRow({ item: "Pads", priceBreaks: [{ from: 20, price: "8.00" }] })],
      suppliers: [supplierRow({ orderFee: "1.00" })],
    });
    const { budget } = scheduleOrders(
      fleet,
      policyWith({ holdingRatePerYear: 0.3 }),
      [certainDemand("Pads", needs)],
      [],
    );
    expect(budget.map(({ fiscalYear, planned, p50, p95 }) => [fiscalYear, planned, p50, p95])).toEqual([
      ["2027", 16_100, 16_100, 16_100],
      ["2028", 7100, 7100, 7100],
    ]);
  });

  // By hand: what arrives at once and lasts to its month's end is bought month by month, 3 for 30.00 each time
  it("is what is planned, where a unit lasts no longer than the month of its order", () => {
    const fleet = fleetWith({ catalogue: [catalogueRow({ item: "Gel", leadDays: 0, arrivesWithMonths: 0 })] });
    const policy = policyWith({ orderBeforeNeedDays: 0, horizonMonths: 4 });
    const { budget } = scheduleOrders(fleet, policy, [certainDemand("Gel", [3, 3, 0, 3])], []);
    expect(budget.map(({ fiscalYear, planned, p50 }) => [fiscalYear, planned, p50])).toEqual([
      ["2026", 6000, 6000],
      ["2027", 3000, 3000],
    ]);
  });

  /*
   * By hand: 5 units are needed on 1 January, 1 February and 1 March 2027, each 14 days ahead. Far, 60 days away, is in time
   * for March alone, if ordered on 17 December; the 5 for January leave Near, 5 days away, on 13 December, those for
   * February on 13 January, after those for March. So 2026 pays 5 at 20.00 and 5 at 10.00, and 2027 pays 5 at 20.00.
   */
  it("is what is planned, where the order for a later month leaves before the one for an earlier month", () => {
    const fleet = fleetWith({
      catalogue: [
        catalogueRow({ item: "Pads", supplier: "Near", leadDays: 5, price: "20" }),
        catalogueRow({ item: "Pads", supplier: "Far", leadDays: 60, price: "10" }),
      ],
    });
    const { budget } = scheduleOrders(
      fleet,
      policyWith({ horizonMonths: 5 }),
      [certainDemand("Pads", [0, 0, 5, 5, 5])],
      [],
    );
    expect(budget.map(({ fiscalYear, planned, p50, p95 }) => [fiscalYear, planned, p50, p95])).toEqual([
      ["2026", 15_000, 15_000, 15_000],
      ["2027", 10_000, 10_000, 10_000],
    ]);
  });

  it("is what is planned, in made-up cases with boxes, minimum orders, breaks, lives and fees that may fall away", () => {
    for (const one of randomCases(24, 7)) {
      const policy = policyWith({ horizonMonths: one.months, priceRisePerYear: one.priceRisePerYear });
      const needs = one.items.map((item) => certainDemand(item.item, item.demand));
      for (const { fiscalYear, planned, p50, p95 } of scheduleOrders(fleetOfCase(one), policy, needs, []).budget) {
        expect([p50, p95], `${one.name} ${fiscalYear}`).toEqual([planned, planned]);
      }
    }
  });
});
