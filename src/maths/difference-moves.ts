import { stepTo } from "./metropolis-step.ts";
import type { Point } from "./point-cloud.ts";
import type { Random } from "./random.ts";

/** Share of steps that leap by a whole difference, from one peak to another where there are two. */
const LEAP_SHARE = 0.1;
/** A little blur, so that points which are copies of one another part. */
const BLUR = 0.01;

/**
 * One Metropolis step of every point along the difference of two others: such steps find the cloud's own shape,
 * whatever it is.
 *
 * @param stride  factor of the difference, > 0
 * @returns the share accepted
 * @see ter Braak, C. J. F. (2006), Differential evolution Markov chain, Statistics and Computing 16, 239-249
 */
export function moveByDifferences(
  cloud: readonly Point[],
  stride: number,
  logLikelihood: (x: Float64Array) => number,
  random: Random,
): number {
  const anyOther = (self: number) => {
    const pick = Math.floor(random.uniform() * (cloud.length - 1));
    return cloud[pick < self ? pick : pick + 1]!.x;
  };
  let accepted = 0;
  cloud.forEach((point, self) => {
    const one = anyOther(self);
    const other = anyOther(self);
    const factor = random.uniform() < LEAP_SHARE ? 1 : stride;
    const x = point.x.map((value, d) => value + factor * (one[d]! - other[d]!) + BLUR * random.normal());
    if (stepTo(point, x, 0, logLikelihood, random)) accepted++;
  });
  return accepted / cloud.length;
}
