import { median } from "simple-statistics";
import type { SeenPace } from "../../fade/pack-paces.ts";
import type { SeenGroup } from "../../maths/shrunk-means.ts";

/** Degrees of freedom of the paces' spread between packs, as in the fit: one odd pack must not speak for its group. */
const TAIL = 4;
/** What a value of such a spread tells of the middle, against a normal one: (ν + 1) / (ν + 3). */
const INFORMATION = (TAIL + 1) / (TAIL + 3);
const ROUNDS = 20;

/**
 * The mean log pace of a group of packs as their readings show it.
 *
 * @param spread  scale of log pace between packs of the item
 * @see Lange, K. L. et al. (1989), Robust statistical modeling using the t distribution, J. Am. Statist. Assoc. 84,
 *      881-896 (from memory)
 */
export function groupMean(paces: readonly SeenPace[], spread: number): SeenGroup {
  let estimate = median(paces.map((pace) => pace.estimate));
  let information = 0;
  for (const { variance } of paces) information += INFORMATION / (spread * spread + variance);
  for (let round = 0; round < ROUNDS && paces.length > 2; round++) {
    let weights = 0;
    let sum = 0;
    for (const pace of paces) {
      const scale = spread * spread + pace.variance;
      const weight = (TAIL + 1) / (TAIL + (pace.estimate - estimate) ** 2 / scale) / scale;
      weights += weight;
      sum += weight * pace.estimate;
    }
    estimate = sum / weights;
  }
  return { estimate, variance: 1 / information, weight: paces.length };
}
