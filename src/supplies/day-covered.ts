import type { Day } from "../calendar/day.ts";
import type { OnOrderRow } from "../fleet/rows.ts";

/**
 * Day on which so many units lacking can be there: from what is coming, or from an order that leaves on as-of, whichever
 * is sooner; null where neither has a date.
 *
 * @param coming  open orders of the item; one without a date arrives as if it were placed on as-of
 */
export function dayCovered(
  lacking: number,
  coming: readonly OnOrderRow[],
  leadDays: number | null,
  asOf: Day,
): Day | null {
  const ifOrderedNow = leadDays === null ? null : asOf + leadDays;
  const arrivals = coming
    .map(({ quantity, arrives }) => ({ quantity, day: arrives === null ? ifOrderedNow : Math.max(asOf, arrives) }))
    .filter((arrival): arrival is { quantity: number; day: Day } => arrival.day !== null)
    .sort((a, b) => a.day - b.day);
  let left = lacking;
  let day: Day = asOf;
  for (const arrival of arrivals) {
    if (left <= 0) break;
    left -= arrival.quantity;
    day = arrival.day;
  }
  if (left > 0) return ifOrderedNow;
  return ifOrderedNow === null ? day : Math.min(day, ifOrderedNow);
}
