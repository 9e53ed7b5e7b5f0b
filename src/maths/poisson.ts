import { logGamma } from "./log-gamma.ts";

/**
 * Chances of 0, 1, ... events of a Poisson count, with the chance of `most` or more in the last entry.
 *
 * @param mean  >= 0
 * @param most  last entry wanted, >= 0; the array is shorter where the rest is below 1e-15
 */
export function poissonCounts(mean: number, most: number): Float64Array {
  const reach = Math.min(most, Math.ceil(mean + 9 * Math.sqrt(mean) + 20));
  const chances = new Float64Array(reach + 1);
  if (mean <= 0) {
    chances[0] = 1;
    return chances;
  }
  let below = 0;
  for (let n = 0; n < reach; n++) {
    // in logs, since exp(-mean) underflows for large means
    chances[n] = Math.exp(n * Math.log(mean) - mean - logGamma(n + 1));
    below += chances[n]!;
  }
  chances[reach] = Math.max(0, 1 - below);
  return chances;
}
