import type { Day } from "../calendar/day.ts";

/** Units of one day: a row of stock may hold thousands, all alike. */
export interface UnitRun {
  day: Day;
  units: number;
}

/** A run for each day. */
export function runsOf(days: readonly Day[], units: readonly number[]): UnitRun[] {
  return days.map((day, at) => ({ day, units: units[at]! }));
}

/** Units of all runs together. */
export function total(units: readonly number[]): number {
  let sum = 0;
  for (const count of units) sum += count;
  return sum;
}

/** The day of each unit, in the order of the runs. */
export function eachUnit(days: readonly Day[], units: readonly number[]): Day[] {
  const each: Day[] = [];
  for (let run = 0; run < days.length; run++) for (let left = units[run]!; left > 0; left--) each.push(days[run]!);
  return each;
}

/** What the units of each run have together, of a figure that is known unit by unit in the order of the runs. */
export function sumsByRun(units: readonly number[], ofUnits: Float64Array): number[] {
  let unit = 0;
  return units.map((count) => {
    let sum = 0;
    for (const end = unit + count; unit < end; unit++) sum += ofUnits[unit]!;
    return sum;
  });
}
