import { lastDayOfMonth, type Month } from "../calendar/month.ts";
import { groupBy } from "../fleet/group-by.ts";
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
 * Units still unmet at each month's end on possible futures: needs join those that wait, and the supply at hand serves
 * them, first expired, first out.
 *
 * @param paths   units needed by month, by path
 * @param supply  in any order
 * @returns units unmet, at path * months + month
 */
export function unmetNeeds(paths: readonly Int32Array[], supply: readonly SupplyMonths[]): Float64Array {
  const months = paths[0]?.length ?? 0;
  const all = new Float64Array(paths.length * months);
  const lots = inOrderOfLapse(supply);
  const units = Float64Array.from(lots, (lot) => lot.units);
  const left = units.slice();
  // which lots are there, and which of them are new, does not hang on the future
  const there: number[][] = Array.from({ length: months }, () => []);
  const newThere = there.map((): number[] => []);
  lots.forEach(({ from, to }, at) => {
    newThere[from]!.push(at);
    for (let month = from; month <= to; month++) there[month]!.push(at);
  });
  paths.forEach((needs, path) => {
    left.set(units);
    let waiting = 0;
    for (let month = 0; month < months; month++) {
      // while needs wait, all that was there is used up
      const here = waiting > 0 ? newThere[month]! : there[month]!;
      waiting += needs[month]!;
      for (let i = 0; i < here.length && waiting > 0; i++) {
        const at = here[i]!;
        const used = Math.min(waiting, left[at]!);
        left[at]! -= used;
        waiting -= used;
      }
      all[path * months + month] = waiting;
    }
  });
  return all;
}

/** Supply in the order in which it lapses; what is there in the same months counts as one. */
function inOrderOfLapse(supply: readonly SupplyMonths[]): SupplyMonths[] {
  const groups = groupBy(supply, ({ from, to }) => `${from} ${to}`);
  const merged = [...groups.values()].map((same) => ({
    ...same[0]!,
    units: same.reduce((sum, one) => sum + one.units, 0),
  }));
  return merged.sort((a, b) => a.to - b.to || a.from - b.from);
}
