import { quantile } from "simple-statistics";
import type { Day } from "../calendar/day.ts";
import { DOUBTED_BELOW } from "../fade/doubted-readings.ts";
import type { FadingPack } from "../fade/fade-items.ts";

/** What became of a pack's siblings once they stood where it stands. */
export interface SiblingFacts {
  /** The capacity they passed, whole percent of rated. */
  percent: number;
  /** Siblings that were read below it later. */
  passed: number;
  /** Those of them that have come to the threshold since. */
  ended: number;
  /** Days from the one to the other: the span of all, or of the middle four fifths where they are many. */
  days: { from: number; to: number; ofMost: boolean };
}

/** Siblings' ends below which nothing is said. */
const FEWEST_ENDS = 3;
/** Ends from which the span leaves out the tenth at either side. */
const MANY_ENDS = 10;

interface Sibling {
  readings: FadingPack["readings"]["readings"];
  /** Capacity at the last of them. */
  last: number;
  end: Day | null;
}

/**
 * Facts about an item's packs in their own words: nothing here is forecast. A capacity is passed on the day on which
 * the straight line between the test above it and the test below it meets it.
 *
 * @param threshold          fraction at which packs are due
 * @param retiredAsFadedAt   the capacity at which past packs were retired as faded; where it is another, their
 *                           retirement tells nothing of this threshold
 * @returns the facts for a pack last read at a capacity, fraction of rated; null where too few siblings tell
 */
export function siblingFacts(
  packs: readonly FadingPack[],
  threshold: number,
  retiredAsFadedAt: number,
): (capacity: number) => SiblingFacts | null {
  const siblings = packs.map(({ pack, evidence, readings: { readings: all } }): Sibling => {
    // what the forecast hardly heeds is no fact to build on
    const readings = all.filter((_, j) => (evidence.trust[j] ?? 1) >= DOUBTED_BELOW);
    const faded = pack.retiredBecause === "faded" && retiredAsFadedAt === threshold ? pack.retired : null;
    const last = readings.at(-1)?.capacity ?? 1;
    const end = last < threshold ? dayBelow(readings, threshold) : null;
    return { readings, last, end: end ?? faded };
  });
  const ofPercent = new Map<number, SiblingFacts | null>();
  return (capacity) => {
    const percent = Math.round(capacity * 100);
    if (percent / 100 <= threshold) return null;
    const known = ofPercent.get(percent);
    if (known !== undefined) return known;
    const facts = factsAt(siblings, percent);
    ofPercent.set(percent, facts);
    return facts;
  };
}

function factsAt(siblings: readonly Sibling[], percent: number): SiblingFacts | null {
  const level = percent / 100;
  let passed = 0;
  const days: number[] = [];
  for (const { readings, last, end } of siblings) {
    const day = dayBelow(readings, level);
    // a pack that was last read at this very percent has not passed it
    if (day === null || Math.round(last * 100) >= percent) continue;
    passed++;
    if (end !== null && end >= day) days.push(end - day);
  }
  if (days.length < FEWEST_ENDS) return null;
  const ofMost = days.length >= MANY_ENDS;
  const at = (share: number) => quantile(days, share);
  return {
    percent,
    passed,
    ended: days.length,
    days: { from: at(ofMost ? 0.1 : 0), to: at(ofMost ? 0.9 : 1), ofMost },
  };
}

/** The first day on which readings come from a level or above to below it; null where they never do. */
function dayBelow(readings: Sibling["readings"], level: number): number | null {
  for (let j = 1; j < readings.length; j++) {
    const before = readings[j - 1]!;
    const after = readings[j]!;
    if (before.capacity < level || after.capacity >= level) continue;
    const share = (before.capacity - level) / (before.capacity - after.capacity);
    return before.day + share * (after.day - before.day);
  }
  return null;
}
