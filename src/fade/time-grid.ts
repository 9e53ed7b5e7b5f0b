/**
 * Times ahead of as-of at which a pack's chance is worked out: as-of itself, then equal steps of log time, so
 * that stretching time by a factor is a shift along the grid.
 */
const FIRST_DAYS = 10;
const LAST_DAYS = 60 * 365.25;
const STEPS = 120;

/** Step in log time. */
const LOG_STEP = Math.log(LAST_DAYS / FIRST_DAYS) / (STEPS - 1);

/** Number of grid times, as-of included. */
export const GRID_SIZE = STEPS + 1;

/** Days ahead of as-of; the first is 0. */
export const GRID_DAYS: Float64Array = Float64Array.from({ length: GRID_SIZE }, (_, k) =>
  k === 0 ? 0 : FIRST_DAYS * Math.exp((k - 1) * LOG_STEP),
);

/** Grid steps by which a stretch of e^1 shifts a time. */
export const INDEX_PER_LOG_STRETCH = 1 / LOG_STEP;

const FIRST_INDEX = 1 - Math.log(FIRST_DAYS) * INDEX_PER_LOG_STRETCH;

/**
 * Where a time ahead, stretched by e^logStretch, lies on the grid, as a fractional index: 0 at as-of, GRID_SIZE - 1
 * at the end.
 */
export function gridIndex(daysAhead: number, logStretch: number): number {
  if (daysAhead <= 0) return 0;
  const index = FIRST_INDEX + (Math.log(daysAhead) + logStretch) * INDEX_PER_LOG_STRETCH;
  if (index < 1) return (daysAhead * Math.exp(logStretch)) / FIRST_DAYS;
  return Math.min(GRID_SIZE - 1, index);
}

/**
 * The index of a grid time after a stretch: a plain shift, since the grid's steps are equal in log time.
 *
 * @param index  gridIndex(daysAhead, 0)
 * @param shift  logStretch * INDEX_PER_LOG_STRETCH
 */
export function shiftedIndex(index: number, shift: number): number {
  if (index >= 1 && index + shift >= 1) return Math.min(GRID_SIZE - 1, index + shift);
  // before the first step the grid is straight in time, not in its logarithm
  const daysAhead = index < 1 ? index * FIRST_DAYS : FIRST_DAYS * Math.exp((index - 1) * LOG_STEP);
  return gridIndex(daysAhead, shift * LOG_STEP);
}

/** A grid function at a fractional index, by straight lines. */
export function gridValue(values: ArrayLike<number>, start: number, index: number): number {
  const below = Math.min(GRID_SIZE - 2, Math.floor(index));
  const share = index - below;
  return values[start + below]! * (1 - share) + values[start + below + 1]! * share;
}
