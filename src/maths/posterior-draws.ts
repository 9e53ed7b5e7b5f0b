import { shapeOf } from "./cloud-shape.ts";
import { moveByDifferences } from "./difference-moves.ts";
import { hearMore, logLikelihoodOf, type PartedLikelihood } from "./evidence-path.ts";
import { type Point, resampled, weightsFrom } from "./point-cloud.ts";
import { seededRandom } from "./random.ts";
import { moveByShape } from "./shape-moves.ts";

/** How `posteriorDraws` searches. */
export interface SearchSettings {
  /** Points carried along. */
  points: number;
  /** Metropolis steps of every point each time that more is heard. */
  stepsPerHearing: number;
  /** Metropolis steps of every point at the end. */
  lastSteps: number;
  /** The last of those after which every point is kept. */
  keptSteps: number;
  seed: number;
}

/** Acceptance at which a random-walk step is best in several dimensions (Roberts, Gelman, Gilks 1997). */
const BEST_ACCEPTANCE = 0.25;
/** How fast stride and renewal follow their acceptance. */
const STRIDE_GAIN = 2;
const RENEWAL_GAIN = 1;
const LEAST_RENEWAL = 0.05;
/** One step in so many goes along differences: it finds what lies beside the cloud's main shape, a second peak. */
const DIFFERENCES_EVERY = 8;
/** Points a dimension from which a cloud shows its shape. */
const POINTS_FOR_SHAPE = 6;

/**
 * Equally likely draws from a posterior whose prior is a standard normal in every direction.
 *
 * Sequential Monte Carlo: points drawn from the prior hear the likelihood's parts by and by, as many at once as they
 * can stand; each time they are resampled by weight and moved by Metropolis steps that follow the points' own shape.
 * Deterministic for a seed.
 *
 * @param dimensions  number of coordinates
 * @param likelihood  its parts in an order that goes with nothing they say
 * @returns points * keptSteps draws; a point that stood still is among them again
 * @see Chopin, N. (2002), A sequential particle filter method for static models, Biometrika 89, 539-552
 * @see Del Moral, P., Doucet, A., Jasra, A. (2006), Sequential Monte Carlo samplers, J. R. Statist. Soc. B 68,
 *      411-436
 */
export function posteriorDraws(
  dimensions: number,
  likelihood: PartedLikelihood,
  settings: SearchSettings,
): Float64Array[] {
  const random = seededRandom(settings.seed);
  let cloud: Point[] = Array.from({ length: settings.points }, () => {
    return { x: Float64Array.from({ length: dimensions }, () => random.normal()), logLikelihood: 0 };
  });
  const shapely = settings.points >= POINTS_FOR_SHAPE * dimensions;
  let heard = 0;
  let stride = 2.38 / Math.sqrt(2 * dimensions);
  let renewal = 1;
  let steps = 0;
  const logLikelihood = (x: Float64Array) => logLikelihoodOf(likelihood, x, heard);
  const moveAll = () => {
    if (shapely && ++steps % DIFFERENCES_EVERY > 0) {
      const accepted = moveByShape(cloud, shapeOf(cloud), renewal, logLikelihood, random);
      renewal *= Math.exp(RENEWAL_GAIN * (accepted - BEST_ACCEPTANCE));
      renewal = Math.max(LEAST_RENEWAL, Math.min(1, renewal));
    } else {
      const accepted = moveByDifferences(cloud, stride, logLikelihood, random);
      stride *= Math.exp(STRIDE_GAIN * (accepted - BEST_ACCEPTANCE));
    }
  };
  while (heard < likelihood.parts) {
    const next = hearMore(cloud, heard, likelihood);
    heard = next.heard;
    cloud.forEach((point, i) => {
      point.logLikelihood += next.gains[i]!;
    });
    cloud = resampled(cloud, weightsFrom(next.gains));
    if (heard < likelihood.parts) for (let step = 0; step < settings.stepsPerHearing; step++) moveAll();
  }
  const kept: Float64Array[] = [];
  for (let step = settings.lastSteps; step > 0; step--) {
    moveAll();
    if (step <= settings.keptSteps) for (const { x } of cloud) kept.push(x);
  }
  return kept;
}
