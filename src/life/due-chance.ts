import { DRAWS } from "../fade/item-fit.ts";
import type { Policy } from "../fleet/policy.ts";
import { monthEndsAhead, monthlySums } from "./chance-dates.ts";
import type { Decline } from "./decline.ts";
import { type Exposure, lastingByPace } from "./failure-chances.ts";
import { certainMonth, type PackEnd } from "./pack-end.ts";

/** A pack that runs down, may fail suddenly, and comes to an end on a set day; null where that cannot be told. */
export interface Ending {
  decline: Decline | null;
  exposure: Exposure | null;
  end: PackEnd;
}

const ONE_PACE = new Uint8Array(DRAWS);

/**
 * Chances that a pack is due from any cause by month's end, averaged over draws. Those that share a pace of failure are
 * summed before it is heeded.
 */
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
  return due.fill(1, certainMonth(end, asOf, months));
}
