import { type Random, seededRandom } from "./random.ts";

/** How `posteriorDraws` searches. */
export interface SearchSettings {
  /** Points carried along while the target is tempered. */
  points: number;
  /** Points returned: each one carried is doubled, or more, before the last steps. */
  draws: number;
  /** Metropolis steps of every point at each tempering. */
  stepsPerTempering: number;
  /** Metropolis steps of every point at the end. */
  lastSteps: number;
  seed: number;
}

/** Share of the points that must still count when the target is made harder. */
const ENOUGH_POINTS = 0.5;
/** Acceptance at which a random-walk step is best in several dimensions (Roberts, Gelman, Gilks 1997). */
const BEST_ACCEPTANCE = 0.25;

/**
 * Equally likely draws from a posterior whose prior is a standard normal in every direction.
 *
 * Sequential Monte Carlo: points drawn from the prior are led to the posterior through tempered targets;
 * at each one they are resampled by weight and moved by random-walk Metropolis steps whose shape is the
 * points' own covariance. Deterministic for a seed.
 *
 * @param dimensions     number of coordinates
 * @param logLikelihood  log likelihood at a point; -Infinity where it is impossible
 * @returns `settings.draws` points
 * @see Del Moral, P., Doucet, A., Jasra, A. (2006), Sequential Monte Carlo samplers, J. R. Statist. Soc. B 68,
 *      411-436
 */
export function posteriorDraws(
  dimensions: number,
  logLikelihood: (x: Float64Array) => number,
  settings: SearchSettings,
): Float64Array[] {
  const random = seededRandom(settings.seed);
  let cloud: Cloud = [];
  for (let i = 0; i < settings.points; i++) {
    const x = Float64Array.from({ length: dimensions }, () => random.normal());
    cloud.push({ x, logLikelihood: logLikelihood(x) });
  }
  let temper = 0;
  let stride = 2.38 / Math.sqrt(2 * dimensions);
  while (temper < 1) {
    const next = hardestTrusted(cloud, temper);
    const weights = weightsFor(cloud, next - temper);
    temper = next;
    cloud = resample(cloud, weights, temper < 1 ? settings.points : settings.draws);
    const steps = temper < 1 ? settings.stepsPerTempering : settings.lastSteps;
    for (let step = 0; step < steps; step++) {
      const accepted = moveAll(cloud, stride, temper, logLikelihood, random);
      stride *= Math.exp(2 * (accepted - BEST_ACCEPTANCE));
    }
  }
  return cloud.map((point) => point.x);
}

type Cloud = { x: Float64Array; logLikelihood: number }[];

function weightsFor(cloud: Cloud, power: number): Float64Array {
  let largest = -Infinity;
  for (const point of cloud) largest = Math.max(largest, point.logLikelihood);
  const weights = Float64Array.from(cloud, (point) => Math.exp(power * (point.logLikelihood - largest)));
  let total = 0;
  for (const weight of weights) total += weight;
  return weights.map((weight) => weight / total);
}

function effectiveShare(weights: Float64Array): number {
  let squares = 0;
  for (const weight of weights) squares += weight * weight;
  return 1 / squares / weights.length;
}

/** The largest tempering up to 1 at which enough points still count. */
function hardestTrusted(cloud: Cloud, before: number): number {
  if (effectiveShare(weightsFor(cloud, 1 - before)) >= ENOUGH_POINTS) return 1;
  let low = before;
  let high = 1;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (effectiveShare(weightsFor(cloud, middle - before)) >= ENOUGH_POINTS) low = middle;
    else high = middle;
  }
  // always some progress, even where the likelihood is a cliff
  return Math.max(low, before + 1e-6);
}

/** Systematic resampling: each point as often as its weight says, to within one. */
function resample(cloud: Cloud, weights: Float64Array, count: number): Cloud {
  const chosen: Cloud = [];
  let sum = 0;
  for (let i = 0; i < cloud.length; i++) {
    sum += weights[i]! * count;
    while (chosen.length + 0.5 < sum && chosen.length < count) chosen.push({ ...cloud[i]! });
  }
  while (chosen.length < count) chosen.push({ ...cloud[cloud.length - 1]! });
  return chosen;
}

/** Share of steps that leap by a whole difference, from one peak to another where there are two. */
const LEAP_SHARE = 0.1;
/** A little blur, so that points which are copies of one another part. */
const BLUR = 0.01;

/** One Metropolis step of every point along the difference of two others; returns the share accepted. */
function moveAll(
  cloud: Cloud,
  stride: number,
  temper: number,
  logLikelihood: (x: Float64Array) => number,
  random: Random,
): number {
  let accepted = 0;
  const anyOther = (self: number) => {
    const pick = Math.floor(random.uniform() * (cloud.length - 1));
    return pick < self ? pick : pick + 1;
  };
  cloud.forEach((point, self) => {
    const one = cloud[anyOther(self)]!.x;
    const other = cloud[anyOther(self)]!.x;
    const factor = random.uniform() < LEAP_SHARE ? 1 : stride;
    let logPriorGain = 0;
    const x = point.x.map((value, d) => {
      const moved = value + factor * (one[d]! - other[d]!) + BLUR * random.normal();
      logPriorGain += 0.5 * (value * value - moved * moved);
      return moved;
    });
    const proposed = logLikelihood(x);
    if (Math.log(random.uniform()) < logPriorGain + temper * (proposed - point.logLikelihood)) {
      point.x = x;
      point.logLikelihood = proposed;
      accepted++;
    }
  });
  return accepted / cloud.length;
}
