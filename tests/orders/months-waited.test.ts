import { describe, expect, it } from "vitest";
import type { CatalogueRow, SupplierRow } from "../../src/fleet/rows.ts";
import { monthsWaited } from "../../src/orders/months-waited.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import { catalogueRow, certainDemand, fleetWith, policyWith, supplierRow } from "./made-up.ts";

const ITEM = "Pads, adult";

/** How long what is bought for each need has waited, by month of the need. */
function waits(needs: Record<number, number>, facts: Partial<CatalogueRow>, supplier: Partial<SupplierRow> = {}) {
  const months = 36;
  const policy = policyWith({ horizonMonths: months });
  const fleet = fleetWith({
    catalogue: [catalogueRow({ item: ITEM, kind: "pads", leadDays: 30, ...facts })],
    suppliers: [supplierRow(supplier)],
  });
  const demand = certainDemand(
    ITEM,
    Array.from({ length: months }, (_, month) => needs[month] ?? 0),
  );
  const found = monthsWaited(scheduleOrders(fleet, policy, [demand], []), [demand], fleet, policy);
  const told = [...found.values()].map((text) => text.split(" ").map(Number));
  return told.map((one) => Object.keys(needs).map((month) => one[Number(month)]));
}

describe("monthsWaited", () => {
  // By hand: three come at the least, so those of March 2027 (4), two weeks before which they are wished for, in February, are
  // those of July (8) and November (12), too: 4 and 8 months after it
  it("is the time from what an order brings to each need that it covers", () => {
    expect(waits({ 4: 1, 8: 1, 12: 1 }, { minimumOrder: 3, arrivesWithMonths: 20 })).toEqual([[0, 4, 8]]);
  });

  // By hand: orders leave on 1 January and arrive on the 31st. For July 2027 (8), wished for in June, that is 5 months; for
  // December 2027 (13), wished for in November, 10
  it("is the time since a supplier's last order day", () => {
    const every = { orderEveryMonths: 12 };
    expect(waits({ 8: 1, 13: 1 }, { arrivesWithMonths: 20 }, every)).toEqual([[5, 10]]);
  });

  // By hand: of 31 months those of month 4 would last to month 35, the last; so do those that wait 4 of them before month 8,
  // and those of 32 lapse after it
  it("is told where it brings a need into the horizon, and not otherwise", () => {
    expect(waits({ 4: 1, 8: 1 }, { minimumOrder: 2, arrivesWithMonths: 31 })).toEqual([[0, 4]]);
    expect(waits({ 4: 1, 8: 1 }, { minimumOrder: 2, arrivesWithMonths: 32 })).toEqual([]);
    expect(waits({ 4: 1, 8: 1 }, { minimumOrder: 2, arrivesWithMonths: null, shelfMonths: null })).toEqual([]);
  });

  // By hand: each month's order arrives in the middle of the month before
  it("is nothing where each month is ordered for itself, and of batteries, which no expiry ends", () => {
    expect(waits({ 4: 1, 8: 1 }, { arrivesWithMonths: 20 }, { orderFee: null })).toEqual([]);
    expect(waits({ 4: 1, 8: 1 }, { kind: "pack", minimumOrder: 2, arrivesWithMonths: 20 })).toEqual([]);
  });
});
