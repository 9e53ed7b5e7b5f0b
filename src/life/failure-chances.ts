import { GRID_DAYS } from "../fade/time-grid.ts";
import { chanceToLast, type FailureRisk } from "./sudden-failures.ts";

const DAYS_PER_YEAR = 365.25;

/** A pack's exposure to sudden failure: its item's risk, and its years in service at as-of (negative before). */
export interface Exposure {
  risk: FailureRisk;
  ageYears: number;
}

/**
 * Adds sudden failure to chances of being due: from c to 1 - (1 - c) S, with S the chance to last till then.
 *
 * @param chances  one or more draws of chances, one a time ahead, draw-major; changed in place
 * @param days     the times ahead, days from as-of
 */
export function addFailures(chances: Float64Array, { risk, ageYears }: Exposure, days: readonly number[]): void {
  const lasting = Array.from(risk.paces, (pace) =>
    Float64Array.from(days, (day) => chanceToLast(risk, ageYears, day / DAYS_PER_YEAR, pace)),
  );
  for (let draw = 0; draw * days.length < chances.length; draw++) {
    const last = lasting[risk.paceOf[draw]!]!;
    const from = draw * days.length;
    for (let m = 0; m < days.length; m++) chances[from + m] = 1 - (1 - chances[from + m]!) * last[m]!;
  }
}

/** Chance to last without a sudden failure at the times of the grid, averaged over the paces. */
export function averageLasting({ risk, ageYears }: Exposure): Float64Array {
  return Float64Array.from(GRID_DAYS, (day) => {
    let sum = 0;
    for (const pace of risk.paces) sum += chanceToLast(risk, ageYears, day / DAYS_PER_YEAR, pace);
    return sum / risk.paces.length;
  });
}
