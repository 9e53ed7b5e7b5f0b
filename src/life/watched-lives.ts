import type { Day } from "../calendar/day.ts";
import { DAYS_PER_YEAR } from "../calendar/mean-year.ts";
import { firstTests } from "../fade/first-tests.ts";
import { groupBy } from "../fleet/group-by.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Fleet, PackRow } from "../fleet/rows.ts";
import type { WatchedLife } from "../maths/kaplan-meier.ts";

/**
 * The day from which a pack can fail in service: in_service, else the day made, else its first test; null where the
 * sheets give none of them.
 */
export function firstDayOfService(pack: PackRow, firstTest: Day | null): Day | null {
  return pack.inService ?? pack.made ?? firstTest;
}

/**
 * Packs' lives in years as the sheets watched them, by item key. Failed and damaged packs failed at their retirement;
 * any other retirement, and as-of for packs still in service, ends the watch without a failure.
 *
 * A sheet that keeps retired packs keeps them from its first dated entry on (test, cycle count or retirement): packs
 * that failed before are not in it, so older packs enter the watch at the age they had then. A sheet without one
 * retired pack is a list of what serves now: it could not show a failure, so it tells nothing.
 *
 * @param isStock  whether a pack waits on the shelf, where nothing is watched
 */
export function watchedLives(fleet: Fleet, asOf: Day, isStock: (pack: PackRow) => boolean): Map<string, WatchedLife[]> {
  const start = recordsStart(fleet, asOf);
  const lives = new Map<string, WatchedLife[]>();
  if (start === null) return lives;
  const tests = firstTests(fleet, asOf);
  const named = fleet.packs.filter((pack) => pack.item !== null && !isStock(pack));
  for (const [item, packs] of groupBy(named, (pack) => nameKey(pack.item!))) {
    lives.set(
      item,
      packs.flatMap((pack) =>
        watch(pack, firstDayOfService(pack, tests.get(nameKey(pack.serial)) ?? null), start, asOf),
      ),
    );
  }
  return lives;
}

function watch(pack: PackRow, from: Day | null, recordsFrom: Day, asOf: Day): WatchedLife[] {
  if (from === null) return [];
  const retired = pack.retired !== null && pack.retired <= asOf;
  const until = retired ? pack.retired! : asOf;
  const failed = retired && (pack.retiredBecause === "failed" || pack.retiredBecause === "damaged");
  // one that failed on its first day, or whose failure opens the records, was watched for a day
  const days = failed && until === from ? 1 : until - from;
  const entry = Math.max(0, Math.min(recordsFrom, until - 1) - from);
  return days > 0 ? [{ entry: entry / DAYS_PER_YEAR, exit: days / DAYS_PER_YEAR, failed }] : [];
}

/** The first dated entry of sheets that keep retired packs; null where they keep none. */
function recordsStart(fleet: Fleet, asOf: Day): Day | null {
  let first = Infinity;
  for (const { retired } of fleet.packs) if (retired !== null && retired <= asOf) first = Math.min(first, retired);
  if (first === Infinity) return null;
  for (const { cyclesOn } of fleet.packs) if (cyclesOn !== null) first = Math.min(first, cyclesOn);
  for (const { date } of fleet.runtimeTests) first = Math.min(first, date);
  return first;
}
