import type { Plan, Reading } from "../src/index.ts";
import { dayNumber, monthEnds, monthsBetween } from "./months.ts";
import { nameKey, type PackReadings, readingsOf } from "./pack-readings.ts";

const DAYS_PER_YEAR = 365.25;
const STEP_YEARS = 0.25;
const FEWEST_PACKS = 5;
// Where fewer of the packs stay from one step to the next, the middle would step because the packs change, not fade.
const MOST_STAY = 0.75;

interface AgePoint {
  /** Years since made (since in service where the making is not known). */
  age: number;
  percent: number;
}

/** The middle of several packs' likely paths at one age. */
interface AgeBand {
  age: number;
  p10: number;
  p50: number;
  p90: number;
  packs: number;
  /** Many packs' paths begin or end since the step before, so that the two are not of the same packs. */
  anew: boolean;
}

export interface FadeByAge {
  dots: AgePoint[];
  paths: AgePoint[][];
  bands: AgeBand[];
}

/** All packs of an item laid over each other by age: readings, likely paths, and the middle of those paths. */
export function fadeByAge(item: string, plan: Plan, reading: Reading, readings: PackReadings): FadeByAge {
  const born = new Map(reading.fleet.packs.map((row) => [nameKey(row.serial), row.made ?? row.inService]));
  const dots: AgePoint[] = [];
  const paths: AgePoint[][] = [];
  // Every path starts in the plan's first month.
  const ends = monthEnds(plan.horizon.from, monthsBetween(plan.horizon.from, plan.horizon.to).length);
  const asOf = dayNumber(plan.asOf);
  for (const pack of plan.packs) {
    const from = born.get(nameKey(pack.serial)) ?? null;
    if (pack.item !== item || from === null) continue;
    const age = (day: number) => (day - from) / DAYS_PER_YEAR;
    dots.push(...readingsOf(pack.serial, readings).map((dot) => ({ age: age(dot.day), percent: dot.percent })));
    const start = pack.capacityNow ? [{ age: age(asOf), percent: pack.capacityNow.p50 * 100 }] : [];
    const ahead = pack.path.p50.map((value, index) => ({
      age: age(ends[index]!),
      percent: value * 100,
    }));
    if (ahead.length > 0) paths.push([...start, ...ahead]);
  }
  // Of packs that were never read, their middles lie close together however little is known of any.
  return { dots, paths, bands: dots.length === 0 ? [] : bandsOf(paths) };
}

function bandsOf(paths: AgePoint[][]): AgeBand[] {
  const oldest = Math.max(0, ...paths.map((path) => path.at(-1)?.age ?? 0));
  const steps = Array.from({ length: Math.floor(oldest / STEP_YEARS) + 1 }, () => ({
    values: [] as number[],
    stay: 0,
  }));
  for (const path of paths) addTo(steps, path);
  return steps.flatMap(({ values, stay }, at) => {
    if (values.length < FEWEST_PACKS) return [];
    const anew = stay < MOST_STAY * Math.max(values.length, steps[at - 1]?.values.length ?? 0);
    const sorted = Float64Array.from(values).sort();
    return {
      age: at * STEP_YEARS,
      p10: quantile(sorted, 0.1),
      p50: quantile(sorted, 0.5),
      p90: quantile(sorted, 0.9),
      packs: values.length,
      anew,
    };
  });
}

/** Adds a path, straight between its points, to the ages that it spans, and to those who stay since the age before. */
function addTo(steps: { values: number[]; stay: number }[], path: AgePoint[]): void {
  const first = Math.max(0, Math.ceil(path[0]!.age / STEP_YEARS));
  const end = path.at(-1)!.age;
  let after = 0;
  for (let at = first; at * STEP_YEARS <= end; at += 1) {
    const age = at * STEP_YEARS;
    while (path[after]!.age < age) after += 1;
    const high = path[after]!;
    const low = path[after - 1];
    steps[at]!.values.push(
      low ? low.percent + ((high.percent - low.percent) * (age - low.age)) / (high.age - low.age) : high.percent,
    );
    if (at > first) steps[at]!.stay += 1;
  }
}

/** Readings of all packs by age, whatever their item: what can be shown before there is a forecast. */
export function dotsByAge({ fleet }: Reading, readings: PackReadings): AgePoint[] {
  return fleet.packs.flatMap((row) => {
    const from = row.made ?? row.inService;
    if (from === null) return [];
    return readingsOf(row.serial, readings).map(({ day, percent }) => ({ age: (day - from) / DAYS_PER_YEAR, percent }));
  });
}

/** Quantile of a sorted list, straight between neighbours. */
export function quantile(sorted: ArrayLike<number>, share: number): number {
  const at = share * (sorted.length - 1);
  const low = sorted[Math.floor(at)]!;
  return low + (sorted[Math.ceil(at)]! - low) * (at - Math.floor(at));
}
