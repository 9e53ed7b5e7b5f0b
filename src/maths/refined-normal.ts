import { normalCdf, normalDensity } from "./normal.ts";

/** First four cumulants of a count: mean, variance, third and fourth. They add up over independent counts. */
export interface Cumulants {
  mean: number;
  variance: number;
  third: number;
  fourth: number;
}

/**
 * Chance that a count is at most n: the normal distribution refined by skewness, kurtosis and the step of one. For
 * sums of many independent counts, where exact convolution is slow; errors are below 3e-4 from a variance of 10 on.
 *
 * Edgeworth's series taken half a step above n, with Sheppard's corrections of the cumulants, which account for the
 * steps of an integer distribution.
 *
 * @param n  an integer
 * @see Kolassa, J. E. and McCullagh, P. (1990), Edgeworth series for lattice distributions, Annals of Statistics 18,
 *   981-985
 */
export function refinedNormalCdf(n: number, { mean, variance, third, fourth }: Cumulants): number {
  // so little spread is none: the count is its mean
  if (variance < 0.1) return n + 0.5 >= mean ? 1 : 0;
  const square = variance - 1 / 12;
  const deviation = Math.sqrt(square);
  const x = (n + 0.5 - mean) / deviation;
  if (x > 9) return 1;
  if (x < -9) return 0;
  const skewness = third / (square * deviation);
  const kurtosis = (fourth + 1 / 120) / (square * square);
  const xx = x * x;
  const refinement =
    (skewness * (xx - 1)) / 6 +
    (kurtosis * x * (xx - 3)) / 24 +
    (skewness * skewness * x * (xx * xx - 10 * xx + 15)) / 72;
  return Math.min(1, Math.max(0, normalCdf(x) - normalDensity(x) * refinement));
}
