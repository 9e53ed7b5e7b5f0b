import type { Day } from "../calendar/day.ts";
import { readingsByPack } from "../fade/capacity-readings.ts";
import { knownBy } from "../fade/known-fleet.ts";
import { groupBy } from "../fleet/group-by.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Fleet, PackRow, RuntimeTestRow } from "../fleet/rows.ts";
import { thresholdInForce } from "../fleet/threshold-in-force.ts";

/** A serial number under which a newer pack goes on: its counter began anew, and its capacity came back. */
export interface SwappedPack {
  serial: string;
  /** The last test of the old pack and the first of the new one. */
  before: RuntimeTestRow;
  after: RuntimeTestRow;
  /** First day in service of the new pack: the sheet's where it lies between the two tests, else the middle of the days between. */
  since: Day;
}

/** A counter begins anew where it falls to less than this share. */
const COUNT_FALLS_TO = 0.5;
/** Capacity that no pack regains, fraction of rated. */
const CAPACITY_RISES_BY = 0.06;
/** Readings on either side that must lie on their own side, so that one bad test makes no swap. */
const READINGS_ASKED = 2;

const NONE: Known = { swaps: [], fleet: null };

interface Known {
  swaps: SwappedPack[];
  fleet: Fleet | null;
}

const known = new WeakMap<Fleet, Map<Day, Known>>();

/**
 * The fleet with swapped packs as the packs they are now: without the old one's tests and counts, and made on an unknown
 * day unless the sheet's dates are the new one's. A counter that began anew while the capacity went on as before
 * was only reset, and stays the same pack. The same fleet gives the same answer, so that what hangs on it is kept.
 *
 * @param asOf  later tests are not known yet
 */
export function withoutOldPacks(fleet: Fleet, asOf: Day): { fleet: Fleet; swaps: SwappedPack[] } {
  const ofFleet = known.get(fleet) ?? new Map<Day, Known>();
  known.set(fleet, ofFleet);
  const found = ofFleet.get(asOf) ?? findOldPacks(fleet, asOf);
  ofFleet.set(asOf, found);
  return { fleet: found.fleet ?? fleet, swaps: found.swaps };
}

function findOldPacks(fleet: Fleet, asOf: Day): Known {
  const falls = countFalls(fleet, asOf);
  if (falls.length === 0) return NONE;
  const readings = readingsByPack(knownBy(fleet, asOf), thresholdInForce(fleet));
  const swaps = new Map<string, SwappedPack>();
  const rows = new Map(fleet.packs.map((pack) => [nameKey(pack.serial), pack]));
  for (const fall of falls) {
    const key = nameKey(fall.serial);
    const list = readings.get(key)?.readings ?? [];
    const before = list.filter(({ day }) => day <= fall.before.date).slice(-READINGS_ASKED);
    const after = list.filter(({ day }) => day >= fall.after.date).slice(0, READINGS_ASKED);
    if (before.length === 0 || after.length === 0) continue;
    const highest = Math.max(...before.map(({ capacity }) => capacity));
    const lowest = Math.min(...after.map(({ capacity }) => capacity));
    const rise = after[0]!.capacity - before.at(-1)!.capacity;
    if (lowest >= highest && rise >= CAPACITY_RISES_BY)
      swaps.set(key, { ...fall, since: sinceOf(fall, rows.get(key)) });
  }
  if (swaps.size === 0) return NONE;
  const isOld = ({ serial, date }: RuntimeTestRow) => date <= (swaps.get(nameKey(serial))?.before.date ?? -Infinity);
  return {
    swaps: [...swaps.values()],
    fleet: {
      ...fleet,
      runtimeTests: fleet.runtimeTests.filter((test) => !isOld(test)),
      packs: fleet.packs.map((pack) => {
        const swap = swaps.get(nameKey(pack.serial));
        if (swap === undefined) return pack;
        const ofOld = pack.cyclesOn !== null && pack.cyclesOn <= swap.before.date;
        const { since } = swap;
        const made = pack.inService === since ? pack.made : null;
        return { ...pack, made, inService: since, ...(ofOld ? { cycles: null, cyclesOn: null } : {}) };
      }),
    },
  };
}

function sinceOf({ before, after }: Fall, pack: PackRow | undefined): Day {
  const told = pack?.inService ?? null;
  return told !== null && told > before.date && told <= after.date ? told : Math.floor((before.date + after.date) / 2);
}

type Fall = Omit<SwappedPack, "since">;

/** The falls of packs' counters, each pack's in the order of their days. */
function countFalls(fleet: Fleet, asOf: Day): Fall[] {
  const counted = fleet.runtimeTests.filter(({ date, cycles }) => cycles !== null && date <= asOf);
  const falls: Fall[] = [];
  for (const tests of groupBy(counted, ({ serial }) => nameKey(serial)).values()) {
    tests.sort((a, b) => a.date - b.date || a.source.line - b.source.line);
    for (let j = 1; j < tests.length; j++) {
      const [before, after] = [tests[j - 1]!, tests[j]!];
      if (after.cycles! < COUNT_FALLS_TO * before.cycles!) falls.push({ serial: after.serial, before, after });
    }
  }
  return falls;
}
