import type { Day } from "../calendar/day.ts";
import { lastDayOfMonth, monthOfDay } from "../calendar/month.ts";
import { GRID_DAYS, GRID_SIZE, gridIndex, gridValue, INDEX_PER_LOG_STRETCH, shiftedIndex } from "../fade/time-grid.ts";
import type { DateBand, ForecastKind } from "../fade/types.ts";
import { keptFor } from "./kept-for.ts";

/** Dates later than this are as good as never. */
const NEVER_AFTER_DAYS = 30 * 365.25;

/** How a pack runs down, as `Decline` has it. */
interface Chances {
  chances: Float32Array;
  common: Float64Array;
}

/** Average over draws of chances on the time grid. */
export function averageChances({ chances, common }: Chances): Float64Array {
  const result = new Float64Array(GRID_SIZE);
  const curves = chances.length / GRID_SIZE;
  const draws = common.length;
  const spans = Array.from({ length: curves }, (_, curve) => changingSpan(chances, curve * GRID_SIZE));
  // what begins to count at a grid time and counts as much at all later ones
  const lasting = new Float64Array(GRID_SIZE);
  for (let draw = 0; draw < draws; draw++) {
    const shift = common[draw]! * INDEX_PER_LOG_STRETCH;
    const curve = draw % curves;
    const from = curve * GRID_SIZE;
    const { begins, settles } = spans[curve]!;
    // a shift moves every time by the same part of a step, but for those near as-of, where the grid is straight
    const whole = Math.floor(shift);
    const share = shift - whole;
    const first = Math.max(1, 1 - whole);
    const end = Math.min(GRID_SIZE, GRID_SIZE - 1 - whole);
    for (let k = 0; k < first; k++) result[k] = result[k]! + gridValue(chances, from, shiftedIndex(k, shift));
    const settled = Math.max(first, Math.min(end, settles - whole));
    for (let k = Math.max(first, begins - whole - 1); k < settled; k++) {
      const below = chances[from + k + whole]!;
      result[k] = result[k]! + below + share * (chances[from + k + whole + 1]! - below);
    }
    if (settled < GRID_SIZE) lasting[settled] = lasting[settled]! + chances[from + GRID_SIZE - 1]!;
  }
  let sum = 0;
  for (let k = 0; k < GRID_SIZE; k++) {
    sum += lasting[k]!;
    result[k] = Math.min(1, (result[k]! + sum) / draws);
  }
  return result;
}

/** The grid times at which a curve's chance is no more nothing, and from which on it stays as it is. */
function changingSpan(chances: Float32Array, from: number): { begins: number; settles: number } {
  let begins = 0;
  let settles = GRID_SIZE - 1;
  while (begins < settles && chances[from + begins] === 0) begins++;
  while (settles > begins && chances[from + settles - 1] === chances[from + settles]) settles--;
  return { begins, settles };
}

/**
 * Chances by the end of each month from as-of's on, by draw.
 *
 * @param into  receives draws * months, draw-major
 */
export function monthlyChances(decline: Chances, asOf: Day, months: number, into: Float64Array): void {
  chancesOnDays(decline, monthEndsAhead(asOf, months), into);
}

/** Where days ahead lie on the grid once a draw's model error has shifted them: the step below, and the share past it. */
interface Places {
  below: Uint8Array;
  share: Float64Array;
}

/** The model error is the same for all packs of an item, and so are the places that it leads to. */
const placesOf = keptFor<Float64Array, Places>();

function placesAhead(common: Float64Array, days: readonly number[]): Places {
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
  const curves = chances.length / GRID_SIZE;
  const days = monthEndsAhead(asOf, months);
  const { below, share } = placesOf(common, [days], () => placesAhead(common, days));
  const sums = new Float64Array(groups * months);
  for (let draw = 0; draw < common.length; draw++) {
    const from = (draw % curves) * GRID_SIZE;
    const into = groupOf[draw]! * months;
    for (let m = 0; m < months; m++) {
      const at = draw * months + m;
      const k = from + below[at]!;
      sums[into + m] = sums[into + m]! + chances[k]! * (1 - share[at]!) + chances[k + 1]! * share[at]!;
    }
  }
  return sums;
}

/** Chances by some days ahead, by draw; `into` receives draws * days, draw-major. */
export function chancesOnDays({ chances, common }: Chances, days: readonly number[], into: Float64Array): void {
  const curves = chances.length / GRID_SIZE;
  const { below, share } = placesOf(common, [days], () => placesAhead(common, days));
  for (let draw = 0; draw < common.length; draw++) {
    const from = (draw % curves) * GRID_SIZE;
    const end = (draw + 1) * days.length;
    for (let at = draw * days.length; at < end; at++) {
      const k = from + below[at]!;
      into[at] = chances[k]! * (1 - share[at]!) + chances[k + 1]! * share[at]!;
    }
  }
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
