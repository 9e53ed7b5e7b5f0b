import { ROUNDING } from "../maths/convolution.ts";
import type { SpanNeeds } from "./span-needs.ts";

/**
 * Needs whose distribution is that of equally likely futures.
 *
 * @param units  needed by future and month, at future * months + month
 */
export function needsOfFutures(units: Int32Array, futures: number, months: number): SpanNeeds {
  // running sums make a span's needs one subtraction; month by month, so that a span reads two rows
  const upTo = new Int32Array((months + 1) * futures);
  for (let month = 0; month < months; month++) {
    const row = month * futures;
    for (let future = 0; future < futures; future++) {
      upTo[row + futures + future] = upTo[row + future]! + units[future * months + month]!;
    }
  }
  // futures by what they need, counted anew for every span
  const found = new Int32Array(upTo.subarray(months * futures).reduce((most, total) => Math.max(most, total), 0) + 1);
  return {
    countsIn(after, through) {
      const from = (after + 1) * futures;
      const to = (through + 1) * futures;
      let most = 0;
      for (let future = 0; future < futures; future++) most = Math.max(most, upTo[to + future]! - upTo[from + future]!);
      const chances = new Float64Array(most + 1);
      for (let future = 0; future < futures; future++) chances[upTo[to + future]! - upTo[from + future]!]! += 1;
      for (let n = 0; n <= most; n++) chances[n] = chances[n]! / futures;
      return chances;
    },
    quantileIn(after, through, level) {
      const from = (after + 1) * futures;
      const to = (through + 1) * futures;
      found.fill(0);
      for (let future = 0; future < futures; future++) found[upTo[to + future]! - upTo[from + future]!]!++;
      const wanted = (level - ROUNDING) * futures;
      let needed = 0;
      for (let atMost = found[0]!; atMost < wanted && needed + 1 < found.length; ) atMost += found[++needed]!;
      return needed;
    },
    addPath(_draw, random, into) {
      // draws and futures are apart: a draw carries what packs share, which places have no part in
      const future = Math.floor(random() * futures);
      for (let m = 0; m < months; m++) into[m] = into[m]! + units[future * months + m]!;
    },
  };
}
