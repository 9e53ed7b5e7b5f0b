import type { Day } from "../calendar/day.ts";
import { monthOfDay } from "../calendar/month.ts";
import type { Policy } from "../fleet/policy.ts";
import { swapDaysOf } from "../supplies/item-place.ts";
import type { ItemPlaces } from "../supplies/item-places.ts";
import { countsUntil, lifeOfDelivery, monthIndex, swapDayOfReplacement } from "../supplies/unit-life.ts";
import { expectedUses } from "./shared-pace.ts";

/** Units fitted in a month up to a count, of which all are swapped on one day in their turn. */
export interface FittedLot {
  /** Infinity for the last: of a lot that outlasts the needs that are expected, or of new units. */
  upTo: number;
  /** Infinity = no limit. */
  swapDay: Day;
}

/** Units that an order to come brings. */
export interface ComingLot {
  quantity: number;
  /** First day of whose needs they are. */
  from: Day;
  /** From which their life counts. */
  arrives: Day;
}

/**
 * The units fitted in each month of the horizon: of those on shelves, on order or to come, first expired, first out, while
 * they are expected to last, and then new ones.
 *
 * @param monthStarts  first day of each month, as-of first, and of the one behind them
 */
export function fittedLots(
  ofItem: ItemPlaces,
  monthStarts: Float64Array,
  policy: Policy,
  coming: readonly ComingLot[],
): FittedLot[][] {
  const { item, places, stock, units, onOrder, use } = ofItem;
  const lapses = new Float64Array(policy.horizonMonths);
  const lapse = (day: number, count: number) => {
    const month = monthIndex(day, policy);
    if (month < lapses.length) lapses[month]! += count;
  };
  let others = 0;
  for (const place of places) {
    for (const day of swapDaysOf(place, units, policy.asOf)) if (day < place.until) lapse(Math.max(day, place.from), 1);
    lapse(place.from, place.lacking);
    others += place.routinePerYear / 12;
    if (place.use && use) others += expectedUses(place.use) * use.meanUnitsPerUse;
  }
  const lots = [
    ...units.onShelves(stock).map((at) => ({
      left: units.quantity[at]!,
      from: policy.asOf,
      swapDay: units.swapBy[at]!,
      until: countsUntil(units.rows[at]!, item, policy),
    })),
    ...onOrder.map((row) => ({ left: row.quantity, ...lifeOfDelivery(row, item, policy) })),
    ...coming.map(({ quantity, from, arrives }) => ({
      ...lifeOfDelivery({ arrives, expiry: null }, item, policy),
      left: quantity,
      from,
    })),
  ].sort((a, b) => a.swapDay - b.swapDay);
  return Array.from(lapses, (_, month) => {
    const needs = lapses[month]! + others;
    const fitted: FittedLot[] = [];
    let taken = 0;
    const add = (count: number, upTo: number, swapDay: Day) => {
      fitted.push({ upTo, swapDay });
      // what takes the place of a unit that lapsed lapses in its turn
      if (count > 0) lapse(swapDay, (count * lapses[month]!) / needs);
    };
    for (const lot of lots) {
      if (lot.left === 0 || lot.from >= monthStarts[month + 1]! || lot.until < monthStarts[month]!) continue;
      const here = Math.min(lot.left, needs - taken);
      lot.left -= here;
      taken += here;
      const lasts = lot.left > 1 / 2;
      add(here, lasts ? Number.POSITIVE_INFINITY : taken, lot.swapDay);
      if (lasts) return fitted;
    }
    add(needs - taken, Number.POSITIVE_INFINITY, swapDayOfReplacement(item, monthOfDay(monthStarts[month]!), policy));
    return fitted;
  });
}
