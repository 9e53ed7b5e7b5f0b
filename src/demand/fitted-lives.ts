import { monthOfDay } from "../calendar/month.ts";
import type { Policy } from "../fleet/policy.ts";
import { swapDaysOf } from "../supplies/item-place.ts";
import type { ItemPlaces } from "../supplies/item-places.ts";
import { countsUntil, monthIndex, swapDayOfReplacement } from "../supplies/unit-life.ts";
import { expectedUses } from "./shared-pace.ts";

/**
 * Swap day of the unit that is fitted in each month of the horizon: of those on shelves, first expired, first out, while
 * they are expected to last, and then of new ones. Where a month takes both, what stands in the middle counts for all.
 *
 * @param monthStarts  first day of each month, as-of first
 * @returns by month; Infinity = no limit
 */
export function swapDaysOfFitted(ofItem: ItemPlaces, monthStarts: Float64Array, policy: Policy): Float64Array {
  const { item, places, stock, units, use } = ofItem;
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
  const shelf = [...stock]
    .filter((at) => {
      const { installed, stranded } = units.placeOf(at);
      return !installed && !stranded && units.serves[at] === 1;
    })
    .map((at) => ({
      left: units.quantity[at]!,
      swapDay: units.swapBy[at]!,
      until: countsUntil(units.rows[at]!, item, policy),
    }))
    .sort((a, b) => a.swapDay - b.swapDay);
  return lapses.map((_, month) => {
    const needs = lapses[month]! + others;
    let swapDay: number | null = null;
    let taken = 0;
    for (const lot of shelf) {
      if (lot.left === 0 || lot.until < monthStarts[month]!) continue;
      const here = Math.min(lot.left, needs - taken);
      lot.left -= here;
      taken += here;
      if (taken >= needs / 2) swapDay ??= lot.swapDay;
      // what took the place of a unit that lapsed lapses in its turn
      if (here > 0) lapse(lot.swapDay, (here * lapses[month]!) / needs);
    }
    return swapDay ?? swapDayOfReplacement(item, monthOfDay(monthStarts[month]!), policy);
  });
}
