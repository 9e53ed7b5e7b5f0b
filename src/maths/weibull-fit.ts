import type { WatchedLife } from "./kaplan-meier.ts";

/** A Weibull distribution of life, S(t) = exp(-(t / scale)^shape), as fitted. */
export interface WeibullFit {
  scale: number;
  shape: number;
  /** Log likelihood of the lives alone, without any prior. */
  logLikelihood: number;
  /** Variances and covariance of ln scale and ln shape, from the curvature at the maximum. */
  covariance: { logScale: number; logShape: number; both: number };
}

/** What is believed before the lives speak, as if `failures` had been seen in `exposure` lives up to `age`. */
export interface WeibullPrior {
  age: number;
  failures: number;
  exposure: number;
  /** Mean and standard deviation of ln shape. */
  logShape: { mean: number; spread: number };
}

const LOWEST_SHAPE = 0.02;
const HIGHEST_SHAPE = 200;
const STEPS_AT_MOST = 200;

/**
 * The Weibull distribution that makes the watched lives likeliest, with right censoring and late entry: a life
 * that enters at an age counts for what it did beyond that age only.
 *
 * Given the shape, the hazard at a reference age has its maximum in closed form; the shape is found by Newton steps
 * on its logarithm, inside a bracket that halves where a step would leave it.
 *
 * @param prior  added to the log likelihood (gamma for the expected failures up to its age, taken on their
 *               logarithm; normal for ln shape); null for maximum likelihood
 * @returns null where there is no maximum: no failure and no prior, or a shape that runs to 0 or infinity
 * @see Meeker, W. Q., Escobar, L. A. (1998), Statistical Methods for Reliability Data, Wiley, ch. 8 and 11
 */
export function fitWeibull(lives: readonly WatchedLife[], prior: WeibullPrior | null = null): WeibullFit | null {
  const reference = prior?.age ?? lives.reduce((most, life) => Math.max(most, life.exit), 0);
  const problem = prepare(lives, reference, prior);
  if (!(problem.failures + problem.priorFailures > 0)) return null;
  const logShape = maximum(problem);
  return logShape === null ? null : fitAt(problem, logShape, reference);
}

/** The lives in units of the reference age, and the prior, with none as nothing at all. */
interface Problem {
  exits: Float64Array;
  entries: Float64Array;
  /** Failures seen, and the sum of the logarithms of their ages. */
  failures: number;
  sumLogs: number;
  priorFailures: number;
  priorExposure: number;
  shapeMean: number;
  /** 1 / variance of ln shape before the lives speak. */
  shapePrecision: number;
}

function prepare(lives: readonly WatchedLife[], reference: number, prior: WeibullPrior | null): Problem {
  const failed = lives.filter((life) => life.failed);
  return {
    exits: Float64Array.from(lives, (life) => life.exit / reference),
    entries: Float64Array.from(
      lives.filter((life) => life.entry > 0),
      (life) => life.entry / reference,
    ),
    failures: failed.length,
    sumLogs: failed.reduce((sum, life) => sum + Math.log(life.exit / reference), 0),
    priorFailures: prior?.failures ?? 0,
    priorExposure: prior?.exposure ?? 0,
    shapeMean: prior?.logShape.mean ?? 0,
    shapePrecision: prior === null ? 0 : 1 / prior.logShape.spread ** 2,
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

/** Slope and curvature of the log posterior along ln shape, the hazard always at its best. */
function slopeAt(problem: Problem, logShape: number) {
  const shape = Math.exp(logShape);
  const { plain, first, second } = watched(problem, shape);
  const exposure = problem.priorExposure + plain;
  const failures = problem.priorFailures + problem.failures;
  const f = (shape * first) / exposure;
  const s = (shape * shape * second) / exposure;
  const pull = (logShape - problem.shapeMean) * problem.shapePrecision;
  return {
    slope: problem.failures + shape * problem.sumLogs - failures * f - pull,
    curvature: shape * problem.sumLogs - failures * (f + s - f * f) - problem.shapePrecision,
  };
}

function maximum(problem: Problem): number | null {
  let low = Math.log(LOWEST_SHAPE);
  let high = Math.log(HIGHEST_SHAPE);
  // not a number where a narrow spread of ages underflows at the ends: no maximum can be told there
  if (!(slopeAt(problem, low).slope > 0) || !(slopeAt(problem, high).slope < 0)) return null;
  let at = Math.min(high, Math.max(low, problem.shapeMean));
  for (let step = 0; step < STEPS_AT_MOST; step++) {
    const { slope, curvature } = slopeAt(problem, at);
    if (slope > 0) low = at;
    else high = at;
    const newton = at - slope / curvature;
    const next = curvature < 0 && newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - at) < 1e-14) return next;
    at = next;
  }
  return at;
}

function fitAt(problem: Problem, logShape: number, reference: number): WeibullFit {
  const shape = Math.exp(logShape);
  const { plain, first, second } = watched(problem, shape);
  const failures = problem.priorFailures + problem.failures;
  const hazard = failures / (problem.priorExposure + plain);
  const logHazard = Math.log(hazard);
  // information on (ln hazard, ln shape), inverted, then turned to (ln scale, ln shape)
  const mixed = hazard * shape * first;
  const ofShape = hazard * (shape * first + shape * shape * second) - shape * problem.sumLogs + problem.shapePrecision;
  const determinant = failures * ofShape - mixed * mixed;
  const varHazard = ofShape / determinant;
  const varShape = failures / determinant;
  const cov = -mixed / determinant;
  return {
    scale: reference * Math.exp(-logHazard / shape),
    shape,
    logLikelihood:
      problem.failures * (logHazard + logShape - Math.log(reference)) + (shape - 1) * problem.sumLogs - hazard * plain,
    covariance: {
      logScale: (varHazard - 2 * logHazard * cov + logHazard * logHazard * varShape) / (shape * shape),
      logShape: varShape,
      both: (logHazard * varShape - cov) / shape,
    },
  };
}
