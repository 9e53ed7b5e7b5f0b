import { median } from "simple-statistics";
import { catalogueRowsByItem, firstFact } from "../fleet/catalogue-facts.ts";
import { groupBy } from "../fleet/group-by.ts";
import { type Fleet, nameKey } from "../fleet/rows.ts";
import type { PackClock } from "./pack-clock.ts";

/**
 * Life that the catalogue states for an item, in years of typical use: its service months, or its cycles at the
 * item's usual rate, whichever is shorter.
 *
 * @param clocks  of every pack, by pack key
 * @returns years by item key, null where nothing is stated
 */
export function statedLives(fleet: Fleet, clocks: ReadonlyMap<string, PackClock>): (item: string) => number | null {
  const rows = catalogueRowsByItem(fleet);
  const packsOf = groupBy(fleet.packs, (pack) => nameKey(pack.item ?? ""));
  const usualRate = (item: string) => {
    const rates = (packsOf.get(item) ?? []).flatMap((pack) => clocks.get(nameKey(pack.serial))!.cyclesPerYear ?? []);
    return rates.length > 0 ? median(rates) : 0;
  };
  return (item) => {
    const list = rows.get(item) ?? [];
    const months = firstFact(list, (row) => row.serviceMonths);
    const cycles = firstFact(list, (row) => row.maxCycles);
    const rate = cycles === null ? 0 : usualRate(item);
    const years = [months === null ? 0 : months / 12, cycles === null || rate === 0 ? 0 : cycles / rate];
    const stated = years.filter((value) => value > 0);
    return stated.length > 0 ? Math.min(...stated) : null;
  };
}
