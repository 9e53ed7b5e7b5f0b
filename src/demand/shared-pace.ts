import { gammaQuantile } from "../maths/gamma-distribution.ts";
import type { GammaRate } from "../maths/gamma-poisson.ts";
import { normalQuantile } from "../maths/normal.ts";
import { seededRandom } from "../maths/random.ts";
import { shuffled } from "../maths/shuffled.ts";
import { seedFromText } from "../maths/text-seed.ts";
import type { PlaceUse } from "../supplies/use-rates.ts";

/** Paces into which a prior's uncertain mean is cut. */
const PACES = 40;
/** Rates into which a common rate is cut: its variance is then some 1 % short, and 2 % where one event was seen. */
const RATES = 200;
/** A gamma distribution of this shape is one rate for certain. */
const CERTAIN = 1e9;

/** Futures in which the places of a duty use at one pace. */
export interface PacedFutures {
  /** A place's rate at the pace. */
  rateOf(use: PlaceUse): GammaRate;
  among: Uint32Array;
}

/** What a place shares its pace by: its duty, or the name of a common rate. */
export function paceShared({ prior, common }: PlaceUse): string {
  return prior?.duty ?? common!;
}

/**
 * Deals the futures to the paces at which places that share one may use, equally many to each. What they share does not
 * average out: the mean of a prior that was fitted to few places, or a common rate that few events speak of.
 *
 * @param places  how many share it; one alone has its rate as it stands
 */
export function pacedFutures(use: PlaceUse, places: number, futures: number): PacedFutures[] {
  const { prior } = use;
  const order = shuffled(futures, seededRandom(seedFromText(`paces of ${paceShared(use)}`)));
  if (prior === null && places === 1) return [{ rateOf: ({ rate }) => rate, among: order }];
  const paces = prior === null ? gammaPaces(use.rate) : lognormalPaces(prior.logSpread);
  return paces.map((pace, i) => {
    const from = Math.round((i * futures) / paces.length);
    const among = order.subarray(from, Math.round(((i + 1) * futures) / paces.length));
    return {
      rateOf: (one) => (one.prior === null ? { shape: CERTAIN, exposure: CERTAIN / pace } : rateAt(one, pace)),
      among,
    };
  });
}

/** Uses a month that a place expects, all paces being equally likely. */
export function expectedUses(use: PlaceUse): number {
  if (use.prior === null) return use.rate.shape / use.rate.exposure;
  const paces = lognormalPaces(use.prior.logSpread);
  return (
    paces.reduce((sum, pace) => {
      const { shape, exposure } = rateAt(use, pace);
      return sum + shape / exposure;
    }, 0) / paces.length
  );
}

/** A place's rate where its duty's prior has a pace: the place's own events count as before. */
function rateAt({ rate, prior }: PlaceUse, pace: number): GammaRate {
  return { shape: rate.shape, exposure: rate.exposure - prior!.exposure + prior!.exposure / pace };
}

/** In proportion to the estimate (Jeffreys' prior of a Poisson mean lifts its mean as much), at the middles of equal parts. */
function lognormalPaces(logSpread: number): number[] {
  return NORMAL_PACES.map((z) => Math.exp(logSpread * z));
}

/** Standard normal at the middles of equal parts, stretched by the 3 % of its variance that middles lack. */
const NORMAL_PACES = stretched(middles(PACES, normalQuantile));

function stretched(values: readonly number[]): number[] {
  const variance = values.reduce((sum, value) => sum + value * value, 0) / values.length;
  return values.map((value) => value / Math.sqrt(variance));
}

/** Rates at the middles of equal parts, in proportion such that their mean is that of the distribution. */
function gammaPaces({ shape, exposure }: GammaRate): number[] {
  const rates = middles(RATES, (level) => gammaQuantile(shape, level));
  const mean = rates.reduce((sum, rate) => sum + rate, 0) / RATES;
  return rates.map((rate) => (rate / mean) * (shape / exposure));
}

function middles(parts: number, quantile: (level: number) => number): number[] {
  return Array.from({ length: parts }, (_, i) => quantile((i + 0.5) / parts));
}
