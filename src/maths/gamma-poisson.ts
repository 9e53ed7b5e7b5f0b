import { digamma, logGamma } from "./log-gamma.ts";

/** A gamma distribution of rates: mean shape / exposure, as if `shape` events had been seen in `exposure`. */
export interface GammaRate {
  shape: number;
  exposure: number;
}

/** Beyond this shape the rates of the places differ by a standard deviation of about 3 %: they are taken as one common rate. */
const SHAPE_OF_ONE_RATE = 1000;
const LEAST_SHAPE = 1e-3;
/** A root is found where a step changes its logarithm by less. */
const CLOSE = 1e-14;
const MOST_STEPS = 100;

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
  const alike = alikePlaces(counts, exposures);
  const exposureFor = (shape: number) => {
    // score in the exposure, times it: sum of shape - (count + shape) * exposure/(exposure + t), decreasing through zero
    const score = (exposure: number) =>
      alike.reduce((sum, { y, t, places }) => sum + places * (shape - (y + shape) / (1 + t / exposure)), 0);
    return rootOnLog(score, 1e-9, 1e12);
  };
  const score = (shape: number) => {
    const exposure = exposureFor(shape);
    return alike.reduce(
      (sum, { y, t, places }) => sum + places * (digamma(y + shape) - digamma(shape) - Math.log1p(t / exposure)),
      0,
    );
  };
  if (score(SHAPE_OF_ONE_RATE) > 0) return null;
  const shape = rootOnLog(score, LEAST_SHAPE, SHAPE_OF_ONE_RATE);
  return { shape, exposure: exposureFor(shape) };
}

/** Places with one count and exposure, of which a large fleet has few: by count, then exposure. */
function alikePlaces(
  counts: readonly number[],
  exposures: readonly number[],
): { y: number; t: number; places: number }[] {
  const found: { y: number; t: number; places: number }[] = [];
  const byExposure = new Map<number, Map<number, { y: number; t: number; places: number }>>();
  counts.forEach((y, i) => {
    const t = exposures[i]!;
    let byCount = byExposure.get(t);
    if (!byCount) {
      byCount = new Map();
      byExposure.set(t, byCount);
    }
    const alike = byCount.get(y);
    if (alike) {
      alike.places += 1;
      return;
    }
    const place = { y, t, places: 1 };
    byCount.set(y, place);
    found.push(place);
  });
  return found.sort((a, b) => a.y - b.y || a.t - b.t);
}

/** Log of the negative binomial marginal likelihood that fitGammaPoisson maximises. */
export function gammaPoissonLogLikelihood(
  counts: readonly number[],
  exposures: readonly number[],
  prior: GammaRate,
): number {
  return alikePlaces(counts, exposures).reduce((sum, { y, t, places }) => {
    const ofPlace =
      logGamma(y + prior.shape) -
      logGamma(prior.shape) -
      logGamma(y + 1) -
      prior.shape * Math.log1p(t / prior.exposure) +
      (y > 0 ? y * Math.log(t / (prior.exposure + t)) : 0);
    return sum + places * ofPlace;
  }, 0);
}

/**
 * Root of a decreasing function of a positive number, by Ridders' method on the logarithm. An end of the range where
 * the root lies beyond it.
 *
 * @see Ridders, C. (1979), A new algorithm for computing a single root of a real continuous function, IEEE Transactions
 *   on Circuits and Systems 26, 979-980
 */
function rootOnLog(decreasing: (x: number) => number, from: number, to: number): number {
  const at = (log: number) => decreasing(Math.exp(log));
  let [low, high] = [Math.log(from), Math.log(to)];
  let [above, below] = [at(low), at(high)];
  if (above <= 0) return from;
  if (below >= 0) return to;
  let root = high;
  for (let step = 0; step < MOST_STEPS; step++) {
    const middle = (low + high) / 2;
    const value = at(middle);
    const next = middle + ((middle - low) * value) / Math.sqrt(value * value - above * below);
    if (Math.abs(next - root) < CLOSE) return Math.exp(next);
    root = next;
    // both may move an end of the range
    for (const [log, of] of [[middle, value] as const, [next, at(next)] as const]) {
      if (of === 0) return Math.exp(log);
      if (of > 0 && log > low) [low, above] = [log, of];
      else if (of < 0 && log < high) [high, below] = [log, of];
    }
  }
  return Math.exp(root);
}
