/**
 * The values of log life (wear-years to a fifth of capacity lost) over which one pack's life is averaged.
 * The same for every item and curve, so that powers of life are computed once a curve.
 */
const SHORTEST_YEARS = 0.15;
const LONGEST_YEARS = 60;

/** Step in log life. A sum over equal steps is exact to 3e-4 while the step is below 1.5 standard deviations. */
export const LOG_LIFE_STEP = 0.06;

export const LOG_LIVES: Float64Array = Float64Array.from(
  { length: Math.ceil(Math.log(LONGEST_YEARS / SHORTEST_YEARS) / LOG_LIFE_STEP) + 1 },
  (_, i) => Math.log(SHORTEST_YEARS) + i * LOG_LIFE_STEP,
);
