import { logNormalCdf, normalDensity } from "../maths/normal.ts";
import { GIVEN, PRIORS } from "./priors.ts";

/**
 * What is believed of one item's curve before its own readings speak, as a normal in every coordinate: mean and
 * standard deviation in units of the usual prior (see priors.ts), which is mean 0 and deviation 1.
 */
export interface ItemPrior {
  mean: Float64Array;
  deviation: Float64Array;
}

const { sharedVariance: SHARED_VARIANCE, statedVariance: STATED_VARIANCE } = GIVEN;

/** Information, as a share of the prior's, below which draws cannot show it. */
const FAINTEST = 1e-3;

const LIFE = PRIORS.findIndex(({ name }) => name === "medianLifeYears");

/** The usual prior. */
export function usualPrior(): ItemPrior {
  return { mean: new Float64Array(PRIORS.length), deviation: new Float64Array(PRIORS.length).fill(1) };
}

/** What the catalogue states of an item's life, in years of typical use, > 0; null where it states nothing. */
export interface StatedLife {
  /** How long it lasts. */
  years: number | null;
  /** What it outlasts in no case. */
  yearsAtMost: number | null;
}

/**
 * A prior that also heeds a life stated in the catalogue, weakly: makers state what they will stand for, fleets see
 * what they get.
 */
export function withStatedLife(prior: ItemPrior, { years, yearsAtMost }: StatedLife): ItemPrior {
  const { mean: usual, spread } = PRIORS[LIFE]!;
  const stated = (value: number) => (Math.log(value) - usual) / spread;
  const heeding = years === null ? prior : updated(prior, LIFE, stated(years), STATED_VARIANCE);
  return yearsAtMost === null ? heeding : bounded(heeding, LIFE, stated(yearsAtMost), STATED_VARIANCE);
}

/** What another item's readings say, and what was believed of its curve before they spoke. */
export interface LentCurves {
  under: ItemPrior;
  /** Equally likely coordinates. */
  coordinates: readonly Float64Array[];
}

/**
 * A prior that borrows from the fleet's other items: what their readings say, as far as items have it in common.
 *
 * With g the part in common and u an item's own, x = g + u; each other item's likelihood in a coordinate is taken as
 * normal, recovered from its posterior by taking its prior away: a life stated for an item says nothing of another.
 */
export function borrowedPrior(others: readonly LentCurves[]): ItemPrior {
  const prior = usualPrior();
  for (let d = 0; d < PRIORS.length; d++) {
    let precision = 1 / SHARED_VARIANCE;
    let pull = 0;
    for (const { under, coordinates } of others) {
      const { mean, variance } = moments(coordinates, d);
      const before = 1 / (under.deviation[d]! * under.deviation[d]!);
      const information = Math.max(FAINTEST * before, 1 / variance - before);
      const said = (mean / variance - under.mean[d]! * before) / information;
      const weight = 1 / (1 - SHARED_VARIANCE + 1 / information);
      precision += weight;
      pull += weight * said;
    }
    prior.mean[d] = pull / precision;
    prior.deviation[d] = Math.sqrt(1 / precision + 1 - SHARED_VARIANCE);
  }
  return prior;
}

function moments(draws: readonly Float64Array[], d: number): { mean: number; variance: number } {
  let sum = 0;
  let squares = 0;
  for (const x of draws) {
    sum += x[d]!;
    squares += x[d]! * x[d]!;
  }
  const mean = sum / draws.length;
  return { mean, variance: Math.max(1e-6, squares / draws.length - mean * mean) };
}

function updated(prior: ItemPrior, d: number, value: number, variance: number): ItemPrior {
  const mean = prior.mean.slice();
  const deviation = prior.deviation.slice();
  const before = 1 / (deviation[d]! * deviation[d]!);
  const precision = before + 1 / variance;
  mean[d] = (mean[d]! * before + value / variance) / precision;
  deviation[d] = Math.sqrt(1 / precision);
  return { mean, deviation };
}

/**
 * Heeds that a coordinate lies below a value known with a normal error: the mean and variance of the normal times
 * Phi((value - x) / sqrt(error)). @see Rasmussen & Williams (2006), Gaussian Processes for Machine Learning, section 3.9
 */
function bounded(prior: ItemPrior, d: number, value: number, error: number): ItemPrior {
  const mean = prior.mean.slice();
  const deviation = prior.deviation.slice();
  const variance = deviation[d]! * deviation[d]!;
  const width = Math.sqrt(error + variance);
  const z = (value - mean[d]!) / width;
  const ratio = normalDensity(z) / Math.exp(logNormalCdf(z));
  mean[d] = mean[d]! - (variance * ratio) / width;
  deviation[d] = Math.sqrt(variance - (variance * variance * ratio * (z + ratio)) / (width * width));
  return { mean, deviation };
}
