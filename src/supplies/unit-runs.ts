import type { Day } from "../calendar/day.ts";

/*
 * Units of one day are a run: a row of stock may hold thousands, all alike. Runs are given as their days, ascending, and the
 * units of each: a fleet has very many places, and no object a run need be made for them.
 */

/** Units of all runs together. */
export function total(units: readonly number[]): number {
  let sum = 0;
  for (let run = 0; run < units.length; run++) sum += units[run]!;
  return sum;
}

/** The day of each unit, in the order of the runs. */
export function eachUnit(days: readonly Day[], units: readonly number[]): readonly Day[] {
  if (areSingle(units)) return days;
  const each: Day[] = [];
  for (let run = 0; run < days.length; run++) for (let left = units[run]!; left > 0; left--) each.push(days[run]!);
  return each;
}

/** What the units of each run have together, of a figure that is known unit by unit in the order of the runs. */
export function sumsByRun(units: readonly number[], ofUnits: Float64Array): Float64Array {
  if (areSingle(units)) return ofUnits;
  const sums = new Float64Array(units.length);
  let unit = 0;
  for (let run = 0; run < units.length; run++)
    for (const end = unit + units[run]!; unit < end; unit++) sums[run]! += ofUnits[unit]!;
  return sums;
}

function areSingle(units: readonly number[]): boolean {
  for (let run = 0; run < units.length; run++) if (units[run] !== 1) return false;
  return true;
}
