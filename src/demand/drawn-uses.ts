import type { Random } from "../maths/random.ts";
import type { PlaceUses } from "./place-run.ts";

/** Up to so many days are sorted by insertion. */
const FEW = 30;

/** A time at a place: its first day, and how many days it lasts. */
export interface Stretch {
  from: number;
  days: number;
}

/**
 * Draws the days and sizes of the uses at a place in one of some runs with equally many. Given their number, the uses of a
 * steady rate fall evenly over the time: each in another part of it in every run, so that they do so over few runs, too.
 *
 * @param parts  by use and run: the part of the time in which it falls, of as many as there are runs
 * @param sizes  chance that a use takes 0, 1, 2 ... units
 * @param into  filled
 */
export function drawUses(
  parts: readonly Uint32Array[],
  run: number,
  { from, days }: Stretch,
  sizes: Float64Array,
  random: Random,
  into: PlaceUses,
): void {
  const count = parts.length;
  into.count = count;
  if (count > into.days.length) {
    into.days = new Float64Array(2 * count);
    into.units = new Int32Array(2 * count);
  }
  for (let use = 0; use < count; use++) {
    into.days[use] = from + ((parts[use]![run]! + random.uniform()) / parts[use]!.length) * days;
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
