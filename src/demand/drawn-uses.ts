import type { Random } from "../maths/random.ts";
import type { PlaceUses } from "./place-run.ts";

/** Up to so many days are sorted by insertion. */
const FEW = 30;

/** A time at a place: its first day, and how many days it lasts. */
export interface Stretch {
  from: number;
  days: number;
}

/** Runs of a place with equally many uses. */
export interface AlikeRuns {
  runs: number;
  /** Near their golden section, and with no factor in common with their number: its multiples meet every part. */
  step: number;
  /** Where the turns of each use begin; below `runs`. */
  begins: Float64Array;
}

/** So many runs of so many uses. */
export function alikeRuns(runs: number, uses: number, random: Random): AlikeRuns {
  let step = Math.round(runs * 0.618);
  while (sharedFactor(step, runs) > 1) step++;
  return { runs, step, begins: new Float64Array(uses).map(() => runs * random.uniform()) };
}

function sharedFactor(a: number, b: number): number {
  return b === 0 ? a : sharedFactor(b, a % b);
}

/**
 * Draws the days and sizes of the uses at a place in one of some runs. Given their number, the uses of a steady rate fall
 * evenly over the time: each in another part of it in every run, so that they do so over few runs, too.
 *
 * Run r has its use k in part r step^k + begins[k] of as many as there are runs, modulo those: a lattice.
 *
 * @param sizes  chance that a use takes 0, 1, 2 ... units
 * @param into  filled
 * @see Korobov, N. M. (1959), The approximate computation of multiple integrals, Doklady Akademii Nauk SSSR 124,
 *   1207-1210 (from memory)
 */
export function drawUses(
  { runs, step, begins }: AlikeRuns,
  run: number,
  { from, days }: Stretch,
  sizes: Float64Array,
  random: Random,
  into: PlaceUses,
): void {
  const count = begins.length;
  let turn = run;
  into.count = count;
  if (count > into.days.length) {
    into.days = new Float64Array(2 * count);
    into.units = new Int32Array(2 * count);
  }
  for (let use = 0; use < count; use++) {
    const part = Math.floor(turn + begins[use]!) % runs;
    turn = (turn * step) % runs;
    into.days[use] = from + ((part + random.uniform()) / runs) * days;
    // sizes are independent of days, so that only the days need be in order
    into.units[use] = sizeAt(random.uniform(), sizes);
  }
  sortFirst(count, into.days);
}

/** Sorts the first so many days; nearly always there are a few, and millions of runs have some. */
function sortFirst(count: number, days: Float64Array): void {
  if (count > FEW) {
    days.subarray(0, count).sort();
    return;
  }
  for (let i = 1; i < count; i++) {
    const day = days[i]!;
    let at = i;
    for (; at > 0 && days[at - 1]! > day; at--) days[at] = days[at - 1]!;
    days[at] = day;
  }
}

function sizeAt(level: number, sizes: Float64Array): number {
  let below = 0;
  for (let units = 0; units < sizes.length; units++) {
    below += sizes[units]!;
    if (level < below) return units;
  }
  return sizes.length - 1;
}
