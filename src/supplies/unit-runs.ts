import type { Day } from "../calendar/day.ts";

/** Units of one day: a row of stock may hold thousands, all alike. */
export interface UnitRun {
  day: Day;
  units: number;
}

/** Units of all runs together. */
export function unitsOfRuns(runs: readonly UnitRun[]): number {
  return runs.reduce((sum, { units }) => sum + units, 0);
}

/** The day of each unit, in the order of the runs. */
export function daysOfRuns(runs: readonly UnitRun[]): Day[] {
  const days: Day[] = [];
  for (const { day, units } of runs) for (let left = units; left > 0; left--) days.push(day);
  return days;
}

/** What the units of each run have together, of a figure that is known unit by unit in the order of the runs. */
export function sumsByRun(runs: readonly UnitRun[], ofUnits: Float64Array): number[] {
  let unit = 0;
  return runs.map(({ units }) => {
    let sum = 0;
    for (const end = unit + units; unit < end; unit++) sum += ofUnits[unit]!;
    return sum;
  });
}
