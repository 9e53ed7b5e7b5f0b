import { expect, it } from "vitest";
import { isoFromDay } from "../../src/calendar/day.ts";
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

/** Asks for needs that hang on the first lot that is to come, and gives what was told of it each time, and the orders. */
function settled(needs: (arrives: string) => ItemDemand[], devices = 1) {
  const fleet = fleetWith({
    devices: Array.from({ length: devices }, (_, at) => device(`D${at}`)),
    catalogue: [catalogueRow({ item: ITEM, kind: "pads", leadDays: 30, arrivesWithMonths: 20 })],
    suppliers: [supplierRow({ orderEveryMonths: 12, orderFee: null })],
  });
  const told: string[] = [];
  const found = settledOrders(
    (coming) => {
      const lot = [...coming.values()][0]?.[0];
      const arrives = lot === undefined ? "new" : isoFromDay(lot.arrives);
      told.push(arrives);
      return needs(arrives);
    },
    (demand) => scheduleOrders(fleet, policy, demand, []),
    fleet,
    policy,
  );
  return { told, ordered: found.schedule.orders.map(({ quantity }) => quantity) };
}

// By hand: what is needed in July 2027 (8) is ordered on 1 January and is there on the 31st, 14 days before 14 February. It lasts
// to October 2028 (23) instead of March 2029 (28)
it("tells needs again with the orders for them, until those stay", () => {
  const { told, ordered } = settled((arrives) => needsIn(arrives === "new" ? { 8: 2, 28: 2 } : { 8: 2, 23: 2 }));
  // the order for month 28 would not have lapsed before the end, that for month 23 may: it is told, too
  expect(told).toEqual(["new", "2027-02-14", "2027-02-14"]);
  expect(ordered).toEqual([2, 2]);
});

// Made up: needs that move with every answer would go on for ever
it("ends where orders go on changing, and soon where there are many devices", () => {
  let months = 10;
  const moving = () => {
    months = months === 10 ? 26 : 10;
    return needsIn({ 8: 1, [months]: 3 });
  };
  expect(settled(moving).told).toHaveLength(4);
  expect(settled(moving, 1001).told).toHaveLength(2);
});
