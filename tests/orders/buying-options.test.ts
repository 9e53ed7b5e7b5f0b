import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../src/calendar/day.ts";
import { buyingOptions } from "../../src/orders/buying-options.ts";
import { netNeeds } from "../../src/orders/net-needs.ts";
import { offersForItem } from "../../src/orders/offers.ts";
import { latestSlots, slotOn } from "../../src/orders/order-slots.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import { catalogueRow, certainDemand, day, fleetWith, policyWith, supplierRow } from "./made-up.ts";

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

describe("buyingOptions", () => {
  const needs = certainDemand("Gel", [0, 0, 0, 2, 2]);
  const policy = policyWith({ horizonMonths: 5 });
  const fleet = fleetWith({ catalogue: [catalogueRow({ item: "Gel" })], suppliers: [supplierRow()] });
  const [offer] = offersForItem("Gel", fleet, policy, 0.95).offers;
  const slots = latestSlots(offer!, policy, needs, true);
  const tiers = (orderBy: number) => [{ fromUnits: 1, unitCost: 1, lotCost: orderBy, holdingCost: 0 }];
  const earlierSlot = (orderBy: number, index: number) => slotOn(orderBy, index, offer!, policy, needs);
  const of = {
    ...{
      item: "Gel",
      demand: needs,
      level: 0.95,
      supply: [],
      net: netNeeds(needs, [], 0.95, 0),
      stopgapsUntil: () => [],
    },
    offers: [{ offer: offer!, slots, tiers, earlierSlot }],
  };
  /** The days on which orders for February and for March leave, by what is ordered on them; null = none may. */
  const leaving = (open: string[], closed?: string) => {
    const { sources } = buyingOptions(of, {
      openDays: () => open.map(day),
      beside: () => ({ lines: 0, total: 0 }),
      allows: (_, on) => on !== (closed && day(closed)),
    });
    return [3, 4].map((month) => {
      const [tier] = sources[0]!.tiersAt(month);
      return tier ? isoFromDay(tier.lotCost) : null;
    });
  };

  // By hand: 1 February and 1 March 2027 less 14 days of safety and 30 of lead are 19 December and 16 January
  it.each([
    ["by themselves on the last day in time", [], ["2026-12-19", "2027-01-16"]],
    ["with what leaves on that very day", ["2026-12-19", "2027-01-16"], ["2026-12-19", "2027-01-16"]],
    ["with the last before it", ["2026-12-10", "2027-01-03", "2027-01-04"], ["2026-12-10", "2027-01-04"]],
    [
      "with none that would be in time for the month before",
      ["2026-12-18", "2026-12-19"],
      ["2026-12-19", "2027-01-16"],
    ],
    ["with one that is a day too late for it", ["2026-12-20"], ["2026-12-19", "2026-12-20"]],
    ["with none that is too late", ["2026-12-20", "2027-01-17"], ["2026-12-19", "2026-12-20"]],
  ])("lets orders leave %s", (_, open, found) => {
    expect(leaving(open)).toEqual(found);
  });

  it("lets none leave on a day that is closed", () => {
    expect(leaving([], "2026-12-19")).toEqual([null, "2027-01-16"]);
    expect(leaving(["2027-01-04"], "2027-01-04")).toEqual(["2026-12-19", null]);
  });
});
