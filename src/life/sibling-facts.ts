import type { Day } from "../calendar/day.ts";
import { heededReadings } from "../fade/heeded-readings.ts";
import type { FadingPack } from "../fade/items-with-evidence.ts";
import { quantile } from "../maths/quantiles.ts";

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
  const siblings = packs.map((one): Sibling => {
    const { pack } = one;
    const readings = heededReadings(one);
    const faded = pack.retiredBecause === "faded" && retiredAsFadedAt === threshold ? pack.retired : null;
    const last = readings.at(-1)?.capacity ?? 1;
    const end = last < threshold ? dayBelow(readings, threshold) : null;
    return { readings, last, end: end ?? faded };
  });
  const passages = passagesOf(siblings);
  const known = new Map<number, SiblingFacts | null>();
  return (capacity) => {
    const percent = Math.round(capacity * 100);
    if (percent / 100 <= threshold) return null;
    const facts = known.get(percent) ?? factsOf(percent, passages.get(percent));
    known.set(percent, facts);
    return facts;
  };
}

/** Siblings that passed one percent, and how many days those that ended took from there. */
interface Passage {
  passed: number;
  days: number[];
}

/** Passages by whole percent: every sibling is walked through once. */
function passagesOf(siblings: readonly Sibling[]): Map<number, Passage> {
  const passages = new Map<number, Passage>();
  for (const { readings, last, end } of siblings) {
    // a pack that was last read at a percent has not passed it
    const lastPercent = Math.round(last * 100);
    const found = new Set<number>();
    for (let j = 1; j < readings.length; j++) {
      const [before, after] = [readings[j - 1]!, readings[j]!];
      const top = Math.floor(before.capacity * 100 + 1e-9);
      for (let percent = top; percent / 100 > after.capacity && percent > lastPercent; percent--) {
        if (found.has(percent)) continue;
        found.add(percent);
        const passage = passages.get(percent) ?? { passed: 0, days: [] };
        passages.set(percent, passage);
        passage.passed++;
        const day = dayBetween(before, after, percent / 100);
        if (end !== null && end >= day) passage.days.push(end - day);
      }
    }
  }
  return passages;
}

function factsOf(percent: number, passage: Passage | undefined): SiblingFacts | null {
  if (passage === undefined || passage.days.length < FEWEST_ENDS) return null;
  const { passed, days } = passage;
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
    return dayBetween(before, after, level);
  }
  return null;
}

type Read = Sibling["readings"][number];

/** Where the straight line from one reading to a lower one meets a level. */
function dayBetween(before: Read, after: Read, level: number): number {
  return before.day + ((before.capacity - level) / (before.capacity - after.capacity)) * (after.day - before.day);
}
