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
 * The fleet with each item, place, lot and supplier under one spelling, by which all that follows counts it, and with a
 * name for every pack's item: a sheet of serial numbers and dates often names none, and its packs are then one kind. What
 * dated stock alone tells of a pack is the pack's. The same fleet gives the same answer, so that what hangs on it is kept.
 */
export function withNamedItems(fleet: Fleet): Fleet {
  const known = named.get(fleet);
  if (known) return known;
  const stocked = packsAsInStock(fleet);
  const { datedStock, useLog, catalogue, suppliers, onOrder } = fleet;
  const names = itemNames(fleet);
  const item = remembered((name: string | null) => (name === null ? null : (names.get(nameKey(name)) ?? name)));
  const lot = oneSpelling([], textsIn(datedStock, "lot"));
  const place = oneSpelling(
    fleet.devices.map(({ device }) => device),
    [...textsIn(stocked, "device"), ...textsIn(datedStock, "place"), ...textsIn(useLog, "place")],
  );
  const supplier = oneSpelling(
    suppliers.map((one) => one.supplier),
    [...textsIn(catalogue, "supplier"), ...textsIn(onOrder, "supplier")],
  );
  const spelled = {
    packs: respelled(stocked, { item: (name) => (name === null ? UNNAMED_ITEM : item(name)), device: place }),
    datedStock: respelled(datedStock, { item, place, lot }),
    catalogue: respelled(catalogue, { item, supplier }),
    useLog: respelled(useLog, { item, place }),
    onOrder: respelled(onOrder, { item, supplier }),
    routine: respelled(fleet.routine, { item }),
  };
  const kinds = Object.keys(spelled) as (keyof typeof spelled)[];
  const found = kinds.every((kind) => spelled[kind] === fleet[kind]) ? fleet : { ...fleet, ...spelled };
  named.set(fleet, found).set(found, found);
  return found;
}

type Spelling = (name: string | null) => string | null;

/** The different texts of a column. */
function textsIn<Column extends string>(rows: readonly Record<Column, string | null>[], column: Column): Set<string> {
  const texts = new Set<string>();
  // rows of one text mostly stand together
  let last: string | null = null;
  for (const row of rows) {
    const text = row[column];
    if (text !== null && text !== last) texts.add(text);
    last = text;
  }
  return texts;
}

/** How a name is spelled: as it is given, else in the one of the spellings met that is first in order; null where none changes. */
function oneSpelling(given: readonly string[], met: Iterable<string>): Spelling | null {
  const asGiven = new Map(given.map((name) => [nameKey(name), name]));
  const stands = new Map(asGiven);
  let differ = false;
  for (const name of met) {
    const key = nameKey(name);
    const stand = stands.get(key);
    differ ||= stand !== undefined && stand !== name;
    if (stand === undefined || (name < stand && !asGiven.has(key))) stands.set(key, name);
  }
  return differ ? remembered((name) => (name === null ? null : (stands.get(nameKey(name)) ?? name))) : null;
}

/** The rows with these columns in one spelling; rows, and the list, stay the same where nothing changes. */
function respelled<Row extends object>(rows: Row[], columns: { [Column in keyof Row]?: Spelling | null }): Row[] {
  const spellings = Object.entries(columns).filter(([, spelling]) => spelling !== null) as [keyof Row, Spelling][];
  const inOne = (row: Row) => {
    let now = row;
    for (const [column, spelling] of spellings) {
      const name = row[column] as string | null;
      const one = spelling(name);
      if (one !== name) now = { ...now, [column]: one };
    }
    return now;
  };
  return rows.every((row) => inOne(row) === row) ? rows : rows.map(inOne);
}

/** What to say where packs have no item. */
export function unnamedCautions(fleet: Fleet): string[] {
  const count = fleet.packs.filter(({ item }) => item === null || item === UNNAMED_ITEM).length;
  if (count === 0) return [];
  return [
    `${counted(count, "pack has", "packs have")} no item in the sheets: they are forecast as one kind, ${UNNAMED_ITEM}. Name their items to tell kinds apart.`,
  ];
}
