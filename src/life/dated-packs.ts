import { groupBy } from "../fleet/group-by.ts";
import { nameKey } from "../fleet/name-key.ts";
import { useByDates } from "../fleet/packs-in-stock.ts";
import type { Fleet } from "../fleet/rows.ts";

/** The share of an item's packs with a use-by date from which the item is one of batteries that do not recharge. */
const MOSTLY = 0.5;

/**
 * Items (as keys) of which most packs have a use-by date and none has charge cycles or tests: batteries that do not
 * recharge, whether or not a catalogue says so.
 */
export function itemsWithUseBy(fleet: Fleet): Set<string> {
  const dates = useByDates(fleet);
  if (dates.size === 0) return new Set();
  const tested = new Set(fleet.runtimeTests.map(({ serial }) => nameKey(serial)));
  const items = groupBy(
    fleet.packs.filter(({ item }) => item !== null),
    ({ item }) => nameKey(item!),
  );
  const recharges = (serial: string, cycles: number | null) => cycles !== null || tested.has(serial);
  return new Set(
    [...items].flatMap(([item, packs]) => {
      const dated = packs.filter(({ serial }) => dates.has(nameKey(serial))).length;
      const any = packs.some(({ serial, cycles }) => recharges(nameKey(serial), cycles));
      return dated >= MOSTLY * packs.length && !any ? [item] : [];
    }),
  );
}
