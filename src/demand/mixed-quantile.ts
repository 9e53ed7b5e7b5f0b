import { normalQuantile } from "../maths/normal.ts";
import { refinedNormalCdf } from "../maths/refined-normal.ts";
import type { Spread } from "./span-spread.ts";

/** Chance of at most n needs where draws with the means given are mixed and their spread is in proportion to the mean. */
export function mixedCdf(n: number, means: Float64Array, { variance, third, fourth }: Spread): number {
  const ofDraw = { mean: 0, variance: 0, third: 0, fourth: 0 };
  let sum = 0;
  for (const mean of means) {
    ofDraw.mean = mean;
    ofDraw.variance = mean * variance;
    ofDraw.third = mean * third;
    ofDraw.fourth = mean * fourth;
    sum += refinedNormalCdf(n, ofDraw);
  }
  return sum / means.length;
}

/** Smallest n with mixedCdf(n) >= level, by the secant method on the normal scale, kept between bounds. */
export function mixedQuantile(level: number, means: Float64Array, spread: Spread): number {
  const mean = means.reduce((sum, one) => sum + one, 0) / means.length;
  const between = means.reduce((sum, one) => sum + (one - mean) ** 2, 0) / means.length;
  const deviation = Math.sqrt(between + mean * spread.variance) + 1e-9;
  const wanted = normalQuantile(level);
  let low = -1;
  let high = highestCount(means, spread);
  let guess = mean + wanted * deviation;
  for (let turn = 0; high - low > 1; turn++) {
    // turns beyond a few halve the bounds, whatever the shape
    const at = turn < 8 ? Math.min(high - 1, Math.max(low + 1, Math.round(guess))) : (low + high) >> 1;
    const chance = mixedCdf(at, means, spread);
    if (chance >= level) high = at;
    else low = at;
    const seen = normalQuantile(Math.min(1 - 1e-12, Math.max(1e-12, chance)));
    const step = (wanted - seen) * deviation;
    // at least one unit over, so that both bounds close in
    guess = at + (Math.abs(step) < 1 ? (chance >= level ? -1 : 1) : step);
  }
  return high;
}

/** A count that is not exceeded in any draw. */
export function highestCount(means: Float64Array, { variance }: Spread): number {
  return means.reduce((most, mean) => Math.max(most, Math.ceil(mean + 9 * Math.sqrt(mean * variance) + 2)), 0);
}
