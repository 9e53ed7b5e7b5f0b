import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../src/calendar/day.ts";
import type { CatalogueRow, SupplierRow } from "../../src/fleet/rows.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import { catalogueRow, certainDemand, fleetWith, policyWith, supplierRow } from "./made-up.ts";

/** Orders for 4 of gel and 4 pads, 10.00 each, for February 2027. */
function ordersWith(gel: Partial<CatalogueRow>, pads: Partial<CatalogueRow>, terms: Partial<SupplierRow> = {}) {
  const fleet = fleetWith({
    catalogue: [catalogueRow({ item: "Gel", ...gel }), catalogueRow({ item: "Pads", ...pads })],
    suppliers: [supplierRow(terms)],
  });
  const needs = ["Gel", "Pads"].map((item) => certainDemand(item, [0, 0, 0, 4]));
  const { orders } = scheduleOrders(fleet, policyWith({ horizonMonths: 4 }), needs, []);
  return orders
    .map((line) => [line.item, line.supplier, isoFromDay(line.orderBy), line.quantity, line.feeShare])
    .sort();
}

describe("orders of one day pay one fee", () => {
  // By hand: 2027-02-01 less 14 days of safety and 30 of lead is 19 December; half of 25.00 for lines of 40.00 each
  it("however the price list spells their supplier", () => {
    expect(ordersWith({}, { supplier: " NORTH supplies " })).toEqual([
      ["Gel", "North Supplies", "2026-12-19", 4, 1250],
      ["Pads", "North Supplies", "2026-12-19", 4, 1250],
    ]);
  });

  // By hand: 40 and 25 days of lead are 9 and 24 December; nothing is gained by ordering gel with pads of another currency
  it.each([
    ["of its own currency alone", "EUR", 0],
    ["of each currency, where the supplier names none", null, 2500],
  ])("%s", (_, currency, feeOfPads) => {
    expect(ordersWith({ leadDays: 25 }, { leadDays: 40, currency: "USD" }, { currency })).toEqual([
      ["Gel", "North Supplies", "2026-12-24", 4, 2500],
      ["Pads", "North Supplies", "2026-12-09", 4, feeOfPads],
    ]);
  });

  // By hand: 4 of gel are 40.00 and the fee, 65.00; 6 are 60.00 and free. The dollars of the pads do not count towards it
  it("and what lifts an order over its free limit is money of its own currency", () => {
    expect(ordersWith({}, { currency: "USD" }, { freeOver: "60.00" })).toEqual([
      ["Gel", "North Supplies", "2026-12-19", 6, 0],
      ["Pads", "North Supplies", "2026-12-19", 4, 0],
    ]);
  });

  // By hand: 40.00 and 40.00 reach 80.00 exactly, and an order of so much is free
  it("or none, where they reach the limit together", () => {
    expect(ordersWith({}, {}, { freeOver: "80.00" }).map(([, , , units, fee]) => [units, fee])).toEqual([
      [4, 0],
      [4, 0],
    ]);
  });
});
