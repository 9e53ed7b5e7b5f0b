import type { Plan, Reading } from "../src/index.ts";
import { dayNumber, monthEnds, monthsBetween } from "./months.ts";
import { nameKey } from "./name-key.ts";
import { type PackReadings, readingsOf } from "./pack-readings.ts";

const DAYS_PER_YEAR = 365.25;
const STEP_YEARS = 0.25;
const FEWEST_PACKS = 5;
// Where fewer of the packs stay from one step to the next, the middle would step because the packs change, not fade.
const MOST_STAY = 0.75;

// More lines than this are a grey smear that says no more.
const MOST_PATHS = 150;

/** As a chart takes it. */
export interface AgePoint {
  /** Years since made (since in service where the making is not known). */
  x: number;
  /** Percent of rated capacity. */
  y: number;
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
  /** Of some of the packs, where they are many. */
  paths: AgePoint[][];
  bands: AgeBand[];
  /** Years of the oldest reading or path. */
  oldest: number;
}

/** All packs of an item laid over each other by age: readings, likely paths, and the middle of those paths. */
export function fadeByAge(item: string, plan: Plan, reading: Reading, readings: PackReadings): FadeByAge {
  const born = new Map(reading.fleet.packs.map((row) => [nameKey(row.serial), row.made ?? row.inService]));
  const dots: AgePoint[] = [];
  const paths: AgePoint[][] = [];
  // Every path starts in the plan's first month, and at as-of where the capacity then is known.
  const ends = monthEnds(plan.horizon.from, monthsBetween(plan.horizon.from, plan.horizon.to).length);
  const asOf = dayNumber(plan.asOf);
  const steps: Step[] = [];
  let oldest = 0;
  for (const pack of plan.packs) {
    const from = born.get(nameKey(pack.serial)) ?? null;
    if (pack.item !== item || from === null) continue;
    const age = (day: number) => (day - from) / DAYS_PER_YEAR;
    for (const { day, percent } of readingsOf(pack.serial, readings)) {
      dots.push({ x: age(day), y: percent });
      oldest = Math.max(oldest, age(day));
    }
    const { p50 } = pack.path;
    if (p50.length === 0) continue;
    const now = pack.capacityNow;
    const path = p50.map((value, index) => ({ x: age(ends[index]!), y: value * 100 }));
    if (now) path.unshift({ x: age(asOf), y: now.p50 * 100 });
    oldest = Math.max(oldest, path.at(-1)!.x);
    addTo(steps, path);
    if (paths.length < MOST_PATHS) paths.push(path);
  }
  // Of packs that were never read, their middles lie close together however little is known of any.
  return { dots, paths, oldest, bands: dots.length === 0 ? [] : bandsOf(steps) };
}

/** What the paths say at one age. */
interface Step {
  values: number[];
  /** How many of the paths were there at the age before, too. */
  stay: number;
}

function bandsOf(steps: readonly Step[]): AgeBand[] {
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
function addTo(steps: Step[], path: readonly AgePoint[]): void {
  const first = Math.max(0, Math.ceil(path[0]!.x / STEP_YEARS));
  const end = path.at(-1)!.x;
  let after = 0;
  for (let at = first; at * STEP_YEARS <= end; at += 1) {
    const age = at * STEP_YEARS;
    while (path[after]!.x < age) after += 1;
    const high = path[after]!;
    const low = path[after - 1];
    while (steps.length <= at) steps.push({ values: [], stay: 0 });
    steps[at]!.values.push(low ? low.y + ((high.y - low.y) * (age - low.x)) / (high.x - low.x) : high.y);
    if (at > first) steps[at]!.stay += 1;
  }
}

/** Readings of all packs by age, whatever their item: what can be shown before there is a forecast. */
export function dotsByAge({ fleet }: Reading, readings: PackReadings): AgePoint[] {
  return fleet.packs.flatMap((row) => {
    const from = row.made ?? row.inService;
    if (from === null) return [];
    return readingsOf(row.serial, readings).map(({ day, percent }) => ({
      x: (day - from) / DAYS_PER_YEAR,
      y: percent,
    }));
  });
}

/** Quantile of a sorted list, straight between neighbours. */
export function quantile(sorted: ArrayLike<number>, share: number): number {
  const at = share * (sorted.length - 1);
  const low = sorted[Math.floor(at)]!;
  return low + (sorted[Math.ceil(at)]! - low) * (at - Math.floor(at));
}
