import type { GammaRate } from "../../src/maths/gamma-poisson.ts";

/**
 * Chances of 0, 1, 2 ... events in a time, where the rate is gamma distributed (negative binomial).
 *
 * @param time  >= 0, in the rate's unit
 * @param atMost  the last count wanted
 * @returns chances of 0 .. atMost; they add up to less than 1 by the chance of more
 */
export function negativeBinomial(rate: GammaRate, time: number, atMost: number): Float64Array {
  const chances = new Float64Array(atMost + 1);
  const share = time / (rate.exposure + time);
  chances[0] = Math.exp(-rate.shape * Math.log1p(time / rate.exposure));
  for (let n = 1; n <= atMost; n++) chances[n] = (chances[n - 1]! * share * (rate.shape + n - 1)) / n;
  return chances;
}
