import type { Day } from "../calendar/day.ts";
import type { DateBand, ForecastKind } from "../fade/types.ts";
import { datesOfChance, monthEndsAhead } from "./chance-dates.ts";
import type { LifeLimit } from "./life-limits.ts";
import type { EndCause, PackCause } from "./types.ts";

/** What ends one pack: fade as a chance over time, and whatever comes on a set day. */
export interface PackEnd {
  /** Average chance of being below the threshold, on the time grid; null where fade cannot be forecast. */
  fade: Float64Array | null;
  /** The day of a failed test that nothing has cleared, or null. */
  failedOn: Day | null;
  limit: LifeLimit | null;
}

/** The set day, if any, on which the pack is due for certain, no earlier than as-of. */
function certainDay(end: PackEnd, asOf: Day): Day | null {
  if (end.failedOn !== null) return asOf;
  return end.limit === null ? null : Math.max(asOf, end.limit.day);
}

/** Dates by which fade alone brings the pack below the threshold; a failed test brings it there now. */
export function belowDates(end: PackEnd, asOf: Day, lastDay: Day): DateBand & { kind: ForecastKind } {
  if (end.failedOn !== null) return { kind: "already-due", p10: asOf, p50: asOf, p90: asOf };
  if (end.fade === null) return { kind: "no-forecast", p10: null, p50: null, p90: null };
  return datesOfChance(end.fade, asOf, lastDay);
}

/** Dates by which the pack is due from any cause, and the cause with most chance at the middle one. */
export function dueDates(
  end: PackEnd,
  asOf: Day,
  lastDay: Day,
): DateBand & { kind: ForecastKind; because: EndCause | null } {
  const below = belowDates(end, asOf, lastDay);
  const certain = certainDay(end, asOf);
  const earlier = (day: Day | null) => (certain === null ? day : day === null ? certain : Math.min(day, certain));
  const dates = { p10: earlier(below.p10), p50: earlier(below.p50), p90: earlier(below.p90) };
  if (dates.p50 === null) return { kind: below.kind, ...dates, because: null };
  const kind = dates.p50 <= asOf ? "already-due" : dates.p50 <= lastDay ? "within-horizon" : "beyond-horizon";
  return { kind, ...dates, because: causeAt(dates.p50, end, below.p50) };
}

function causeAt(day: Day, end: PackEnd, faded: Day | null): EndCause {
  if (end.failedOn !== null) return "failed-test";
  return faded !== null && faded <= day ? "fade" : end.limit!.cause;
}

/**
 * Lays the certain day over chances by month: from the month in which it falls, the pack is due.
 *
 * @param chances  one or more runs of `months` chances by month's end; changed in place
 */
export function overlayCertainDay(chances: Float64Array, end: PackEnd, asOf: Day, months: number): void {
  const certain = certainDay(end, asOf);
  if (certain === null) return;
  const ahead = monthEndsAhead(asOf, months);
  for (let i = 0; i < chances.length; i++) {
    if (asOf + ahead[i % months]! >= certain) chances[i] = 1;
  }
}

/** Expected first replacements by month, split by cause; they add up to the steps of `due`. */
export function causesByMonth(due: Float64Array, end: PackEnd, asOf: Day): Record<PackCause, Float64Array> {
  const months = due.length;
  const causes = {
    fade: new Float64Array(months),
    limit: new Float64Array(months),
    failure: new Float64Array(months),
  };
  const ahead = monthEndsAhead(asOf, months);
  const limitDay = end.failedOn === null && end.limit !== null ? Math.max(asOf, end.limit.day) : null;
  for (let m = 0; m < months; m++) {
    const step = due[m]! - (m > 0 ? due[m - 1]! : 0);
    const byLimit = limitDay !== null && asOf + ahead[m]! >= limitDay;
    causes[byLimit ? "limit" : "fade"][m] = step;
  }
  return causes;
}
