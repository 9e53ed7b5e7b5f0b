import { convolve } from "./convolution.ts";
import { logGamma } from "./log-gamma.ts";

/** Up to here the chance is exact; beyond, Boole's bound, which is close where it is small. */
const POINTS_COUNTED_EXACTLY = 1000;

/**
 * Chance that some cell holds `atLeast` or more of `points` points, each in one of `cells` cells at random: a
 * discrete scan with a window of one cell. Never below the exact chance, and equal to it up to 1000 points.
 *
 * Counts of a multinomial are independent Poisson counts given their sum, so the chance that all stay below
 * `atLeast` is a convolution of cut-off Poisson distributions, taken at `points`.
 *
 * @see Levin, B. (1981), A representation for multinomial cumulative distribution functions, Annals of Statistics 9,
 *   1123-1126
 */
export function fullestCellChance(points: number, cells: number, atLeast: number): number {
  if (atLeast <= 1) return points > 0 ? 1 : 0;
  if (atLeast > points) return 0;
  if (cells <= 1) return 1;
  if (points > POINTS_COUNTED_EXACTLY) return Math.min(1, cells * binomialTail(atLeast, points, 1 / cells));
  const mean = points / cells;
  const cell = new Float64Array(atLeast);
  for (let n = 0; n < atLeast; n++) cell[n] = poissonChance(n, mean);
  let sum: Float64Array = Float64Array.of(1);
  for (let added = 0; added < cells; added++) {
    sum = convolve(sum, cell);
    if (sum.length > points + 1) sum = sum.slice(0, points + 1);
  }
  return Math.min(1, Math.max(0, 1 - (sum[points] ?? 0) / poissonChance(points, points)));
}

/**
 * Chance that some window of width `window` holds `atLeast` or more of `points` points spread uniformly over (0, 1).
 *
 * Exact where atLeast > (points + 1) / 2 and window <= 1/2; elsewhere an upper bound, good while it is small.
 *
 * @see Naus, J. I. (1965), The distribution of the size of the maximum cluster of points on a line, Journal of the
 *   American Statistical Association 60, 532-538; Wallenstein, S. and Neff, N. (1987), An approximation for the
 *   distribution of the scan statistic, Statistics in Medicine 6, 197-207
 */
export function widestClusterChance(points: number, window: number, atLeast: number): number {
  if (atLeast <= 1) return points > 0 ? 1 : 0;
  if (atLeast > points) return 0;
  if (window >= 1) return 1;
  const above = binomialTail(atLeast, points, window);
  const at = binomialChance(atLeast, points, window);
  return Math.min(1, Math.max(0, (atLeast / window - points - 1) * at + 2 * above));
}

function poissonChance(count: number, mean: number): number {
  return Math.exp(count * Math.log(mean) - mean - logGamma(count + 1));
}

function binomialTail(atLeast: number, trials: number, chance: number): number {
  let above = 0;
  for (let j = trials; j >= atLeast; j--) above += binomialChance(j, trials, chance);
  return above;
}

function binomialChance(successes: number, trials: number, chance: number): number {
  const ways = logGamma(trials + 1) - logGamma(successes + 1) - logGamma(trials - successes + 1);
  return Math.exp(ways + successes * Math.log(chance) + (trials - successes) * Math.log1p(-chance));
}
