import { DAYS_PER_YEAR } from "../calendar/mean-year.ts";
import type { ItemPlace } from "./item-place.ts";

/**
 * Days (fractions of a day allowed, ascending) before `end` on which a routine consumption finishes a unit at a
 * place: whole units, counted from the share already consumed at the place's start.
 */
export function routineDays(
  place: Pick<ItemPlace, "from" | "until" | "routinePerYear" | "routineStarted">,
  end: number,
): number[] {
  if (place.routinePerYear <= 0) return [];
  const days: number[] = [];
  for (let unit = 1; ; unit++) {
    const day = place.from + ((unit - place.routineStarted) / place.routinePerYear) * DAYS_PER_YEAR;
    if (day >= Math.min(end, place.until)) return days;
    days.push(day);
  }
}
