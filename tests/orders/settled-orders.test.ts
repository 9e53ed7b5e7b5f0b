import { expect, it } from "vitest";
import type { ItemDemand } from "../../src/demand/types.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import { settledOrders } from "../../src/orders/settled-orders.ts";
import { device } from "../fleet/make-rows.ts";
import { catalogueRow, certainDemand, fleetWith, policyWith, supplierRow } from "./made-up.ts";

const ITEM = "Pads, adult";
const MONTHS = 36;
const policy = policyWith({ horizonMonths: MONTHS });
const needsIn = (months: Record<number, number>) => [
  certainDemand(
    ITEM,
    Array.from({ length: MONTHS }, (_, month) => months[month] ?? 0),
  ),
];

/** Asks for needs that hang on how long what is bought waits, and gives what was told each time, and the orders. */
function settled(needs: (waits: readonly number[]) => ItemDemand[], devices = 1) {
  const fleet = fleetWith({
    devices: Array.from({ length: devices }, (_, at) => device(`D${at}`)),
    catalogue: [catalogueRow({ item: ITEM, kind: "pads", leadDays: 30, arrivesWithMonths: 20 })],
    suppliers: [supplierRow({ orderEveryMonths: 12, orderFee: null })],
  });
  const told: number[] = [];
  const found = settledOrders(
    (waited) => {
      const waits = [...waited.values()][0]?.split(" ").map(Number) ?? [];
      told.push(waits[8] ?? 0);
      return needs(waits);
    },
    (demand) => scheduleOrders(fleet, policy, demand, []),
    fleet,
    policy,
  );
  return { told, ordered: found.schedule.orders.map(({ quantity }) => quantity) };
}

// By hand: what is needed in July 2027 (8) is ordered on 1 January, has waited for 5 months by June and lasts to September 2028
// (22) instead of February 2029 (27), by when there is another order day
it("tells needs again with what the orders for them have wait, until that stays", () => {
  const { told, ordered } = settled((waits) => needsIn(waits[8] === 5 ? { 8: 2, 22: 2 } : { 8: 2, 27: 2 }));
  // what comes for month 22 waits, too: of 1 January 2028, for 7 months by August, so that it lasts to month 22 - 7 + 20 = 35
  expect(told).toEqual([0, 5, 5]);
  expect(ordered).toEqual([2, 2]);
});

// Made up: needs that move with every answer would go on for ever
it("ends where orders go on changing, and soon where there are many devices", () => {
  let months = 10;
  const moving = () => {
    months = months === 10 ? 14 : 10;
    return needsIn({ 8: 1, [months]: 3 });
  };
  expect(settled(moving).told).toHaveLength(4);
  expect(settled(moving, 1001).told).toHaveLength(2);
});
