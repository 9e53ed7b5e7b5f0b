import type { Day } from "../calendar/day.ts";
import { DAYS_PER_MONTH } from "../calendar/mean-year.ts";
import { convolve } from "../maths/convolution.ts";
import { poissonCounts } from "../maths/poisson.ts";
import { eachUnit, sumsByRun, total } from "./unit-runs.ts";

/** A need of one unit that falls on a day, if at all: what lapses in a device does so only where it is not used before. */
export type KnownNeed = readonly [day: number, chance: number];

/** Needs that a shelf serves: those of known days, and a stream at a rate. */
export interface ShelfNeeds {
  from: Day;
  /** By day ascending. */
  known: readonly KnownNeed[];
  /** Expected uses a month, from everywhere. */
  usesPerMonth: number;
  unitsPerUse: Float64Array;
}

/** Above this many units the distribution is followed in its mean only: chances are then 0, 1 or a share of one. */
const UNITS_FOLLOWED_EXACTLY = 400;

/**
 * Chances that each of a shelf's units, in the order of their last days, leaves for a need up to that day.
 *
 * The shelf serves in order of expiry. Uses are taken as Poisson at their expected rate, known needs each by
 * itself.
 *
 * @param lastDays  ascending
 */
export function chancesServed(lastDays: readonly Day[], needs: ShelfNeeds): Float64Array {
  return unitsServed(
    lastDays,
    lastDays.map(() => 1),
    needs,
  );
}

/**
 * Units of each run that leave for a need, as the chances of `chancesServed` add up.
 *
 * @param days  last days of the runs, ascending
 * @param units  of each run
 */
export function unitsServed(days: readonly Day[], units: readonly number[], needs: ShelfNeeds): Float64Array {
  if (total(units) > UNITS_FOLLOWED_EXACTLY) return servedOnAverage(days, units, needs);
  return sumsByRun(units, servedExactly(eachUnit(days, units), needs));
}

function servedExactly(lastDays: readonly Day[], needs: ShelfNeeds): Float64Array {
  const units = lastDays.length;
  const chances = new Float64Array(units);
  let gone = new Float64Array(units + 1);
  gone[0] = 1;
  let at = needs.from;
  const { known } = needs;
  let met = 0;
  for (let k = 0; k < units; k++) {
    const day = lastDays[k]!;
    if (day > at) {
      gone = after(gone, unitsOfUses(needs, day - at, units));
      at = day;
    }
    for (; met < known.length && known[met]![0] <= day; met++) {
      const chance = known[met]![1];
      gone = after(gone, Float64Array.of(1 - chance, chance));
    }
    for (let n = k + 1; n <= units; n++) chances[k] = chances[k]! + gone[n]!;
    // an expiry: at least k + 1 units are gone from here on
    let short = 0;
    for (let n = 0; n <= k; n++) {
      short += gone[n]!;
      gone[n] = 0;
    }
    gone[k + 1] = gone[k + 1]! + short;
  }
  return chances.map((chance) => Math.min(1, chance));
}

function after(gone: Float64Array, used: Float64Array): Float64Array<ArrayBuffer> {
  const last = gone.length - 1;
  const next = new Float64Array(gone.length);
  for (let n = 0; n <= last; n++) {
    const chance = gone[n]!;
    if (chance === 0) continue;
    for (let u = 0; u < used.length; u++) {
      const into = Math.min(last, n + u);
      next[into] = next[into]! + chance * used[u]!;
    }
  }
  return next;
}

/** Distribution of units taken in some days, with everything from `most` on in the last entry. */
function unitsOfUses(needs: ShelfNeeds, days: number, most: number): Float64Array {
  const events = poissonCounts((needs.usesPerMonth * days) / DAYS_PER_MONTH, most);
  if (needs.unitsPerUse.length === 2) return events;
  const units = new Float64Array(most + 1);
  let taken: Float64Array = Float64Array.of(1);
  for (let count = 0; count < events.length; count++) {
    for (let n = 0; n < taken.length; n++) units[n]! += events[count]! * taken[n]!;
    const more = convolve(taken, needs.unitsPerUse);
    taken = more.slice(0, most + 1);
    for (let n = most + 1; n < more.length; n++) taken[most]! += more[n]!;
  }
  return units;
}

function servedOnAverage(days: readonly Day[], units: readonly number[], needs: ShelfNeeds): Float64Array {
  const meanUnits = needs.unitsPerUse.reduce((sum, chance, units) => sum + chance * units, 0);
  const perDay = (needs.usesPerMonth * meanUnits) / DAYS_PER_MONTH;
  let gone = 0;
  let at = needs.from;
  const { known } = needs;
  let met = 0;
  let before = 0;
  const served = new Float64Array(days.length);
  for (let run = 0; run < days.length; run++) {
    const day = days[run]!;
    if (day > at) {
      gone += perDay * (day - at);
      at = day;
    }
    for (; met < known.length && known[met]![0] <= day; met++) gone += known[met]![1];
    served[run] = Math.min(units[run]!, Math.max(0, gone - before));
    before += units[run]!;
    gone = Math.max(gone, before);
  }
  return served;
}
