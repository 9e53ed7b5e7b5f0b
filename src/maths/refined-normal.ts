import { normalCdf, normalDensity } from "./normal.ts";

/**
 * Chance that an integer variable is at most n, by the normal distribution with a correction for skewness and for
 * the step of one. For sums of many independent trials, where exact convolution is slow.
 *
 * @param n  an integer
 * @param mean, variance, third  mean, variance and third central moment of the variable
 * @see Volkova, A. Yu. (1996), A refinement of the central limit theorem for sums of independent random
 *   indicators, Theory of Probability and its Applications 40, 791-794
 */
export function refinedNormalCdf(n: number, mean: number, variance: number, third: number): number {
  // below a thousandth of a unit the sum is a constant for every purpose here
  if (variance < 1e-6) return n + 0.5 >= mean ? 1 : 0;
  const deviation = Math.sqrt(variance);
  const x = (n + 0.5 - mean) / deviation;
  const skewness = third / (variance * deviation);
  const chance = normalCdf(x) + (skewness * (1 - x * x) * normalDensity(x)) / 6;
  return Math.min(1, Math.max(0, chance));
}
