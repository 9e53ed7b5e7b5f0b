import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../src/calendar/day.ts";
import type { CatalogueRow, SupplierRow } from "../../src/fleet/rows.ts";
import { lotsToCome } from "../../src/orders/lots-to-come.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import { catalogueRow, certainDemand, fleetWith, policyWith, supplierRow } from "./made-up.ts";

const ITEM = "Pads, adult";
const MONTHS = 36;

/** What is to come for needs by month: so many for the needs of a day on, as if they came on another. */
function coming(needs: Record<number, number>, facts: Partial<CatalogueRow>, supplier: Partial<SupplierRow> = {}) {
  const policy = policyWith({ horizonMonths: MONTHS });
  const fleet = fleetWith({
    catalogue: [catalogueRow({ item: ITEM, kind: "pads", leadDays: 30, ...facts })],
    suppliers: [supplierRow(supplier)],
  });
  const units = Array.from({ length: MONTHS }, (_, month) => needs[month] ?? 0);
  const demand = [certainDemand(ITEM, units)];
  const found = lotsToCome(scheduleOrders(fleet, policy, demand, []), demand, fleet, policy);
  return [...found.values()]
    .flat()
    .map(({ quantity, from, arrives }) => `${quantity} from ${isoFromDay(from)} as of ${isoFromDay(arrives)}`);
}

describe("lotsToCome", () => {
  // By hand: three come at the least, for the needs of March (4), July and November 2027, on 15 February: safety days of 14 do
  // not count
  it("has what an order brings beyond the needs of its first month wait", () => {
    const needs = { 4: 1, 8: 1, 12: 1 };
    expect(coming(needs, { minimumOrder: 3, arrivesWithMonths: 20 })).toEqual(["3 from 2027-03-01 as of 2027-03-01"]);
  });

  // By hand: orders leave on 1 January and arrive on the 31st, 14 days before 14 February
  it("has what a supplier's last order day brings wait for the need", () => {
    const lots = coming({ 8: 1, 22: 1 }, { arrivesWithMonths: 20 }, { orderEveryMonths: 12, orderFee: null });
    expect(lots).toEqual(["1 from 2027-07-01 as of 2027-02-14", "1 from 2028-09-01 as of 2028-02-14"]);
  });

  // By hand: needed on 1 December, ordered on 25 November 2026, there on the 25th of December, too late for safety days
  it("counts the life of a late order from its arrival", () => {
    const lots = coming({ 1: 1, 4: 1 }, { minimumOrder: 2, arrivesWithMonths: 20 });
    expect(lots).toEqual(["2 from 2026-12-01 as of 2026-12-25"]);
  });

  // By hand: of 31 months those of month 4 last to month 35, the last; those of 32 lapse after it
  it("tells of them where they lapse within the horizon", () => {
    const lots = (lifeMonths: number | null) =>
      coming({ 4: 1, 8: 1 }, { minimumOrder: 2, arrivesWithMonths: lifeMonths, shelfMonths: null }).length;
    expect([lots(31), lots(32), lots(null)]).toEqual([1, 0, 0]);
  });

  it("tells of nothing where each month is ordered for itself, nor of batteries, which no expiry ends", () => {
    expect(coming({ 4: 1, 8: 1 }, { arrivesWithMonths: 20 }, { orderFee: null })).toEqual([]);
    expect(coming({ 4: 1, 8: 1 }, { kind: "pack", minimumOrder: 2, arrivesWithMonths: 20 })).toEqual([]);
  });
});
