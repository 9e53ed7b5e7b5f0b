import { catalogueRowsByItem, firstFact } from "../fleet/catalogue-facts.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Fleet, ItemKind } from "../fleet/rows.ts";
import { itemsWithUseBy } from "./dated-packs.ts";

/** What the catalogue says of an item's life. */
export interface ItemLimits {
  kind: ItemKind | null;
  /** Months in service. */
  serviceMonths: number | null;
  maxCycles: number | null;
  /** Months from made to use-by, for batteries that do not recharge. */
  useByMonths: number | null;
}

const NOTHING_SAID: ItemLimits = { kind: null, serviceMonths: null, maxCycles: null, useByMonths: null };

/** Limits by item key; an item without a catalogue row has none, and a kind only where its packs' dates tell it. */
export function itemLimits(fleet: Fleet): (item: string) => ItemLimits {
  const rows = catalogueRowsByItem(fleet);
  const dated = itemsWithUseBy(fleet);
  return (item) => {
    const list = rows.get(nameKey(item));
    if (!list) return dated.has(nameKey(item)) ? { ...NOTHING_SAID, kind: "primary" } : NOTHING_SAID;
    const kind = firstFact(list, (row) => row.kind);
    return {
      kind,
      serviceMonths: firstFact(list, (row) => row.serviceMonths),
      maxCycles: firstFact(list, (row) => row.maxCycles),
      useByMonths: kind === "primary" ? firstFact(list, (row) => row.shelfMonths) : null,
    };
  };
}

/** Whether packs of an item fade by use: all but those that the catalogue, or their use-by dates, call primary. */
export function rechargeable(fleet: Fleet): (item: string) => boolean {
  const limitsOf = itemLimits(fleet);
  return (item) => limitsOf(item).kind !== "primary";
}
