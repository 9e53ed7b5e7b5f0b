import { catalogueRowsByItem, firstFact } from "../fleet/catalogue-facts.ts";
import { groupBy } from "../fleet/group-by.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Fleet } from "../fleet/rows.ts";
import { median } from "../maths/quantiles.ts";
import type { StatedLife } from "./item-prior.ts";
import type { PackClock } from "./pack-clock.ts";

/**
 * What the catalogue states of items' lives, in years of typical use. A cycle life is found in a few months of cycling
 * alone, until 80 % of rated or the end that the maker names (common practice, no source); where a pack is cycled a few
 * times a year its age ends it long before, so that the years it would take say only that it lasts no longer.
 *
 * @param clocks  of every pack, by pack key
 * @returns by item key
 */
export function statedLives(fleet: Fleet, clocks: ReadonlyMap<string, PackClock>): (item: string) => StatedLife {
  const rows = catalogueRowsByItem(fleet);
  const packsOf = groupBy(fleet.packs, (pack) => nameKey(pack.item ?? ""));
  const usualRate = (item: string) => {
    const rates = (packsOf.get(item) ?? []).flatMap((pack) => clocks.get(nameKey(pack.serial))!.cyclesPerYear ?? []);
    return rates.length > 0 ? median(rates) : 0;
  };
  return (item) => {
    const list = rows.get(item) ?? [];
    const months = firstFact(list, (row) => row.serviceMonths) ?? 0;
    const cycles = firstFact(list, (row) => row.maxCycles) ?? 0;
    const rate = cycles > 0 ? usualRate(item) : 0;
    return { years: months > 0 ? months / 12 : null, yearsAtMost: rate > 0 ? cycles / rate : null };
  };
}
