import type { Day } from "../calendar/day.ts";
import { DAYS_PER_YEAR } from "../calendar/mean-year.ts";
import { lastDayOfMonth, monthOfDay } from "../calendar/month.ts";
import { chanceAt, SPAN_PLACES } from "../fade/grid-chances.ts";
import { GRID_DAYS, GRID_SIZE, gridIndex, INDEX_PER_LOG_STRETCH, shiftedIndex } from "../fade/time-grid.ts";
import type { DateBand, ForecastKind } from "../fade/types.ts";
import type { Decline } from "./decline.ts";
import { keptFor } from "./kept-for.ts";

/** Dates later than this are as good as never. */
export const NEVER_AFTER_DAYS = 30 * DAYS_PER_YEAR;

/** How a pack runs down, as `Decline` has it. */
export type Chances = Pick<Decline, "chances" | "common">;

/**
 * Where the model error of a curve's draws takes the grid's own times. A shift moves every time but those near as-of,
 * where the grid is straight, by the same steps, so that a curve's draws together are one row of weights.
 */
interface CurveShifts {
  /** How many steps the first of the weights leads ahead, and the weight of that and of each further step. */
  lowest: number;
  weights: Float64Array;
  /** How many draws there are. */
  draws: number;
  /** The times near as-of: the places to which the draws take each, time after time. */
  near: Float64Array;
}

/** The model error is the same for all packs of an item, and so is where it leads. */
const shiftsOf = keptFor<Float64Array, CurveShifts[]>();

function shiftsByCurve(common: Float64Array, curves: number): CurveShifts[] {
  return Array.from({ length: curves }, (_, curve) => {
    const shifts = common
      .filter((_, draw) => draw % curves === curve)
      .map((stretch) => stretch * INDEX_PER_LOG_STRETCH);
    const wholes = shifts.map(Math.floor);
    const lowest = wholes.reduce((a, b) => Math.min(a, b), 0);
    const highest = wholes.reduce((a, b) => Math.max(a, b), lowest);
    const weights = new Float64Array(highest - lowest + 2);
    shifts.forEach((shift, i) => {
      const at = wholes[i]! - lowest;
      const share = shift - wholes[i]!;
      weights[at] = weights[at]! + 1 - share;
      weights[at + 1] = weights[at + 1]! + share;
    });
    const draws = shifts.length;
    const near = Float64Array.from({ length: (1 - lowest) * draws }, (_, i) =>
      shiftedIndex(Math.floor(i / draws), shifts[i % draws]!),
    );
    return { lowest, weights, draws, near };
  });
}

/** A curve's chances at all grid times, and at as many after them. */
const onGrid = new Float64Array(2 * GRID_SIZE);

/** Average over draws of chances on the time grid. */
export function averageChances({ chances, common }: Chances): Float64Array {
  const { curves, spans, values } = chances;
  const result = new Float64Array(GRID_SIZE);
  const shifts = shiftsOf(common, [curves], () => shiftsByCurve(common, curves));
  for (let curve = 0; curve < curves; curve++) {
    const { lowest, weights, draws, near } = shifts[curve]!;
    const begins = spans[curve * SPAN_PLACES]!;
    const settles = spans[curve * SPAN_PLACES + 1]!;
    const from = spans[curve * SPAN_PLACES + 2]! - begins;
    for (let i = 0; i < near.length; i++) {
      const k = Math.floor(i / draws);
      result[k] = result[k]! + chanceAt(chances, curve, near[i]!);
    }
    onGrid.fill(0, 0, begins);
    for (let k = begins; k <= settles; k++) onGrid[k] = values[from + k]!;
    onGrid.fill(values[from + settles]!, settles + 1);
    const first = Math.max(near.length / draws, begins - lowest - weights.length + 1);
    for (let k = first; k < GRID_SIZE; k++) {
      let sum = 0;
      for (let j = 0; j < weights.length; j++) sum += weights[j]! * onGrid[k + lowest + j]!;
      result[k] = result[k]! + sum;
    }
  }
  for (let k = 0; k < GRID_SIZE; k++) result[k] = Math.min(1, result[k]! / common.length);
  return result;
}

/** Where days ahead lie on the grid once a draw's model error has shifted them: the step below, and the share past it. */
interface Places {
  below: Uint8Array;
  share: Float64Array;
}

/** The model error is the same for all packs of an item, and so are the places that it leads to. */
const placesOf = keptFor<Float64Array, Places>();

/** Where days ahead lie on the grid, at draw * days + day. */
export function placesAhead(common: Float64Array, days: readonly number[]): Places {
  return placesOf(common, [days], () => placesOnGrid(common, days));
}

function placesOnGrid(common: Float64Array, days: readonly number[]): Places {
  const indices = Float64Array.from(days, (ahead) => gridIndex(ahead, 0));
  const below = new Uint8Array(common.length * days.length);
  const share = new Float64Array(common.length * days.length);
  for (let draw = 0; draw < common.length; draw++) {
    const shift = common[draw]! * INDEX_PER_LOG_STRETCH;
    for (let m = 0; m < indices.length; m++) {
      const at = draw * days.length + m;
      const index = shiftedIndex(indices[m]!, shift);
      below[at] = Math.min(GRID_SIZE - 2, Math.floor(index));
      share[at] = index - below[at]!;
    }
  }
  return { below, share };
}

/**
 * Sums over draws of the chances by the end of each month.
 *
 * @param groupOf  the group in which a draw is summed
 * @returns groups * months
 */
export function monthlySums(
  { chances, common }: Chances,
  asOf: Day,
  months: number,
  groupOf: Uint8Array,
  groups: number,
): Float64Array {
  const { curves, spans, values } = chances;
  const days = monthEndsAhead(asOf, months);
  const { below, share } = placesAhead(common, days);
  const sums = new Float64Array(groups * months);
  for (let draw = 0; draw < common.length; draw++) {
    const span = (draw % curves) * SPAN_PLACES;
    const begins = spans[span]!;
    const settles = spans[span + 1]!;
    const from = spans[span + 2]! - begins;
    const into = groupOf[draw]! * months;
    const at = draw * months;
    let m = 0;
    while (m < months && below[at + m]! < begins) m++;
    for (; m < months && below[at + m]! < settles; m++) {
      const k = from + below[at + m]!;
      const part = share[at + m]!;
      sums[into + m] = sums[into + m]! + values[k]! * (1 - part) + values[k + 1]! * part;
    }
    const last = values[from + settles]!;
    for (; m < months; m++) sums[into + m] = sums[into + m]! + last;
  }
  return sums;
}

/** Month ends by as-of and number of months: every pack of a plan asks for the same. */
const monthEnds = new Map<string, readonly number[]>();

/** Days from as-of to the end of each month, as-of's first. The same list for the same months. */
export function monthEndsAhead(asOf: Day, months: number): readonly number[] {
  const key = `${asOf} ${months}`;
  const known = monthEnds.get(key);
  if (known) return known;
  const first = monthOfDay(asOf);
  const ends = Array.from({ length: months }, (_, m) => lastDayOfMonth(first + m) - asOf);
  monthEnds.set(key, ends);
  return ends;
}

/** First day ahead on which a non-decreasing chance on the grid reaches a level; null where later than 30 years. */
function daysToChance(chance: ArrayLike<number>, level: number): number | null {
  if (chance[0]! >= level) return 0;
  for (let k = 1; k < GRID_SIZE; k++) {
    if (chance[k]! < level) continue;
    const share = (level - chance[k - 1]!) / (chance[k]! - chance[k - 1]!);
    const days = GRID_DAYS[k - 1]! + share * (GRID_DAYS[k]! - GRID_DAYS[k - 1]!);
    // a day is reached once it has passed; the tolerance keeps engines from differing by a day
    return days > NEVER_AFTER_DAYS ? null : Math.ceil(days - 1e-6);
  }
  return null;
}

/** P10, P50 and P90 dates of a chance on the grid, with the kind of forecast they make. */
export function datesOfChance(chance: ArrayLike<number>, asOf: Day, lastDay: Day): DateBand & { kind: ForecastKind } {
  const at = (level: number) => {
    const days = daysToChance(chance, level);
    return days === null ? null : asOf + days;
  };
  const p50 = at(0.5);
  const kind = chance[0]! >= 0.5 ? "already-due" : p50 !== null && p50 <= lastDay ? "within-horizon" : "beyond-horizon";
  return { kind, p10: at(0.1), p50, p90: at(0.9) };
}
