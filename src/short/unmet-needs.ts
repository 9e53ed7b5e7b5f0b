import { lastDayOfMonth, type Month } from "../calendar/month.ts";
import type { Policy } from "../fleet/policy.ts";
import { needDay } from "../orders/order-slots.ts";
import type { UsableLot } from "../supplies/types.ts";

/** Supply in months: index of the first month in which it is there, and the last whose needs it can serve. */
export interface SupplyMonths {
  units: number;
  from: number;
  to: number;
}

/** A lot as months of the plan; null where it serves none of them. */
export function supplyMonths(lot: UsableLot, policy: Policy, from: Month, months: number): SupplyMonths | null {
  const { quantity: units, availableFrom, usableUntil } = lot;
  let first = 0;
  while (first < months && lastDayOfMonth(from + first) < availableFrom) first++;
  let last = months - 1;
  // what arrives within a month serves needs that have waited for it
  const reaches = (index: number) =>
    usableUntil === null || Math.max(needDay(policy, from, index), availableFrom) <= usableUntil;
  while (last >= first && !reaches(last)) last--;
  return units > 0 && first <= last ? { units, from: first, to: last } : null;
}

/**
 * Units still unmet at each month's end on one possible future: needs join those that wait, and the supply at hand
 * serves them, first expired, first out.
 *
 * @param needs   units needed by month
 * @param supply  in the order in which it lapses, see `inOrderOfLapse`
 * @param into    filled with units unmet by month
 */
export function unmetNeeds(needs: Int32Array, supply: readonly SupplyMonths[], into: Float64Array): void {
  const left = Float64Array.from(supply, (lot) => lot.units);
  let waiting = 0;
  for (let month = 0; month < needs.length; month++) {
    waiting += needs[month]!;
    for (let at = 0; at < supply.length && waiting > 0; at++) {
      const { from, to } = supply[at]!;
      if (from > month || to < month || left[at] === 0) continue;
      const used = Math.min(waiting, left[at]!);
      left[at]! -= used;
      waiting -= used;
    }
    into[month] = waiting;
  }
}

/** Supply in the order in which it lapses. */
export function inOrderOfLapse(supply: readonly SupplyMonths[]): SupplyMonths[] {
  return [...supply].sort((a, b) => a.to - b.to || a.from - b.from);
}
