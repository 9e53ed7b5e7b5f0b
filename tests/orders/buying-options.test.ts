import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../src/calendar/day.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import { catalogueRow, certainDemand, fleetWith, policyWith, supplierRow } from "./made-up.ts";

const leaving = (orderFee: string | null) => {
  const fleet = fleetWith({
    catalogue: [catalogueRow({ item: "Gel", leadDays: 25 }), catalogueRow({ item: "Pads", leadDays: 40 })],
    suppliers: [supplierRow({ orderFee })],
  });
  const needs = [certainDemand("Gel", [0, 0, 0, 4]), certainDemand("Pads", [0, 0, 0, 4])];
  const { orders } = scheduleOrders(fleet, policyWith({ horizonMonths: 4 }), needs, []);
  return orders.map(({ item, orderBy }) => [item, isoFromDay(orderBy)]);
};

describe("orders of one supplier", () => {
  // By hand: needed on 2027-02-01, less 14 days of safety is 18 January; less 25 and 40 days 24 and 9 December
  it("leave on each item's own last day where no fee is to be shared", () => {
    const own = [
      ["Pads", "2026-12-09"],
      ["Gel", "2026-12-24"],
    ];
    expect(leaving(null)).toEqual(own);
    expect(leaving("0")).toEqual(own);
  });

  it("leave together where that saves a fee", () => {
    expect(leaving("25.00").map(([, orderBy]) => orderBy)).toEqual(["2026-12-09", "2026-12-09"]);
  });
});
