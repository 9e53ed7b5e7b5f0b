import type { Day } from "../calendar/day.ts";
import { lastDayOfMonth, monthOfDay } from "../calendar/month.ts";
import { GRID_DAYS, GRID_SIZE, gridIndex, gridValue, INDEX_PER_LOG_STRETCH, shiftedIndex } from "../fade/time-grid.ts";
import type { TimeStretch } from "../fade/time-stretch.ts";
import type { DateBand, ForecastKind } from "../fade/types.ts";

/** Dates later than this are as good as never. */
const NEVER_AFTER_DAYS = 30 * 365.25;

/**
 * Average over draws and model error of chances on the time grid.
 *
 * @param chances  draws * GRID_SIZE, draw-major, before model error
 */
export function averageChances(chances: Float32Array, stretch: TimeStretch): Float64Array {
  const { common, own } = stretch;
  const result = new Float64Array(GRID_SIZE);
  const share = 1 / (common.length * own.length);
  for (let draw = 0; draw < common.length; draw++) {
    for (let o = 0; o < own.length; o++) {
      const shift = (common[draw]! + own[o]!) * INDEX_PER_LOG_STRETCH;
      for (let k = 0; k < GRID_SIZE; k++) {
        result[k] = result[k]! + share * gridValue(chances, draw * GRID_SIZE, shiftedIndex(k, shift));
      }
    }
  }
  return result;
}

/**
 * Chances by the end of each month from as-of's on, by draw, averaged over the pack's own model error.
 *
 * @returns draws * months, draw-major
 */
export function monthlyChances(
  chances: Float32Array,
  stretch: TimeStretch,
  asOf: Day,
  months: number,
  into: Float64Array,
): void {
  const { common, own } = stretch;
  const indices = monthEndsAhead(asOf, months).map((ahead) => gridIndex(ahead, 0));
  into.fill(0);
  for (let draw = 0; draw < common.length; draw++) {
    for (let o = 0; o < own.length; o++) {
      const shift = (common[draw]! + own[o]!) * INDEX_PER_LOG_STRETCH;
      for (let m = 0; m < months; m++) {
        const chance = gridValue(chances, draw * GRID_SIZE, shiftedIndex(indices[m]!, shift));
        into[draw * months + m] = into[draw * months + m]! + chance / own.length;
      }
    }
  }
}

/** Days from as-of to the end of each month, as-of's first. */
export function monthEndsAhead(asOf: Day, months: number): number[] {
  const first = monthOfDay(asOf);
  return Array.from({ length: months }, (_, m) => lastDayOfMonth(first + m) - asOf);
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
