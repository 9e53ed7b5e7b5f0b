import { DRAWS } from "../fade/item-fit.ts";
import type { Policy } from "../fleet/policy.ts";
import { monthEndsAhead, monthlyChances, monthlySums } from "./chance-dates.ts";
import type { Decline } from "./decline.ts";
import { addFailures, type Exposure, lastingByPace } from "./failure-chances.ts";
import { overlayCertainDay, type PackEnd } from "./pack-end.ts";

/** A pack that runs down, may fail suddenly, and comes to an end on a set day; null where that cannot be told. */
interface Ending {
  decline: Decline | null;
  exposure: Exposure | null;
  end: PackEnd;
}

/**
 * Chances that a pack is due from any cause by month's end, by draw.
 *
 * @param into  receives draws * months, draw-major
 */
export function dueByDraw(
  { decline, exposure, end }: Ending,
  { asOf, horizonMonths: months }: Policy,
  into: Float64Array,
): void {
  if (decline === null) into.fill(0);
  else monthlyChances(decline, asOf, months, into);
  if (exposure !== null) addFailures(into, exposure, monthEndsAhead(asOf, months));
  overlayCertainDay(into, end, asOf, months);
}

const ONE_PACE = new Uint8Array(DRAWS);

/** The same averaged over draws. Those that share a pace of failure are summed before it is heeded. */
export function dueOnAverage(
  { decline, exposure, end }: Ending,
  { asOf, horizonMonths: months }: Policy,
): Float64Array {
  const paceOf = exposure?.risk.paceOf ?? ONE_PACE;
  const lasting = exposure === null ? null : lastingByPace(exposure, monthEndsAhead(asOf, months));
  const paces = exposure?.risk.paces.length ?? 1;
  const draws = new Float64Array(paces);
  for (const pace of paceOf) draws[pace] = draws[pace]! + 1;
  const below = decline === null ? new Float64Array(paces * months) : monthlySums(decline, asOf, months, paceOf, paces);
  const due = new Float64Array(months);
  for (let m = 0; m < months; m++) {
    let sum = 0;
    for (let pace = 0; pace < paces; pace++) {
      const last = lasting === null ? 1 : lasting[pace * months + m]!;
      sum += draws[pace]! - (draws[pace]! - below[pace * months + m]!) * last;
    }
    // divided once, so that certainty in every draw is exactly 1
    due[m] = Math.min(1, sum / DRAWS);
  }
  overlayCertainDay(due, end, asOf, months);
  return due;
}
