import { DAYS_PER_YEAR } from "../calendar/mean-year.ts";
import { GRID_DAYS } from "../fade/time-grid.ts";
import { keptFor } from "./kept-for.ts";
import { cumulativeHazard, type FailureRisk } from "./sudden-failures.ts";

/** A pack's exposure to sudden failure: its item's risk, and its years in service at as-of (negative before). */
export interface Exposure {
  risk: FailureRisk;
  ageYears: number;
}

/** A pack's chances to last, which hang on no end of life. */
const lastingOf = keptFor<Exposure, Float64Array>();

/**
 * Chance to last without a sudden failure at times ahead, by pace of failure.
 *
 * @returns paces * days, pace-major
 */
export function lastingByPace(exposure: Exposure, days: ArrayLike<number>): Float64Array {
  return lastingOf(exposure, [days], () => {
    const hazards = hazardsAhead(exposure, days);
    const { paces } = exposure.risk;
    const lasting = new Float64Array(paces.length * days.length);
    let at = 0;
    for (const pace of paces) for (const hazard of hazards) lasting[at++] = Math.exp(-pace * hazard);
    return lasting;
  });
}

/** Chance to last without a sudden failure at the times of the grid, averaged over the paces. */
export function averageLasting(exposure: Exposure): Float64Array {
  const { paces } = exposure.risk;
  return hazardsAhead(exposure, GRID_DAYS).map((hazard) => {
    let sum = 0;
    for (const pace of paces) sum += Math.exp(-pace * hazard);
    return sum / paces.length;
  });
}

/** Hazard gone through between as-of and times ahead, at pace 1. */
function hazardsAhead({ risk, ageYears }: Exposure, days: ArrayLike<number>): Float64Array {
  const now = cumulativeHazard(risk, ageYears);
  return Float64Array.from(days, (day) => cumulativeHazard(risk, ageYears + day / DAYS_PER_YEAR) - now);
}
