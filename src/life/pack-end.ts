import type { Day } from "../calendar/day.ts";
import type { DateBand, ForecastKind } from "../fade/types.ts";
import { type OpenEnds, openChance, openChances, splitBetween, splitUpTo } from "./cause-split.ts";
import { datesOfChance, monthEndsAhead } from "./chance-dates.ts";
import type { LifeLimit } from "./life-limits.ts";
import type { EndCause, PackCause } from "./types.ts";

/** What ends one pack: fade and sudden failure as chances over time, and whatever comes on a set day. */
export interface PackEnd extends OpenEnds {
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

/**
 * Dates by which the pack is due from any cause, and the cause with most chance at the middle one. Sudden failure
 * alone makes no forecast: where neither fade nor a limit can be told there are no dates.
 */
export function dueDates(
  end: PackEnd,
  asOf: Day,
  lastDay: Day,
): DateBand & { kind: ForecastKind; because: EndCause | null } {
  const certain = certainDay(end, asOf);
  if (end.fade === null && certain === null) {
    return { kind: "no-forecast", p10: null, p50: null, p90: null, because: null };
  }
  const open = datesOfChance(openChances(end), asOf, lastDay);
  const earlier = (day: Day | null) => (certain === null ? day : day === null ? certain : Math.min(day, certain));
  const dates = { p10: earlier(open.p10), p50: earlier(open.p50), p90: earlier(open.p90) };
  if (dates.p50 === null) return { kind: open.kind, ...dates, because: null };
  const kind = dates.p50 <= asOf ? "already-due" : dates.p50 <= lastDay ? "within-horizon" : "beyond-horizon";
  return { kind, ...dates, because: causeAt(dates.p50, end, open.p50, asOf) };
}

function causeAt(day: Day, end: PackEnd, open: Day | null, asOf: Day): EndCause {
  if (end.failedOn !== null) return "failed-test";
  if (end.limit?.cause === "held") return "held";
  // before the middle of the open ends, a limit has the greater half
  if (end.limit !== null && (open === null || open > day)) return end.limit.cause;
  const { fade, failure } = splitUpTo(end, day - asOf);
  return failure > fade ? "failure" : "fade";
}

/** The month, from as-of's on, by whose end the pack is due for certain; `months` where by none of so many. */
export function certainMonth(end: PackEnd, asOf: Day, months: number): number {
  const certain = certainDay(end, asOf);
  const month = certain === null ? -1 : monthEndsAhead(asOf, months).findIndex((ahead) => asOf + ahead >= certain);
  return month < 0 ? months : month;
}

/** Expected first replacements by month, split by cause; they add up to the steps of `due`. */
export function causesByMonth(due: Float64Array, end: PackEnd, asOf: Day): Record<PackCause, Float64Array> {
  const months = due.length;
  const causes = {
    fade: new Float64Array(months),
    limit: new Float64Array(months),
    failure: new Float64Array(months),
  };
  if (end.failedOn !== null) {
    if (months > 0) causes.fade[0] = due[0]!;
    return causes;
  }
  const ahead = monthEndsAhead(asOf, months);
  const limit = end.limit === null ? Infinity : Math.max(0, end.limit.day - asOf);
  for (let m = 0; m < months; m++) {
    const before = m > 0 ? due[m - 1]! : 0;
    const step = due[m]! - before;
    const from = m > 0 ? ahead[m - 1]! : -1;
    const ends = Math.min(ahead[m]!, limit);
    // in the limit's month, what came first by its day; afterwards nothing is left
    const open = ahead[m]! < limit ? step : Math.max(0, Math.min(step, openChance(end, limit) - before));
    const { fade, failure } = splitBetween(end, from, Math.max(from, ends));
    const share = fade + failure > 0 ? failure / (fade + failure) : 0;
    causes.failure[m] = open * share;
    causes.fade[m] = open - causes.failure[m]!;
    causes.limit[m] = step - open;
  }
  return causes;
}
