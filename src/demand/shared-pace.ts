import type { GammaRate } from "../maths/gamma-poisson.ts";
import { normalQuantile } from "../maths/normal.ts";
import { seededRandom } from "../maths/random.ts";
import { shuffled } from "../maths/shuffled.ts";
import { seedFromText } from "../maths/text-seed.ts";
import type { PlaceUse, SharedPrior } from "../supplies/use-rates.ts";

/** Paces into which a prior's uncertain mean is cut; their variance is then 1 % short. */
const PACES = 40;

/** Futures in which the places of a duty use at one pace, in proportion to the mean that was estimated. */
export interface PacedFutures {
  pace: number;
  among: Uint32Array;
}

/**
 * Deals the futures to the paces at which a duty's places may use, equally many to each: the mean of a prior that was
 * fitted to few places is itself uncertain, and in common to all of them, so that it does not average out.
 */
export function pacedFutures(prior: SharedPrior | null, futures: number): PacedFutures[] {
  const paces = pacesOf(prior);
  const order = shuffled(futures, seededRandom(seedFromText(`paces of ${prior?.duty}`)));
  return paces.map((pace, i) => {
    const from = Math.round((i * futures) / paces.length);
    return { pace, among: order.subarray(from, Math.round(((i + 1) * futures) / paces.length)) };
  });
}

/** A place's rate where its duty's prior has a pace: the place's own events count as before. */
export function rateAt({ rate, prior }: PlaceUse, pace: number): GammaRate {
  if (prior === null) return rate;
  return { shape: rate.shape, exposure: rate.exposure - prior.exposure + prior.exposure / pace };
}

/** Uses a month that a place expects, all paces being equally likely. */
export function expectedUses(use: PlaceUse): number {
  const paces = pacesOf(use.prior);
  return (
    paces.reduce((sum, pace) => {
      const { shape, exposure } = rateAt(use, pace);
      return sum + shape / exposure;
    }, 0) / paces.length
  );
}

/** Lognormal about the estimate (Jeffreys' prior of a Poisson mean lifts its mean as much), at the middles of equal parts. */
function pacesOf(prior: SharedPrior | null): number[] {
  if (prior === null) return [1];
  const { logSpread } = prior;
  return Array.from({ length: PACES }, (_, i) => Math.exp(logSpread * normalQuantile((i + 0.5) / PACES)));
}
