import { addMonths, type Day } from "../../calendar/day.ts";
import type { Fleet } from "../../fleet/rows.ts";
import { type SwappedPack, withoutOldPacks } from "../swapped-packs.ts";

/** A fleet as the packs of a day make it up; what was learned later is still in it, and left out by as-of. */
export interface PastFleet {
  asOf: Day;
  fleet: Fleet;
}

/**
 * The fleet today and at each cut-off.
 *
 * @param monthsBack  how long before as-of history is cut off
 */
export function pastFleets(
  fleet: Fleet,
  asOf: Day,
  monthsBack: readonly number[],
): { now: PastFleet & { swaps: SwappedPack[] }; past: PastFleet[] } {
  const cuts = monthsBack.map((months) => addMonths(asOf, -months));
  return {
    now: { asOf, ...withoutOldPacks(fleet, asOf) },
    past: cuts.map((cut) => ({ asOf: cut, fleet: withoutOldPacks(startedBy(fleet, cut), cut).fleet })),
  };
}

/** The fleet without the packs that had not been made or put in service by a day. */
function startedBy(fleet: Fleet, day: Day): Fleet {
  return {
    ...fleet,
    packs: fleet.packs.filter(({ made, inService }) => (made ?? inService ?? day) <= day && (inService ?? day) <= day),
  };
}
