import type { Point } from "./point-cloud.ts";
import type { Random } from "./random.ts";

/**
 * One Metropolis step of a point to a place proposed, under a standard normal prior in every direction.
 *
 * @param logGain  log ratio of the chances to propose the way back and the way there
 * @returns whether the point moved
 */
export function stepTo(
  point: Point,
  x: Float64Array,
  logGain: number,
  logLikelihood: (x: Float64Array) => number,
  random: Random,
): boolean {
  let gain = logGain;
  for (let d = 0; d < x.length; d++) gain += 0.5 * (point.x[d]! * point.x[d]! - x[d]! * x[d]!);
  const proposed = logLikelihood(x);
  gain += proposed - point.logLikelihood;
  if (!(Math.log(random.uniform()) < gain)) return false;
  point.x = x;
  point.logLikelihood = proposed;
  return true;
}
