import type { Day } from "../calendar/day.ts";
import { convolve } from "../maths/convolution.ts";
import { negativeBinomial } from "../maths/gamma-poisson.ts";
import { chancesServed } from "./chance-served.ts";
import type { ItemPlace } from "./item-places.ts";
import { routineDays } from "./routine-days.ts";
import { DAYS_PER_MONTH } from "./use-rates.ts";

/** Above this many units at one place the rate is taken as known, at its mean: two counts are then not followed. */
const UNITS_FOLLOWED_EXACTLY = 60;

/**
 * Chances that each of a place's units, in the order of their swap days, is used before that day.
 *
 * Uses take the unit that expires first (FEFO), so a place's units share one stream of uses: the k-th is used only
 * if k units have left, by use or by expiry, before its day. The stream is Poisson with a gamma rate, and so a
 * Markov chain in (events so far, units left so far), followed exactly from swap day to swap day; units left are
 * counted to the last unit. Replacements expire later and do not come before the units counted here.
 *
 * @param swapDays  ascending
 * @param place  gives the use rate and the routine, both counted as use
 * @param unitsPerUse  chance that a use takes 0, 1, 2 ... units
 */
export function chancesUsed(
  swapDays: readonly Day[],
  place: Pick<ItemPlace, "from" | "until" | "use" | "routinePerYear" | "routineStarted">,
  unitsPerUse: Float64Array,
): Float64Array {
  const units = swapDays.length;
  const chances = new Float64Array(units);
  const rate = place.use?.rate ?? null;
  const end = swapDays[units - 1] ?? place.from;
  const scheduled = routineDays(place as ItemPlace, end);
  if (units === 0 || (rate === null && scheduled.length === 0)) return chances;
  if (units > UNITS_FOLLOWED_EXACTLY) {
    const usesPerMonth = rate === null ? 0 : rate.shape / rate.exposure;
    return chancesServed(swapDays, { from: place.from, knownDays: scheduled, usesPerMonth, unitsPerUse });
  }
  const width = units + 1;
  const ofEvents = rate ? unitsOfEvents(unitsPerUse, units) : [];
  const more = new Float64Array(width);
  // left[events * width + units gone]
  let left = new Float64Array(width * width);
  left[0] = 1;
  let at = place.from;
  let nextScheduled = 0;
  const runTo = (day: number) => {
    const stop = Math.max(at, Math.min(day, place.until));
    if (rate && stop > at) {
      const seen = (at - place.from) / DAYS_PER_MONTH;
      left = useFor(left, units, rate.shape, rate.exposure + seen, (stop - at) / DAYS_PER_MONTH, ofEvents, more);
    }
    at = stop;
  };
  for (let k = 0; k < units; k++) {
    const day = swapDays[k]!;
    while (nextScheduled < scheduled.length && scheduled[nextScheduled]! < day) {
      runTo(scheduled[nextScheduled++]!);
      left = shiftUnits(left, units);
    }
    runTo(day);
    chances[k] = chanceAtLeast(left, width, k + 1);
    raiseTo(left, width, k + 1);
  }
  return chances;
}

/** Units that some events take: chances of 0, 1, ... units, and the fewest that have any. */
interface Taken {
  fewest: number;
  chances: Float64Array;
}

/** Distribution of the units taken by 0, 1, ... events, the last entry holding "units or more". */
function unitsOfEvents(unitsPerUse: Float64Array, units: number): Taken[] {
  const sums = [Float64Array.of(1)];
  for (let events = 1; events <= units; events++) {
    const sum = convolve(sums[events - 1]!, unitsPerUse);
    const capped = new Float64Array(Math.min(sum.length, units + 1));
    for (let n = 0; n < sum.length; n++) {
      const into = Math.min(n, units);
      capped[into] = capped[into]! + sum[n]!;
    }
    sums.push(capped);
  }
  return sums.map((chances) => ({ fewest: chances.findIndex((chance) => chance > 0), chances }));
}

/** What is left after some months of use. @param more  room for the chances of more events */
function useFor(
  left: Float64Array,
  units: number,
  shape: number,
  exposure: number,
  months: number,
  ofEvents: readonly Taken[],
  more: Float64Array,
): Float64Array<ArrayBuffer> {
  const width = units + 1;
  const next = new Float64Array(width * width);
  for (let events = 0; events <= units; events++) {
    let known = false;
    for (let gone = events; gone <= units; gone++) {
      const chance = left[events * width + gone]!;
      if (chance === 0) continue;
      if (!known) restInLast(negativeBinomial({ shape: shape + events, exposure }, months, units, more));
      known = true;
      for (let j = 0; j <= units; j++) {
        const { fewest, chances } = ofEvents[j]!;
        const row = Math.min(units, events + j) * width;
        const both = chance * more[j]!;
        for (let n = fewest; n < chances.length; n++) {
          const into = row + Math.min(units, gone + n);
          next[into] = next[into]! + both * chances[n]!;
        }
      }
    }
  }
  return next;
}

function restInLast(chances: Float64Array): void {
  let rest = 1;
  for (let n = 0; n < chances.length - 1; n++) rest -= chances[n]!;
  chances[chances.length - 1] = Math.max(0, rest);
}

/** One unit more is gone, whatever was gone before. */
function shiftUnits(left: Float64Array, units: number): Float64Array<ArrayBuffer> {
  const width = units + 1;
  const next = new Float64Array(width * width);
  for (let events = 0; events < width; events++) {
    for (let gone = 0; gone < width; gone++) {
      const into = events * width + Math.min(units, gone + 1);
      next[into] = next[into]! + left[events * width + gone]!;
    }
  }
  return next;
}

function chanceAtLeast(left: Float64Array, width: number, gone: number): number {
  let chance = 0;
  for (let row = 0; row < left.length; row += width) for (let n = gone; n < width; n++) chance += left[row + n]!;
  return Math.min(1, chance);
}

/** An expiry: whoever has not lost `gone` units yet loses up to that number. In place. */
function raiseTo(left: Float64Array, width: number, gone: number): void {
  for (let events = 0; events < width; events++) {
    const row = events * width;
    let short = 0;
    for (let n = 0; n < gone; n++) {
      short += left[row + n]!;
      left[row + n] = 0;
    }
    left[row + gone] = left[row + gone]! + short;
  }
}
