import { sortBy } from "../maths/sort-by.ts";
import { groupBy } from "./group-by.ts";
import { nameKey } from "./name-key.ts";
import type { CatalogueRow, Fleet } from "./rows.ts";

/**
 * Catalogue rows by item key, each item's in the order of its suppliers' names, so that which row speaks first
 * does not hang on the order of the sheet.
 */
export function catalogueRowsByItem(fleet: Fleet): Map<string, CatalogueRow[]> {
  const sorted = sortBy(fleet.catalogue, ({ supplier, item }) => [nameKey(supplier ?? ""), nameKey(item)]);
  return groupBy(sorted, (row) => nameKey(row.item));
}

/** The first row's answer that is not null, or null. */
export function firstFact<Fact>(rows: readonly CatalogueRow[], pick: (row: CatalogueRow) => Fact | null): Fact | null {
  for (const row of rows) {
    const fact = pick(row);
    if (fact !== null) return fact;
  }
  return null;
}
