import { digamma, logGamma } from "./log-gamma.ts";

/** A gamma distribution of rates: mean shape / exposure, as if `shape` events had been seen in `exposure`. */
export interface GammaRate {
  shape: number;
  exposure: number;
}

/** Beyond this shape the rates of the places differ by less than 3 %: they are taken as one common rate. */
const SHAPE_OF_ONE_RATE = 1000;
const LEAST_SHAPE = 1e-3;

/**
 * Gamma distribution of Poisson rates over places, by empirical Bayes: the maximum of the negative binomial marginal
 * likelihood of counts given exposures.
 *
 * Solved as two nested monotone equations (both score functions), to about 12 digits.
 *
 * @param counts  events by place, >= 0; fractions allowed where an event is shared among places
 * @param exposures  > 0, in one unit of time
 * @returns the distribution, or null where the counts spread no more than one common rate would make them
 */
export function fitGammaPoisson(counts: readonly number[], exposures: readonly number[]): GammaRate | null {
  const total = counts.reduce((a, b) => a + b, 0);
  if (total <= 0 || counts.length < 2) return null;
  const exposureFor = (shape: number) => {
    // score in the exposure: sum of shape/exposure - (count + shape)/(exposure + t), decreasing through zero
    const score = (exposure: number) =>
      counts.reduce((sum, y, i) => sum + shape / exposure - (y + shape) / (exposure + exposures[i]!), 0);
    return bisectOnLog(score, 1e-9, 1e12);
  };
  const score = (shape: number) => {
    const exposure = exposureFor(shape);
    let sum = 0;
    for (let i = 0; i < counts.length; i++) {
      sum += digamma(counts[i]! + shape) - digamma(shape) - Math.log1p(exposures[i]! / exposure);
    }
    return sum;
  };
  if (score(SHAPE_OF_ONE_RATE) > 0) return null;
  const shape = bisectOnLog(score, LEAST_SHAPE, SHAPE_OF_ONE_RATE);
  return { shape, exposure: exposureFor(shape) };
}

/** Log of the negative binomial marginal likelihood that fitGammaPoisson maximises. */
export function gammaPoissonLogLikelihood(
  counts: readonly number[],
  exposures: readonly number[],
  prior: GammaRate,
): number {
  return counts.reduce((sum, y, i) => {
    const t = exposures[i]!;
    return (
      sum +
      logGamma(y + prior.shape) -
      logGamma(prior.shape) -
      logGamma(y + 1) -
      prior.shape * Math.log1p(t / prior.exposure) +
      (y > 0 ? y * Math.log(t / (prior.exposure + t)) : 0)
    );
  }, 0);
}

/**
 * Chances of 0, 1, 2 ... events in a time, where the rate is gamma distributed (negative binomial).
 *
 * @param time  >= 0, in the rate's unit
 * @param atMost  the last count wanted
 * @param into  room of atMost + 1 to write them into, where many are wanted one after another
 * @returns chances of 0 .. atMost; they add up to less than 1 by the chance of more
 */
export function negativeBinomial(
  rate: GammaRate,
  time: number,
  atMost: number,
  into: Float64Array = new Float64Array(atMost + 1),
): Float64Array {
  const chances = into;
  const share = time / (rate.exposure + time);
  chances[0] = Math.exp(-rate.shape * Math.log1p(time / rate.exposure));
  for (let n = 1; n <= atMost; n++) chances[n] = (chances[n - 1]! * share * (rate.shape + n - 1)) / n;
  return chances;
}

/** Root of a decreasing function of a positive number. */
function bisectOnLog(decreasing: (x: number) => number, from: number, to: number): number {
  let low = Math.log(from);
  let high = Math.log(to);
  for (let step = 0; step < 80 && high - low > 1e-15; step++) {
    const middle = (low + high) / 2;
    if (decreasing(Math.exp(middle)) > 0) low = middle;
    else high = middle;
  }
  return Math.exp((low + high) / 2);
}
