import { type CloudShape, squaredDistance } from "./cloud-shape.ts";
import { stepTo } from "./metropolis-step.ts";
import type { Point } from "./point-cloud.ts";
import type { Random } from "./random.ts";

/** Degrees of freedom of the t distribution proposed from: heavier tails than the target's, so that no point sticks. */
const TAIL = 5;

/**
 * One Metropolis step of every point to a place drawn from a multivariate t distribution of the cloud's shape, mixed
 * with where the point is: with a renewal of 1 the new place owes the old one nothing, and a target close to such a
 * shape is crossed in one step, whatever its dimensions.
 *
 * @param renewal  0 to 1: how much of the place is drawn anew
 * @returns the share accepted
 * @see Rudolf, D., Sprungk, B. (2018), On a generalization of the preconditioned Crank-Nicolson Metropolis algorithm,
 *      Foundations of Computational Mathematics 18, 309-343; with a t in place of the normal: given a point, the t's
 *      own scale is gamma distributed
 */
export function moveByShape(
  cloud: readonly Point[],
  shape: CloudShape,
  renewal: number,
  logLikelihood: (x: Float64Array) => number,
  random: Random,
): number {
  const { mean, triangle } = shape;
  const dimensions = mean.length;
  // an even sum, so that the gamma's shape is a whole number: a sum of exponentials
  const tail = (TAIL + dimensions) % 2 === 0 ? TAIL : TAIL + 1;
  const gammaShape = (tail + dimensions) / 2;
  const kept = Math.sqrt(1 - renewal * renewal);
  const normals = new Float64Array(dimensions);
  let accepted = 0;
  for (const point of cloud) {
    const here = squaredDistance(shape, point.x);
    let gamma = 0;
    for (let i = 0; i < gammaShape; i++) gamma -= Math.log(random.uniform());
    const scale = renewal * Math.sqrt((tail + here) / 2 / gamma);
    for (let d = 0; d < dimensions; d++) normals[d] = random.normal();
    const x = point.x.map((value, d) => {
      let off = 0;
      for (let k = 0; k <= d; k++) off += triangle[d]![k]! * normals[k]!;
      return mean[d]! + kept * (value - mean[d]!) + scale * off;
    });
    const logGain = gammaShape * Math.log((tail + squaredDistance(shape, x)) / (tail + here));
    if (stepTo(point, x, logGain, logLikelihood, random)) accepted++;
  }
  return accepted / cloud.length;
}
