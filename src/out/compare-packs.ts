import { dayFromIso } from "../calendar/day.ts";
import { nameKey } from "../fleet/name-key.ts";
import { sortBy } from "../maths/sort-by.ts";
import type { PackMoved } from "./comparison.ts";
import type { Plan } from "./plan-schema.ts";

/** Packs of both plans whose likely date of replacement (P50) moved, the largest moves first. */
export function comparePacks(a: Plan, b: Plan): PackMoved[] {
  const before = new Map(a.packs.map((pack) => [nameKey(pack.serial), pack]));
  const moved = b.packs.flatMap((pack): PackMoved[] => {
    const earlier = before.get(nameKey(pack.serial));
    if (!earlier || earlier.replaceBy.p50 === pack.replaceBy.p50) return [];
    const [from, to] = [earlier.replaceBy.p50, pack.replaceBy.p50];
    // what is due now is told as of its plan's own day: that it was to be due by then, or is so in both, is no move
    if (pack.replaceBy.kind === "already-due" && from !== null && from <= b.asOf) return [];
    if (earlier.replaceBy.kind === "already-due" && to !== null && to <= a.asOf) return [];
    return [
      {
        serial: pack.serial,
        item: pack.item,
        replaceBy: { a: from, b: to },
        daysLater: from === null || to === null ? null : dayFromIso(to)! - dayFromIso(from)!,
        newReadings: Math.max(0, pack.readings - earlier.readings),
      },
    ];
  });
  // a date that came or went is the largest move of all
  const size = (one: PackMoved) => (one.daysLater === null ? Number.MAX_SAFE_INTEGER : Math.abs(one.daysLater));
  return sortBy(moved, (one) => [-size(one), one.item, one.serial]);
}
