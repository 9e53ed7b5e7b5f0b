import { counted } from "./count-text.ts";
import type { Fleet } from "./rows.ts";

/** The name under which packs without an item are forecast and bought. */
const UNNAMED_ITEM = "unnamed pack";

const named = new WeakMap<Fleet, Fleet>();

/**
 * The fleet with a name for every pack's item: a sheet of serial numbers and dates often names none, and its packs
 * are then one kind in all that follows. The same fleet gives the same answer, so that what hangs on it is kept.
 */
export function withNamedItems(fleet: Fleet): Fleet {
  if (fleet.packs.every((pack) => pack.item !== null)) return fleet;
  const found = named.get(fleet) ?? {
    ...fleet,
    packs: fleet.packs.map((pack) => ({ ...pack, item: pack.item ?? UNNAMED_ITEM })),
  };
  named.set(fleet, found);
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
