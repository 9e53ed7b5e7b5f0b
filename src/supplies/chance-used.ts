import type { Day } from "../calendar/day.ts";
import { DAYS_PER_MONTH } from "../calendar/mean-year.ts";
import { convolve } from "../maths/convolution.ts";
import type { GammaRate } from "../maths/gamma-poisson.ts";
import { chancesServed, type KnownNeed, type ShelfNeeds, unitsServed } from "./chance-served.ts";
import type { ItemPlace } from "./item-place.ts";
import { routineDays } from "./routine-days.ts";
import { eachUnit, sumsByRun, total } from "./unit-runs.ts";

/** What a place takes from its units, and when. */
type UsingPlace = Pick<ItemPlace, "from" | "until" | "use" | "routinePerYear" | "routineStarted">;

const NO_USE: GammaRate = { shape: 0, exposure: 1 };

/** Above this many units at one place the rate is taken as known, at its mean: two counts are then not followed. */
const UNITS_FOLLOWED_EXACTLY = 60;

// tables of every call, since making them would take longer than filling them
const WAYS = new Float64Array(UNITS_FOLLOWED_EXACTLY ** 2);
const WEIGHTS = new Float64Array(UNITS_FOLLOWED_EXACTLY);
const CHANCES = new Float64Array(UNITS_FOLLOWED_EXACTLY);

/**
 * Chances that each of a place's units, in the order of their swap days, is used before that day.
 *
 * Uses take the unit that expires first (FEFO), so a place's units share one stream of uses: the k-th is used only
 * if k units have left, by use or by expiry, before its day. The stream is Poisson with a gamma rate. Given the events
 * of each stretch between swap days, the rate matters only through how many there were in all, and so the ways to reach
 * (units gone, events so far) are weighed without it, as if the rate were one, and the rate enters where a chance is
 * read off. Once all units are gone none can lapse: such ways are dropped, and a chance is one less what is left.
 * Replacements expire later and do not come before the units counted here.
 *
 * @param swapDays  ascending
 * @param place  gives the use rate and the routine, both counted as use
 * @param unitsPerUse  chance that a use takes 0, 1, 2 ... units, that of 0 being 0
 */
export function chancesUsed(swapDays: readonly Day[], place: UsingPlace, unitsPerUse: Float64Array): Float64Array {
  const units = swapDays.length;
  if (units > UNITS_FOLLOWED_EXACTLY)
    return chancesServed(swapDays, needsAt(place, swapDays[units - 1]!, units, unitsPerUse));
  return workOut(swapDays, place, unitsPerUse).slice(0, units);
}

/** Expected units used before their swap days, of a place's units together. */
export function expectedUsed(swapDays: readonly Day[], place: UsingPlace, unitsPerUse: Float64Array): number {
  const units = swapDays.length;
  const chances =
    units > UNITS_FOLLOWED_EXACTLY ? chancesUsed(swapDays, place, unitsPerUse) : workOut(swapDays, place, unitsPerUse);
  let used = 0;
  for (let unit = 0; unit < units; unit++) used += chances[unit]!;
  return used;
}

/** The chances of so few units that they are followed exactly, in the table of all calls: it holds until the next. */
function workOut(swapDays: readonly Day[], place: UsingPlace, unitsPerUse: Float64Array): Float64Array {
  const units = swapDays.length;
  const chances = CHANCES.fill(0, 0, units);
  const rate = place.use?.rate ?? null;
  const scheduled = routineDays(place, swapDays[units - 1] ?? place.from, units);
  if (units === 0 || (rate === null && scheduled.length === 0)) return chances;
  const ways = WAYS.fill(0, 0, units * units);
  ways[0] = 1;
  const sizes = unitsPerUse.length > 2 ? sizesOfEvents(unitsPerUse, units) : null;
  const known = rate ?? NO_USE;
  let at = place.from;
  let nextScheduled = 0;
  // fewest units gone, and most that went other than by use
  let fewest = 0;
  let unused = 0;
  const runTo = (day: number) => {
    const stop = Math.max(at, Math.min(day, place.until));
    if (rate && stop > at) {
      const weights = weightsOfEvents((stop - at) / DAYS_PER_MONTH, units - fewest);
      if (sizes) useSizes(ways, units, fewest, weights, sizes);
      else useSingly(ways, units, fewest, unused, weights);
    }
    at = stop;
  };
  for (let k = 0; k < units; k++) {
    const day = swapDays[k]!;
    while (nextScheduled < scheduled.length && scheduled[nextScheduled]! < day) {
      runTo(scheduled[nextScheduled++]!);
      // one unit more is gone, whatever was gone before
      ways.copyWithin(units, 0, units * (units - 1));
      ways.fill(0, 0, units);
      fewest += 1;
      unused += 1;
    }
    if (fewest > k) {
      chances[k] = 1;
      continue;
    }
    runTo(day);
    // the unit lapses where no more than those before it are gone
    const lapses = readOff(ways, k * units, k + 1, known, (at - place.from) / DAYS_PER_MONTH);
    chances[k] = Math.min(1, Math.max(0, 1 - lapses));
    if (k + 1 < units) for (let e = 0; e <= k; e++) ways[(k + 1) * units + e]! += ways[k * units + e]!;
    fewest = k + 1;
    unused += 1;
  }
  return chances;
}

/**
 * Units of each run that are used before its day, as the chances of `chancesUsed` add up. They hold until the next call.
 *
 * @param days  swap days of the runs, ascending
 * @param units  of each run
 */
export function unitsUsed(
  days: readonly Day[],
  units: readonly number[],
  place: UsingPlace,
  unitsPerUse: Float64Array,
): Float64Array {
  const all = total(units);
  return all > UNITS_FOLLOWED_EXACTLY
    ? unitsServed(days, units, needsAt(place, days.at(-1)!, all, unitsPerUse))
    : sumsByRun(units, workOut(eachUnit(days, units), place, unitsPerUse));
}

/** What a place takes of so many units, its rate taken as known. */
function needsAt(place: UsingPlace, end: Day, units: number, unitsPerUse: Float64Array): ShelfNeeds {
  const usesPerMonth = place.use === null ? 0 : place.use.rate.shape / place.use.rate.exposure;
  const known = routineDays(place, end, units).map((day): KnownNeed => [day, 1]);
  return { from: place.from, known, usesPerMonth, unitsPerUse };
}

/** Chance of the ways that start at an index, which are of 0, 1, ... events in the months so far. */
function readOff(
  ways: Float64Array,
  start: number,
  count: number,
  { shape, exposure }: GammaRate,
  months: number,
): number {
  // density of so many events at given times, where the rate is gamma distributed
  let density = Math.exp(-shape * Math.log1p(months / exposure));
  let chance = 0;
  for (let events = 0; events < count; events++) {
    chance += ways[start + events]! * density;
    density *= (shape + events) / (exposure + months);
  }
  return chance;
}

/** Densities of 0, 1, 2 ... events in some months, at a rate of one, as far as there are units left. */
function weightsOfEvents(months: number, left: number): Float64Array {
  WEIGHTS[0] = 1;
  for (let events = 1; events < left; events++) WEIGHTS[events] = WEIGHTS[events - 1]! * (months / events);
  return WEIGHTS;
}

/**
 * Some months of uses that take a unit each. In place: a row (units gone) takes from rows before it, which are changed
 * after it; at an event, units gone and events grow alike.
 */
function useSingly(ways: Float64Array, units: number, fewest: number, unused: number, weights: Float64Array): void {
  for (let gone = units - 1; gone > fewest; gone--) {
    for (let events = gone; events > 0 && gone - events <= unused; events--) {
      let into = ways[gone * units + events]!;
      const most = Math.min(events, gone - fewest);
      let from = gone * units + events;
      for (let j = 1; j <= most; j++) {
        from -= units + 1;
        into += ways[from]! * weights[j]!;
      }
      ways[gone * units + events] = into;
    }
  }
}

/** Some months of uses that take one unit or more each. In place, as `useSingly`. */
function useSizes(
  ways: Float64Array,
  units: number,
  fewest: number,
  weights: Float64Array,
  sizes: readonly Float64Array[],
): void {
  for (let gone = units - 1; gone > fewest; gone--) {
    for (let events = gone; events > 0; events--) {
      let into = ways[gone * units + events]!;
      for (let j = 1; j <= Math.min(events, gone - fewest); j++) {
        const taken = sizes[j]!;
        const most = Math.min(taken.length - 1, gone - fewest);
        let sum = 0;
        for (let n = j; n <= most; n++) sum += ways[(gone - n) * units + events - j]! * taken[n]!;
        into += sum * weights[j]!;
      }
      ways[gone * units + events] = into;
    }
  }
}

const knownSizes = new WeakMap<Float64Array, Float64Array[]>();

/** Chances of the units that 0, 1, 2 ... events take together, as far as there are units; worked out once an item. */
function sizesOfEvents(unitsPerUse: Float64Array, units: number): Float64Array[] {
  const sums = knownSizes.get(unitsPerUse) ?? [Float64Array.of(1)];
  knownSizes.set(unitsPerUse, sums);
  while (sums.length < units) sums.push(convolve(sums.at(-1)!, unitsPerUse).slice(0, UNITS_FOLLOWED_EXACTLY));
  return sums;
}
