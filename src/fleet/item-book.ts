import { catalogueRowsByItem, firstFact } from "./catalogue-facts.ts";
import { groupBy } from "./group-by.ts";
import { nameKey } from "./name-key.ts";
import type { CatalogueRow, Fleet, ItemKind } from "./rows.ts";

/** An item with the facts of all its catalogue rows (one a supplier): the first row that states a fact wins. */
export interface Item {
  key: string;
  /** As the catalogue writes it, else as it was first met. */
  name: string;
  /** null where no catalogue row names the item. */
  kind: ItemKind | null;
  perDevice: number | null;
  openedDays: number | null;
  shelfMonths: number | null;
  arrivesWithMonths: number | null;
  leadDays: number | null;
  /** Metres of paper in a unit. */
  unitLengthM: number | null;
  /** Decimal text of the lowest price of a single unit that suppliers state in `currency`. */
  price: string | null;
  currency: string | null;
  /** Device types, as keys. */
  fits: ReadonlySet<string>;
  /** Duties, as keys. */
  carriedBy: ReadonlySet<string>;
  /** Items that serve as well, as keys. */
  alternatives: ReadonlySet<string>;
}

/** The items of a fleet, each under the name by which it is bought: an item with `replaced_by` is its replacement. */
export interface ItemBook {
  /** By key, ascending. */
  items: readonly Item[];
  /** The item under any of its names; an unknown name is an item of its own without facts. */
  find(name: string): Item;
}

/**
 * Collects every item named by a sheet, or by `alsoNamed`, and follows `replaced_by` to the item that is bought now.
 */
export function itemBook(fleet: Fleet, alsoNamed: readonly string[] = []): ItemBook {
  const rowsOf = catalogueRowsByItem(fleet);
  const names = itemNames(fleet, alsoNamed);
  const boughtAs = new Map([...names.keys()].map((key) => [key, lastReplacement(key, rowsOf)]));
  const formerOf = groupBy([...names.keys()].sort(), (key) => boughtAs.get(key)!);
  const items = new Map<string, Item>();
  for (const [key, formers] of formerOf) {
    items.set(key, mergeFacts(key, names.get(key)!, formers, rowsOf, boughtAs));
  }
  const found = new Map<string, Item>();
  return {
    items: [...items.values()].sort((a, b) => (a.key < b.key ? -1 : 1)),
    find: (name) => {
      let item = found.get(name);
      if (!item) {
        const key = nameKey(name);
        item = items.get(boughtAs.get(key) ?? key) ?? mergeFacts(key, name, [key], rowsOf, boughtAs);
        found.set(name, item);
      }
      return item;
    },
  };
}

/** The names of all items by their keys: each as the catalogue writes it, else in one of the spellings met. */
export function itemNames(fleet: Fleet, alsoNamed: readonly string[] = []): Map<string, string> {
  const names = new Map<string, string>();
  const note = (name: string | null) => {
    if (name !== null && !names.has(nameKey(name))) names.set(nameKey(name), name.trim());
  };
  // in the order of suppliers and sorted, so that the spelling kept does not hang on the order of rows
  const listed = [...catalogueRowsByItem(fleet).values()].flat();
  for (const row of listed) note(row.item);
  const others = new Set<string>();
  for (const rows of [fleet.packs, fleet.datedStock, fleet.useLog, fleet.onOrder, fleet.routine]) {
    // rows of one item mostly stand together
    let last: string | null = "";
    for (const { item } of rows) {
      if (item === last) continue;
      last = item;
      if (item !== null && item !== "") others.add(item);
    }
  }
  for (const name of [...others].sort()) note(name);
  for (const name of alsoNamed) note(name);
  for (const row of listed) note(row.replacedBy);
  return names;
}

/** Keys of the items that packs are of, by whatever name they stand there. */
export function packItemKeys({ packs }: Fleet, book: ItemBook): Set<string> {
  return new Set(packs.flatMap(({ item }) => (item === null ? [] : [book.find(item).key])));
}

/** Follows `replaced_by` to its end; a circle ends where it started. */
function lastReplacement(key: string, rowsOf: Map<string, CatalogueRow[]>): string {
  const seen = new Set([key]);
  let at = key;
  for (;;) {
    const next = firstFact(rowsOf.get(at) ?? [], (row) => row.replacedBy);
    if (next === null) return at;
    const nextKey = nameKey(next);
    if (seen.has(nextKey)) return key;
    seen.add(nextKey);
    at = nextKey;
  }
}

function mergeFacts(
  key: string,
  name: string,
  formers: readonly string[],
  rowsOf: Map<string, CatalogueRow[]>,
  boughtAs: Map<string, string>,
): Item {
  const rows = rowsOf.get(key) ?? [];
  // a former item's devices take its replacement
  const family = [...rows, ...formers.filter((former) => former !== key).flatMap((former) => rowsOf.get(former) ?? [])];
  const priced = rows.filter((row) => Number(row.price) > 0 && row.pricePer !== "box");
  const currency = firstFact(priced, (row) => row.currency);
  const [cheapest] = priced
    .filter((row) => (row.currency ?? currency) === currency)
    .sort((a, b) => Number(a.price) - Number(b.price));
  const keys = (pick: (row: CatalogueRow) => readonly string[]) => new Set(family.flatMap(pick).map(nameKey));
  return {
    key,
    name,
    kind: firstFact(family, (row) => row.kind),
    perDevice: firstFact(family, (row) => row.perDevice),
    openedDays: firstFact(family, (row) => row.openedDays),
    shelfMonths: firstFact(rows, (row) => row.shelfMonths),
    arrivesWithMonths: firstFact(rows, (row) => row.arrivesWithMonths),
    leadDays: firstFact(rows, (row) => row.leadDays),
    unitLengthM: firstFact(rows, (row) => row.unitLengthM),
    price: cheapest?.price ?? null,
    currency,
    fits: keys((row) => row.fits),
    carriedBy: keys((row) => row.carriedBy),
    alternatives: new Set(
      [...keys((row) => row.alternatives)]
        .map((other) => boughtAs.get(other) ?? other)
        .filter((other) => other !== key),
    ),
  };
}
