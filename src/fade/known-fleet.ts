import type { Day } from "../calendar/day.ts";
import type { Fleet } from "../fleet/rows.ts";

/** The fleet as it was known on a day: later tests, counts and retirements had not happened. */
export function knownBy(fleet: Fleet, asOf: Day): Fleet {
  return {
    ...fleet,
    runtimeTests: fleet.runtimeTests.filter((test) => test.date <= asOf),
    packs: fleet.packs.map((pack) => {
      const retiredLater = pack.retired !== null && pack.retired > asOf;
      // an undated count of a retired pack is of its last day
      const countedOn = pack.cyclesOn ?? pack.retired;
      const countedLater = countedOn !== null && countedOn > asOf;
      if (!retiredLater && !countedLater) return pack;
      return {
        ...pack,
        ...(retiredLater ? { retired: null, retiredBecause: null } : {}),
        ...(countedLater ? { cycles: null, cyclesOn: null } : {}),
      };
    }),
  };
}
