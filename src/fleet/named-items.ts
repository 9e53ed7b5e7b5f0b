import { counted } from "./count-text.ts";
import { itemNames } from "./item-book.ts";
import { nameKey } from "./name-key.ts";
import { packsAsInStock } from "./packs-in-stock.ts";
import { remembered } from "./remembered.ts";
import type { Fleet } from "./rows.ts";

/** The name under which packs without an item are forecast and bought. */
const UNNAMED_ITEM = "unnamed pack";

const named = new WeakMap<Fleet, Fleet>();

/**
 * The fleet with each item under one spelling, by which all that follows counts it, and with a name for every pack's: a
 * sheet of serial numbers and dates often names none, and its packs are then one kind. What dated stock alone tells of a
 * pack is the pack's. The same fleet gives the same answer, so that what hangs on it is kept.
 */
export function withNamedItems(fleet: Fleet): Fleet {
  const known = named.get(fleet);
  if (known) return known;
  const names = itemNames(fleet);
  const nameOf = remembered((item: string) => names.get(nameKey(item)) ?? item);
  const inOneSpelling = <Row extends { item: string | null }>(rows: Row[], unnamed: string | null = null): Row[] => {
    const name = ({ item }: Row) => (item === null ? unnamed : nameOf(item));
    if (rows.every((row) => row.item === name(row))) return rows;
    return rows.map((row) => (row.item === name(row) ? row : { ...row, item: name(row) }));
  };
  const spelled = {
    packs: inOneSpelling(packsAsInStock(fleet), UNNAMED_ITEM),
    datedStock: inOneSpelling(fleet.datedStock),
    catalogue: inOneSpelling(fleet.catalogue),
    useLog: inOneSpelling(fleet.useLog),
    onOrder: inOneSpelling(fleet.onOrder),
    routine: inOneSpelling(fleet.routine),
  };
  const kinds = Object.keys(spelled) as (keyof typeof spelled)[];
  const found = kinds.every((kind) => spelled[kind] === fleet[kind]) ? fleet : { ...fleet, ...spelled };
  named.set(fleet, found).set(found, found);
  return found;
}

/** What to say where packs have no item. */
export function unnamedCautions(fleet: Fleet): string[] {
  const count = fleet.packs.filter(({ item }) => item === null || item === UNNAMED_ITEM).length;
  if (count === 0) return [];
  return [
    `${counted(count, "pack has", "packs have")} no item in the sheets: they are forecast as one kind, ${UNNAMED_ITEM}. Name their items to tell kinds apart.`,
  ];
}
