import type { Day } from "../calendar/day.ts";
import { GRID_DAYS, GRID_SIZE, gridIndex, gridValue } from "../fade/time-grid.ts";

/** What may end a pack on no set day, as averages on the time grid. */
export interface OpenEnds {
  /** Chance of being below the threshold; null where fade cannot be forecast. */
  fade: Float64Array | null;
  /** Chance of not having failed suddenly; null where the pack's age is unknown. */
  lasting: Float64Array | null;
}

/** Both chances some days ahead of as-of. */
function at({ fade, lasting }: OpenEnds, daysAhead: number) {
  const index = gridIndex(daysAhead, 0);
  return {
    faded: fade === null ? 0 : gridValue(fade, 0, index),
    lasting: lasting === null ? 1 : gridValue(lasting, 0, index),
  };
}

/** Chance of being due by fade or by sudden failure some days ahead. */
export function openChance(ends: OpenEnds, daysAhead: number): number {
  const { faded, lasting } = at(ends, daysAhead);
  return 1 - (1 - faded) * lasting;
}

/** The same on the grid. */
export function openChances({ fade, lasting }: OpenEnds): Float64Array {
  const chances = new Float64Array(GRID_SIZE);
  for (let k = 0; k < GRID_SIZE; k++) {
    chances[k] = 1 - (1 - (fade === null ? 0 : fade[k]!)) * (lasting === null ? 1 : lasting[k]!);
  }
  return chances;
}

/**
 * How the chance of falling due between two times divides between fade and sudden failure: whichever comes first
 * counts. Over the span the other's chance is taken at its middle, so that the two add up to the whole.
 *
 * @param fromDays  days ahead; -1 for all that has happened by as-of
 */
export function splitBetween(ends: OpenEnds, fromDays: number, toDays: number): { fade: number; failure: number } {
  if (fromDays < 0) {
    const now = at(ends, 0).faded;
    const later = splitBetween(ends, 0, toDays);
    return { fade: now + later.fade, failure: later.failure };
  }
  const a = at(ends, fromDays);
  const b = at(ends, toDays);
  return {
    fade: Math.max(0, b.faded - a.faded) * 0.5 * (a.lasting + b.lasting),
    failure: Math.max(0, a.lasting - b.lasting) * (1 - 0.5 * (a.faded + b.faded)),
  };
}

/** Chances of having been ended first by fade, and by sudden failure, by some time ahead. */
export function splitUpTo(ends: OpenEnds, daysAhead: Day): { fade: number; failure: number } {
  const total = splitBetween(ends, -1, 0);
  for (let k = 0; k + 1 < GRID_SIZE && GRID_DAYS[k]! < daysAhead; k++) {
    const part = splitBetween(ends, GRID_DAYS[k]!, Math.min(daysAhead, GRID_DAYS[k + 1]!));
    total.fade += part.fade;
    total.failure += part.failure;
  }
  return total;
}
