import { normalDensity } from "../maths/normal.ts";
import { GRID_SIZE, gridIndex } from "./time-grid.ts";

/** Entries of a tally by time: one for what has come by now, then one a grid time. */
export const TALLY_SIZE = GRID_SIZE + 1;

/**
 * Adds what comes after some days to a tally: entry 0 holds what has come by now, entry k + 1 what comes at grid time k,
 * shared out between the two grid times about it. What comes after the grid is left out.
 *
 * @param days  days ahead; 0 or less where it has come
 */
export function addArrival(tally: Float64Array, days: number, weight: number): void {
  if (!(days > 0)) {
    tally[0] = tally[0]! + weight;
    return;
  }
  const index = gridIndex(days, 0);
  if (!(index < GRID_SIZE - 1)) return;
  const below = Math.floor(index);
  const share = index - below;
  tally[below + 1] = tally[below + 1]! + weight * (1 - share);
  tally[below + 2] = tally[below + 2]! + weight * share;
}

/** Variance that sharing between two grid times adds, on average over where between them. */
const SHARING = 1 / 6;
const REACH = 3.5;

/** Spreads are rounded to so many parts of a grid step, and their weights kept: few differ. */
const PARTS = 32;
const kept: Float64Array[] = [];

/**
 * Weights of a normal spread over the grid times about one, less the spread that the tally itself brings.
 *
 * @param sd  in grid steps
 * @returns an odd number of weights that add up to 1
 */
export function spreadOverSteps(sd: number): Float64Array {
  const at = Math.round(sd * PARTS);
  kept[at] ??= weightsOf(at / PARTS);
  return kept[at];
}

function weightsOf(sd: number): Float64Array {
  const left = Math.sqrt(Math.max(0, sd * sd - SHARING));
  const reach = left < 0.2 ? 0 : Math.ceil(REACH * left);
  const weights = Float64Array.from({ length: 2 * reach + 1 }, (_, i) =>
    reach === 0 ? 1 : normalDensity((i - reach) / left),
  );
  const total = weights.reduce((a, b) => a + b, 0);
  return weights.map((weight) => weight / total);
}

/** Adds a tally to `into`, its times spread, in logs; entry 0, which has come, as it is. */
export function spreadTally(tally: Float64Array, spread: Float64Array, into: Float64Array): void {
  const reach = (spread.length - 1) / 2;
  let first = 1;
  let last = GRID_SIZE;
  while (first <= last && tally[first] === 0) first++;
  while (last >= first && tally[last] === 0) last--;
  into[0] = into[0]! + tally[0]!;
  for (let k = first; k <= last; k++) {
    const weight = tally[k]!;
    for (let j = -reach; j <= reach; j++) {
      // spread to before now means now's first step; spread to after the grid is left out
      const at = Math.max(1, k + j);
      if (at <= GRID_SIZE) into[at] = into[at]! + weight * spread[j + reach]!;
    }
  }
}

/**
 * Chances by grid time from a tally.
 *
 * @param scale  total weight
 * @param into   receives GRID_SIZE chances
 */
export function chancesOf(tally: Float64Array, scale: number, into: Float32Array): void {
  // what comes at a grid time has half come by it, as times lie about it on both sides
  let before = tally[0]!;
  for (let k = 0; k < GRID_SIZE; k++) {
    const here = tally[k + 1]!;
    into[k] = Math.min(1, (before + (k === 0 ? 0 : 0.5 * here)) / scale);
    before += here;
  }
}
