import { addMonths, type Day } from "../calendar/day.ts";
import { DAYS_PER_YEAR } from "../calendar/mean-year.ts";
import type { PackClock } from "../fade/pack-clock.ts";
import type { Policy } from "../fleet/policy.ts";
import type { PackRow } from "../fleet/rows.ts";
import { NEVER_AFTER_DAYS } from "./chance-dates.ts";
import type { ItemLimits } from "./item-limits.ts";
import type { EndCause } from "./types.ts";

/** A day from which a pack is due whatever its capacity, and why. */
export interface LifeLimit {
  day: Day;
  cause: Exclude<EndCause, "fade" | "failure">;
}

/**
 * The earliest limit on a pack's life, or null where there is none within 30 years. One that is held may not be used, and
 * counts as due until it is released. Age counts from when the pack was made; service_months from its first day in
 * service; cycles at the pack's own rate, else its duty's.
 *
 * @param useBy  the date that stands on the pack itself, or null
 */
export function earliestLimit(
  pack: PackRow,
  clock: PackClock,
  limits: ItemLimits,
  useBy: Day | null,
  policy: Policy,
): LifeLimit | null {
  if (pack.held !== null) return { day: policy.asOf, cause: "held" };
  const found: LifeLimit[] = [];
  const note = (day: Day | null, cause: LifeLimit["cause"]) => {
    // at a cycle in ten years, thousands of them end beyond any calendar
    if (day !== null && day - policy.asOf <= NEVER_AFTER_DAYS) found.push({ day, cause });
  };
  const monthsAfter = (day: Day | null, months: number | null) =>
    day === null || months === null ? null : addMonths(day, months);
  note(monthsAfter(clock.start, policy.packMaxAgeMonths), "age");
  note(monthsAfter(pack.inService ?? clock.start, limits.serviceMonths), "service-life");
  // one that was set ahead: what became of a pack since tells nothing of what was known
  note(pack.retiredBecause === null || pack.retiredBecause === "policy" ? pack.retired : null, "service-life");
  note(useBy, "use-by");
  if (limits.useByMonths !== null) note(monthsAfter(pack.made ?? clock.start, limits.useByMonths), "use-by");
  const most = Math.min(policy.packMaxCycles ?? Infinity, limits.maxCycles ?? Infinity);
  note(dayOfCycles(clock, policy.asOf, most), "cycles");
  found.sort((a, b) => a.day - b.day);
  return found[0] ?? null;
}

/** The day on which a cycle count is reached, or null where it never is or nothing tells. */
function dayOfCycles(clock: PackClock, asOf: Day, most: number): Day | null {
  const now = clock.cyclesAt(asOf);
  if (now === null || most === Infinity) return null;
  if (now >= most) return asOf;
  const rate = clock.cyclesPerYear ?? 0;
  return rate > 0 ? asOf + Math.floor(((most - now) / rate) * DAYS_PER_YEAR) : null;
}
