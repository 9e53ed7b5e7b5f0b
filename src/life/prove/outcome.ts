import type { Day } from "../../calendar/day.ts";
import { heededReadings } from "../../fade/heeded-readings.ts";
import type { FadingPack } from "../../fade/items-with-evidence.ts";

/**
 * What became of a pack after a cut-off day: it ended between two days (its first test below the threshold, or its
 * retirement as faded), or it was last seen good, or nothing is known of it; nor is there anything to foretell of one that had
 * ended by then. A test that the fit doubts says neither.
 */
export type Outcome = { kind: "ended"; after: Day; by: Day } | { kind: "lasted"; until: Day } | { kind: "unknown" };

/**
 * The outcome of one pack from all that is known by now.
 *
 * @param cut        the day after which readings were hidden
 * @param threshold  fraction of rated below which a pack has ended
 */
export function outcomeAfter(pack: FadingPack, cut: Day, threshold: number): Outcome {
  const { retired, retiredBecause } = pack.pack;
  const tests = heededReadings(pack);
  const below = tests.findIndex(({ capacity }) => capacity < threshold);
  const lastGood = (before: Day) =>
    tests.reduce(
      (last, { day, capacity }) => (day < before && capacity >= threshold ? Math.max(last, day) : last),
      cut,
    );
  if (below >= 0) {
    const by = tests[below]!.day;
    if (by <= cut) return { kind: "unknown" };
    return { kind: "ended", after: lastGood(by), by };
  }
  if (retiredBecause === "faded" && retired !== null && retired > cut) {
    return { kind: "ended", after: lastGood(retired), by: retired };
  }
  const until = lastGood(Infinity);
  return until > cut ? { kind: "lasted", until } : { kind: "unknown" };
}
