import { DAYS_PER_YEAR } from "../calendar/mean-year.ts";
import type { ItemPlace } from "./item-place.ts";

/**
 * Days (fractions of a day allowed, ascending) before `end` on which a routine consumption finishes a unit at a
 * place: whole units, counted from the share already consumed at the place's start.
 *
 * @param most  no more days than so many are told: a sheet may ask for millions of units where a few lie
 */
export function routineDays(
  place: Pick<ItemPlace, "from" | "until" | "routinePerYear" | "routineStarted">,
  end: number,
  most = Number.POSITIVE_INFINITY,
): number[] {
  if (place.routinePerYear <= 0) return [];
  const days: number[] = [];
  for (let unit = 1; unit <= most; unit++) {
    const day = place.from + ((unit - place.routineStarted) / place.routinePerYear) * DAYS_PER_YEAR;
    if (day >= Math.min(end, place.until)) break;
    days.push(day);
  }
  return days;
}
