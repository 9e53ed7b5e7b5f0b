import { nameKey } from "../fleet/name-key.ts";
import { sortBy } from "../maths/sort-by.ts";
import type { UseRateRow } from "../supplies/use-rate-table.ts";

/** How often an item is used at the places of a duty: together, at the one that uses least and most, and how sure that is. */
export interface DutyUse {
  item: string;
  duty: string | null;
  places: number;
  events: number;
  /** Of all places. */
  unitsPerYear: number;
  least: number;
  most: number;
  /** The lowest and highest end of the places' intervals. */
  low: number;
  high: number;
}

/**
 * Adds use rates up by item and duty, spelled as at its first place, in the order of items and of that place.
 *
 * @param eachRate  hands over one row after another, in any order
 */
export function usesByDuty(eachRate: (take: (row: UseRateRow) => void) => void): DutyUse[] {
  const found = new Map<string, Map<string, DutyUse & { firstPlace: string }>>();
  eachRate(({ item, place, duty, events, unitsPerYear, low, high }) => {
    let ofItem = found.get(item);
    if (!ofItem) {
      ofItem = new Map();
      found.set(item, ofItem);
    }
    const key = nameKey(duty ?? "");
    const use = ofItem.get(key);
    if (!use) {
      const one = { least: unitsPerYear, most: unitsPerYear, low, high, firstPlace: place };
      ofItem.set(key, { item, duty, places: 1, events, unitsPerYear, ...one });
      return;
    }
    use.places++;
    use.events += events;
    use.unitsPerYear += unitsPerYear;
    use.least = Math.min(use.least, unitsPerYear);
    use.most = Math.max(use.most, unitsPerYear);
    use.low = Math.min(use.low, low);
    use.high = Math.max(use.high, high);
    if (place < use.firstPlace) Object.assign(use, { firstPlace: place, duty });
  });
  return sortBy(
    [...found.values()].flatMap((ofItem) => [...ofItem.values()]),
    ({ item, firstPlace }) => [item, firstPlace],
  );
}
