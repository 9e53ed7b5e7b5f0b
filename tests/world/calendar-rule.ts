import type { Policy } from "../../src/fleet/policy.ts";
import type { Fleet } from "../../src/fleet/rows.ts";
import { offersForItem } from "../../src/orders/offers.ts";
import { lastUsableDay } from "../../src/orders/order-slots.ts";
import { lineCostOf, orderFeeOf } from "../../src/orders/prices.ts";
import type { UsableLot } from "../../src/supplies/types.ts";

/**
 * What the calendar rule buys with a number of units there or on order, in whole boxes: up to four months' mean needs
 * whenever less than two months' is left (common practice, no source). null = nothing.
 */
export function calendarOrder(
  item: string,
  fleet: Fleet,
  policy: Policy,
  there: number,
  mean: number,
): { cost: number; lot: UsableLot } | null {
  if (there >= 2 * mean) return null;
  const offer = offersForItem(item, fleet, policy, policy.serviceLevel).offers[0]!;
  const boxes = Math.ceil((4 * mean - there) / offer.unitsPerBox);
  const quantity = Math.max(boxes * offer.unitsPerBox, offer.minimumUnits);
  const line = lineCostOf(offer, policy, policy.asOf, quantity);
  const availableFrom = policy.asOf + offer.leadDays;
  const usableUntil = lastUsableDay(offer, availableFrom);
  const lot = { item, quantity, availableFrom, usableUntil, place: null, reference: null };
  return { cost: line + orderFeeOf(offer, line), lot: { ...lot, origin: "on-order" } };
}
