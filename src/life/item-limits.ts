import { type CatalogueRow, type Fleet, type ItemKind, nameKey } from "../fleet/rows.ts";

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

/** Limits by item key; an item without a catalogue row has none. */
export function itemLimits(fleet: Fleet): (item: string) => ItemLimits {
  const rows = new Map<string, CatalogueRow[]>();
  for (const row of fleet.catalogue) {
    const list = rows.get(nameKey(row.item));
    if (list) list.push(row);
    else rows.set(nameKey(row.item), [row]);
  }
  const first = <T>(list: readonly CatalogueRow[], pick: (row: CatalogueRow) => T | null): T | null => {
    for (const row of list) {
      const value = pick(row);
      if (value !== null) return value;
    }
    return null;
  };
  return (item) => {
    const list = rows.get(nameKey(item));
    if (!list) return NOTHING_SAID;
    const kind = first(list, (row) => row.kind);
    return {
      kind,
      serviceMonths: first(list, (row) => row.serviceMonths),
      maxCycles: first(list, (row) => row.maxCycles),
      useByMonths: kind === "primary" ? first(list, (row) => row.shelfMonths) : null,
    };
  };
}
