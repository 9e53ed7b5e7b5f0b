import { normalQuantile } from "../maths/normal.ts";
import { seededRandom } from "../maths/random.ts";
import { shuffled } from "../maths/shuffled.ts";
import { MODEL_ERROR } from "./priors.ts";

/**
 * Model error: no curve knows the future's pace exactly, so time ahead of as-of is stretched by e^stretch, in
 * a part that all packs of an item share (one value a draw) and a part of the pack's own (its standard deviation).
 */
export interface TimeStretch {
  common: Float64Array;
  own: number;
}

/**
 * Stretches for an item: the middles of equally likely slices, in an order that goes with nothing else.
 *
 * @param spread  standard deviations of log time, >= 0
 */
export function timeStretch(
  draws: number,
  seed: number,
  spread: { common: number; own: number } = MODEL_ERROR,
): TimeStretch {
  const order = shuffled(draws, seededRandom(seed));
  return {
    common: Float64Array.from(order, (slice) => spread.common * normalQuantile((slice + 0.5) / draws)),
    own: spread.own,
  };
}
