import { SHIFTS } from "../../fade/pack-paces.ts";
import type { SeenGroup } from "../../maths/shrunk-means.ts";

/** What is believed of a group's mean log pace where only its readings are to speak: next to nothing. */
const WIDE = 1;
/** Least information (one over variance) of a group, so that one whose readings say nothing is hardly heeded. */
const FAINTEST = 0.3;
/** Variance of what lies within one step of the shifts. */
const WITHIN_STEP = (SHIFTS[1]! - SHIFTS[0]!) ** 2 / 12;

/**
 * The mean log pace of a group of packs as their readings show it.
 *
 * @param logs     log likelihood of the readings of all its packs together, by shift
 * @param members  how many packs
 */
export function groupMean(logs: Float64Array, members: number): SeenGroup {
  const believed = logs.map((log, k) => log - 0.5 * (SHIFTS[k]! / WIDE) ** 2);
  const best = Math.max(...believed);
  let total = 0;
  let sum = 0;
  let squares = 0;
  SHIFTS.forEach((shift, k) => {
    const weight = Math.exp(believed[k]! - best);
    total += weight;
    sum += weight * shift;
    squares += weight * shift * shift;
  });
  const mean = sum / total;
  const variance = squares / total - mean * mean + WITHIN_STEP;
  // a normal likelihood times the wide prior gave this mean and variance: without the prior they are these
  const information = Math.max(FAINTEST, 1 / variance - 1 / (WIDE * WIDE));
  return { estimate: mean / variance / information, variance: 1 / information, weight: members };
}
