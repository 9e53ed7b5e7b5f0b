import { seededRandom } from "../maths/random.ts";
import { MODEL_ERROR } from "./priors.ts";

/**
 * Model error: no curve knows the future's pace exactly, so time ahead of as-of is stretched by e^stretch, in
 * a part that all packs of an item share (one value a draw) and a part of the pack's own (equally likely values).
 */
export interface TimeStretch {
  common: Float64Array;
  own: Float64Array;
}

/** Five equally likely points with mean 0 and variance 1: medians of fifths, widened to the normal's variance. */
const OWN_POINTS = [-1.4635, -0.5988, 0, 0.5988, 1.4635];

/**
 * Stretches for an item.
 *
 * @param spread  standard deviations of log time, >= 0
 */
export function timeStretch(
  draws: number,
  seed: number,
  spread: { common: number; own: number } = MODEL_ERROR,
): TimeStretch {
  const random = seededRandom(seed);
  return {
    common: Float64Array.from({ length: draws }, () => spread.common * random.normal()),
    own: Float64Array.from(OWN_POINTS, (z) => spread.own * z),
  };
}
