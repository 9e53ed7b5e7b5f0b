import type { Policy } from "../fleet/policy.ts";
import { type Fleet, nameKey } from "../fleet/rows.ts";
import type { UsableLot } from "../supplies/types.ts";
import { offersForItem } from "./offers.ts";
import { lastUsableDay } from "./order-slots.ts";
import type { OrderLine } from "./types.ts";

/** The units that order lines bring, as supply from their expected arrival to the end of their usable life. */
export function lotsOfSchedule(orders: readonly OrderLine[], fleet: Fleet, policy: Policy): UsableLot[] {
  return orders.map((line) => {
    const { offers } = offersForItem(line.item, fleet, policy, policy.serviceLevel);
    const offer = offers.find((one) => nameKey(one.supplier) === nameKey(line.supplier)) ?? offers[0]!;
    return {
      item: line.item,
      quantity: line.quantity,
      availableFrom: line.arriveBy,
      usableUntil: lastUsableDay(offer, line.arriveBy),
      place: null,
      origin: "on-order",
      reference: line.id,
    };
  });
}
