import type { WatchedLife } from "./kaplan-meier.ts";

/** A Weibull distribution of life, S(t) = exp(-(t / scale)^shape), as fitted. */
export interface WeibullFit {
  scale: number;
  shape: number;
}

/** What is believed before the lives speak: normal in the logarithms, one not hanging on the other. */
export interface WeibullPrior {
  /** Age at which the hazard gone through is judged. */
  age: number;
  /** Of ln H(age), where H is the expected number of failures of one life up to an age. */
  logHazard: { mean: number; spread: number };
  /** Of ln shape. */
  logShape: { mean: number; spread: number };
}

const LOWEST_SHAPE = 0.02;
const HIGHEST_SHAPE = 200;
const STEPS_AT_MOST = 200;

/**
 * The Weibull distribution that makes the watched lives likeliest, with right censoring and late entry: a life
 * that enters at an age counts for what it did beyond that age only.
 *
 * The shape is found by Newton steps on its logarithm, inside a bracket that halves where a step would leave it; for
 * each shape the hazard is at its best.
 *
 * @param prior  its log density is added to the log likelihood; null for maximum likelihood
 * @returns null where there is no maximum: no failure and no prior, or a shape that runs to 0 or infinity
 * @see Meeker, W. Q., Escobar, L. A. (1998), Statistical Methods for Reliability Data, Wiley, ch. 8 and 11
 */
export function fitWeibull(lives: readonly WatchedLife[], prior: WeibullPrior | null = null): WeibullFit | null {
  const reference = prior?.age ?? lives.reduce((most, life) => Math.max(most, life.exit), 0);
  const problem = prepare(lives, reference, prior);
  if (problem.failures === 0 && prior === null) return null;
  const logShape = maximum(problem);
  return logShape === null ? null : fitAt(problem, logShape, reference);
}

/** A normal belief; precision 0 is none. */
interface Belief {
  mean: number;
  precision: number;
}

/** The lives in units of the reference age, and the beliefs. */
interface Problem {
  exits: Float64Array;
  entries: Float64Array;
  /** Failures seen, and the sum of the logarithms of their ages. */
  failures: number;
  sumLogs: number;
  hazard: Belief;
  shape: Belief;
}

const belief = (normal: { mean: number; spread: number } | undefined): Belief =>
  normal === undefined ? { mean: 0, precision: 0 } : { mean: normal.mean, precision: 1 / normal.spread ** 2 };

function prepare(lives: readonly WatchedLife[], reference: number, prior: WeibullPrior | null): Problem {
  const failed = lives.filter((life) => life.failed);
  const late = lives.filter((life) => life.entry > 0);
  return {
    exits: Float64Array.from(lives, (life) => life.exit / reference),
    entries: Float64Array.from(late, (life) => life.entry / reference),
    failures: failed.length,
    sumLogs: failed.reduce((sum, life) => sum + Math.log(life.exit / reference), 0),
    hazard: belief(prior?.logHazard),
    shape: belief(prior?.logShape),
  };
}

/** Sum of u^shape over what was watched, and its first and second derivatives by shape. */
function watched({ exits, entries }: Problem, shape: number) {
  const sums = { plain: 0, first: 0, second: 0 };
  const add = (u: number, sign: number) => {
    const log = Math.log(u);
    const power = sign * Math.exp(shape * log);
    sums.plain += power;
    sums.first += power * log;
    sums.second += power * log * log;
  };
  for (const u of exits) add(u, 1);
  for (const u of entries) add(u, -1);
  return sums;
}

/** ln hazard at the reference age that is likeliest where the shape gives so much exposure. */
function bestLogHazard({ failures, hazard }: Problem, exposure: number): number {
  if (hazard.precision === 0) return Math.log(failures / exposure);
  // from above the root, as here, Newton comes down to it fast; from far below, its first step would lead far beyond
  const above = failures > 0 ? Math.log(failures / exposure) : -Infinity;
  let log = Math.min(Math.max(hazard.mean, above), hazard.mean + failures / hazard.precision);
  for (let step = 0; step < STEPS_AT_MOST; step++) {
    const gone = exposure * Math.exp(log);
    const change = (failures - gone - (log - hazard.mean) * hazard.precision) / (gone + hazard.precision);
    log += change;
    if (Math.abs(change) < 1e-15) break;
  }
  return log;
}

/** Second derivatives of the log posterior by ln hazard and ln shape, its slope by ln shape, and the best hazard. */
function bestAt(problem: Problem, logShape: number) {
  const shape = Math.exp(logShape);
  const { plain, first, second } = watched(problem, shape);
  const logHazard = bestLogHazard(problem, plain);
  const hazard = Math.exp(logHazard);
  const { failures, sumLogs } = problem;
  return {
    logHazard,
    slope: failures + shape * (sumLogs - hazard * first) - (logShape - problem.shape.mean) * problem.shape.precision,
    ofHazard: -hazard * plain - problem.hazard.precision,
    mixed: -hazard * shape * first,
    ofShape: shape * sumLogs - hazard * (shape * first + shape * shape * second) - problem.shape.precision,
  };
}

function maximum(problem: Problem): number | null {
  let low = Math.log(LOWEST_SHAPE);
  let high = Math.log(HIGHEST_SHAPE);
  // not a number where a narrow spread of ages underflows at the ends: no maximum can be told there
  if (!(bestAt(problem, low).slope > 0) || !(bestAt(problem, high).slope < 0)) return null;
  let at = Math.min(high, Math.max(low, problem.shape.mean));
  for (let step = 0; step < STEPS_AT_MOST; step++) {
    const { slope, ofHazard, mixed, ofShape } = bestAt(problem, at);
    if (slope > 0) low = at;
    else high = at;
    const curvature = ofShape - (mixed * mixed) / ofHazard;
    const newton = at - slope / curvature;
    const next = curvature < 0 && newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - at) < 1e-14) return next;
    at = next;
  }
  return at;
}

function fitAt(problem: Problem, logShape: number, reference: number): WeibullFit {
  const shape = Math.exp(logShape);
  return { scale: reference * Math.exp(-bestAt(problem, logShape).logHazard / shape), shape };
}
