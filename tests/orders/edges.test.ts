import { describe, expect, it } from "vitest";
import type { Offer } from "../../src/orders/offers.ts";
import { orderFeeOf } from "../../src/orders/prices.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import { missingThrough } from "../../src/orders/supply-spans.ts";
import { AS_OF, catalogueRow, certainDemand, day, fleetWith, policyWith, supplierRow } from "./made-up.ts";

describe("on the edge", () => {
  it("an order whose total is just free_over bears no fee", () => {
    const offer = { fee: 2000, freeOver: 50_000 } as Offer;
    expect([49_999, 50_000].map((total) => orderFeeOf(offer, total))).toEqual([2000, 0]);
  });

  it("what becomes usable in a month serves that month's needs", () => {
    const needsOf = () => 3;
    expect(missingThrough(1, -1, [{ from: 1, to: 4, units: 3 }], needsOf)).toBe(0);
    expect(missingThrough(1, -1, [{ from: 2, to: 4, units: 3 }], needsOf)).toBe(3);
  });

  // By hand: 2027-01-01 less 14 days of safety is 18 December, less 23 days of lead 25 November, the day of the plan
  it("an order that leaves on the day of the plan is not late; with a day more of lead it is", () => {
    expect(AS_OF).toBe(day("2026-11-25"));
    const late = [23, 24].map((leadDays) => {
      const fleet = fleetWith({ catalogue: [catalogueRow({ item: "Pads", leadDays })], suppliers: [supplierRow()] });
      const { orders } = scheduleOrders(
        fleet,
        policyWith({ horizonMonths: 3 }),
        [certainDemand("Pads", [0, 0, 4])],
        [],
      );
      return orders[0]!.late;
    });
    expect(late).toEqual([false, true]);
  });
});
