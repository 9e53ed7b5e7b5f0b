import type { Plan, Reading } from "../src/index.ts";
import { dayText } from "./months.ts";
import { nameKey, type PackReadings, readingsOf } from "./pack-readings.ts";

/** A pack, or a group of packs, that lies lower than its like did at the same age. */
export interface EarlySign {
  kind: "pack" | "site" | "batch";
  item: string;
  /** Serial, site, or the month in which the batch was made (`YYYY-MM`). */
  name: string;
  packs: number;
  /** Percentage points below the like, > 0. */
  below: number;
}

const DAYS_PER_YEAR = 365.25;
/** Readings of other packs within a quarter of a year of age either way are of the same age. */
const SAME_AGE_YEARS = 0.25;
const FEWEST_LIKE = 5;
const MOST_LIKE = 120;
const LATEST_READINGS = 3;
/** Measuring scatter of a runtime test is about two points (common practice, no source): below that, no sign. */
const PACK_POINTS = 5;
const GROUP_POINTS = 2;
const FEWEST_IN_GROUP = 4;
const STANDARD_ERRORS = 2;

interface Aged {
  serial: string;
  age: number;
  percent: number;
}

/**
 * Packs, sites and batches whose readings lie clearly below those of the same item's other packs at the same age.
 * Plain arithmetic on readings, no forecast: a pack's shortfall is the mean of its last three readings' distance to
 * the median of its like; a group counts where its mean shortfall is two points and two standard errors at least.
 */
export function earlySigns(plan: Plan, { fleet }: Reading, readings: PackReadings): EarlySign[] {
  const made = new Map(fleet.packs.map((row) => [nameKey(row.serial), row.made ?? row.inService]));
  const signs: EarlySign[] = [];
  for (const item of new Set(plan.packs.map((pack) => pack.item))) {
    const packs = plan.packs.filter((pack) => pack.item === item);
    const aged = packs.map((pack) => agedReadings(pack.serial, made.get(nameKey(pack.serial)) ?? null, readings));
    const all = aged.flat().sort((a, b) => a.age - b.age);
    const below = aged.map((own) => shortfall(own, all));
    packs.forEach((pack, index) => {
      const points = below[index] ?? null;
      if (points !== null && points >= PACK_POINTS) {
        signs.push({ kind: "pack", item, name: pack.serial, packs: 1, below: points });
      }
    });
    const siteOf = (index: number) => packs[index]?.site ?? null;
    const batchOf = (index: number) => {
      const day = made.get(nameKey(packs[index]?.serial ?? "")) ?? null;
      return day === null ? null : dayText(day).slice(0, 7);
    };
    signs.push(...groups("site", item, below, siteOf), ...groups("batch", item, below, batchOf));
  }
  return signs.sort((a, b) => b.below - a.below);
}

function agedReadings(serial: string, made: number | null, readings: PackReadings): Aged[] {
  if (made === null) return [];
  return readingsOf(serial, readings).map(({ day, percent }) => ({
    serial,
    age: (day - made) / DAYS_PER_YEAR,
    percent,
  }));
}

/** How far a pack's latest readings lie below their like, in points; null where too few are alike. */
function shortfall(own: readonly Aged[], all: readonly Aged[]): number | null {
  const distances = own.slice(-LATEST_READINGS).flatMap((reading) => {
    const like = ofSameAge(reading, all);
    return like.length < FEWEST_LIKE ? [] : [median(like.map((o) => o.percent)) - reading.percent];
  });
  return distances.length === 0 ? null : mean(distances);
}

/** Other packs' readings of the same age; of very many an even choice, since more would not move their median. */
function ofSameAge(reading: Aged, byAge: readonly Aged[]): Aged[] {
  const from = firstAt(byAge, reading.age - SAME_AGE_YEARS);
  const to = firstAt(byAge, reading.age + SAME_AGE_YEARS);
  const step = Math.max(1, Math.ceil((to - from) / MOST_LIKE));
  const like: Aged[] = [];
  for (let at = from; at < to; at += step) if (byAge[at]!.serial !== reading.serial) like.push(byAge[at]!);
  return like;
}

/** Index of the first reading of at least an age. */
function firstAt(byAge: readonly Aged[], age: number): number {
  let [low, high] = [0, byAge.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (byAge[middle]!.age < age) low = middle + 1;
    else high = middle;
  }
  return low;
}

function groups(
  kind: "site" | "batch",
  item: string,
  below: readonly (number | null)[],
  nameOf: (index: number) => string | null,
): EarlySign[] {
  const members = new Map<string, number[]>();
  below.forEach((points, index) => {
    const name = nameOf(index);
    if (points === null || name === null) return;
    members.set(name, [...(members.get(name) ?? []), points]);
  });
  return [...members].flatMap(([name, points]) => {
    if (points.length < FEWEST_IN_GROUP) return [];
    const middle = mean(points);
    const spread = Math.sqrt(mean(points.map((value) => (value - middle) ** 2)) / (points.length - 1));
    const clear = middle >= GROUP_POINTS && middle >= STANDARD_ERRORS * spread;
    return clear ? [{ kind, item, name, packs: points.length, below: middle }] : [];
  });
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function median(values: number[]): number {
  const sorted = values.sort((a, b) => a - b);
  const middle = sorted.length / 2;
  return sorted.length % 2 === 1 ? sorted[Math.floor(middle)]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}
