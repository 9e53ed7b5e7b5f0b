import { nameKey } from "../fleet/name-key.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet } from "../fleet/rows.ts";
import type { UsableLot } from "../supplies/types.ts";
import { type Offer, offersForItem } from "./offers.ts";
import { lastUsableDay } from "./order-slots.ts";
import type { OrderLine } from "./types.ts";

/** The offer from which a line is ordered. */
export function offerOfLine({ item, supplier }: OrderLine, fleet: Fleet, policy: Policy): Offer {
  const { offers } = offersForItem(item, fleet, policy, policy.serviceLevel);
  return offers.find((one) => nameKey(one.supplier) === nameKey(supplier)) ?? offers[0]!;
}

/** The units that order lines bring, as supply from their expected arrival to the end of their usable life. */
export function lotsOfSchedule(orders: readonly OrderLine[], fleet: Fleet, policy: Policy): UsableLot[] {
  return orders.map((line) => {
    return {
      item: line.item,
      quantity: line.quantity,
      availableFrom: line.arriveBy,
      usableUntil: lastUsableDay(offerOfLine(line, fleet, policy), line.arriveBy),
      place: null,
      origin: "on-order",
      reference: line.id,
    };
  });
}
