import { normalQuantile } from "../maths/normal.ts";

/** From this mean on a count is drawn from a rounded normal distribution. */
const MEAN_OF_A_NORMAL = 30;

/** Below this variance a count is a whole number and beside it a Poisson count of rare needs. */
const RARE = 0.4;

/**
 * A count with a mean and variance: from a binomial, Poisson or negative binomial distribution, or a rounded normal one
 * where the mean is large. For sums of independent counts of which no more is known. The mean is kept exactly.
 *
 * @param uniform  in (0, 1)
 * @see Panjer, H. H. (1981), Recursive evaluation of a family of compound distributions, ASTIN Bulletin 12, 22-26: the
 *   three distributions in one recursion
 */
export function drawnCount(mean: number, variance: number, uniform: number): number {
  if (mean <= 0) return 0;
  if (variance < RARE && mean > variance) return drawnAround(mean - Math.max(0, variance), variance, uniform);
  if (mean > MEAN_OF_A_NORMAL) {
    // rounding adds a twelfth
    const deviation = Math.sqrt(Math.max(0, variance - 1 / 12));
    return Math.max(0, Math.round(mean + deviation * normalQuantile(uniform)));
  }
  const ratio = variance / mean;
  if (ratio > 1 - 1e-9) return inverse(mean, ratio, uniform);
  // a whole number of trials: a broken one would not keep the mean
  const trials = Math.ceil(mean / (1 - ratio) - 1e-9);
  return inverse(mean, 1 - mean / trials, uniform);
}

/** A certain number, whole or one of the two beside it, and a Poisson count. */
function drawnAround(certain: number, variance: number, uniform: number): number {
  // a hair below a whole number is rounding
  const low = Math.floor(certain + 1e-9);
  const share = Math.max(0, certain - low);
  if (variance < 1e-9) return uniform < share ? low + 1 : low;
  return uniform < share
    ? low + 1 + inverse(variance, 1, uniform / share)
    : low + inverse(variance, 1, (uniform - share) / (1 - share));
}

/** The count at a level of the distribution with a mean and a ratio of variance to mean. */
function inverse(mean: number, ratio: number, level: number): number {
  const straight = Math.abs(ratio - 1) < 1e-9;
  const slope = straight ? 0 : 1 - 1 / ratio;
  const rest = mean / ratio - slope;
  let chance = Math.exp(straight ? -mean : (-mean * Math.log(ratio)) / (ratio - 1));
  let below = chance;
  let count = 0;
  while (below < level && chance > 1e-15) {
    count++;
    chance *= slope + rest / count;
    below += chance;
  }
  return count;
}
