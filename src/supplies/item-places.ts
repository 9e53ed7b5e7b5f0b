import { groupBy } from "../fleet/group-by.ts";
import { type Item, type ItemBook, itemBook } from "../fleet/item-book.ts";
import { listedAsPack } from "../fleet/packs-in-stock.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet, UseLogRow } from "../fleet/rows.ts";
import { type WhoTakes, whoTakes } from "../fleet/who-takes.ts";
import type { ItemPlace } from "./item-place.ts";
import { devicesOfTask, usualQuantity } from "./routine-task.ts";
import { type StockUnit, stockUnits } from "./stock-units.ts";
import { type ItemUse, itemUse, usesByItem } from "./use-rates.ts";

/** An item with all places that need it. */
export interface ItemPlaces {
  item: Item;
  /** True where packs with serials carry the item: their lives are forecast as packs, not here. */
  asPacks: boolean;
  use: ItemUse | null;
  /** By key ascending. */
  places: readonly ItemPlace[];
  /** All rows of the item's dated stock, wherever they are, but those that are packs. */
  stock: readonly StockUnit[];
}

/** The fleet's items, who takes them and what takes units from where. */
export interface Needing {
  book: ItemBook;
  takes: WhoTakes;
  /** By item key ascending. */
  items: readonly ItemPlaces[];
  /** Dated stock in the order of the fleet's rows. */
  stock: readonly StockUnit[];
  /** The log's uses by item key. */
  uses: ReadonlyMap<string, UseLogRow[]>;
}

/** Collects, for every item, the places that need it: installed units, uses, routine and growth. */
export function itemPlaces(fleet: Fleet, policy: Policy): Needing {
  const book = itemBook(fleet);
  const takes = whoTakes(fleet, book, policy.asOf);
  const { from, uses } = usesByItem(fleet, book, policy);
  const packItems = new Set(fleet.packs.flatMap((pack) => (pack.item === null ? [] : [book.find(pack.item).key])));
  const stock = stockUnits(fleet, book, takes, policy);
  const stockOf = stockByItem(stock, listedAsPack(fleet));
  const routine = groupBy(
    fleet.routine.filter((row) => row.item !== null),
    (row) => book.find(row.item!).key,
  );
  const items = book.items.map((item) => {
    const asPacks = item.kind === "pack" || packItems.has(item.key);
    const use = asPacks ? null : itemUse(uses.get(item.key) ?? [], from, takes, item, policy.asOf);
    const perYear = new Map<string, number>();
    for (const row of asPacks ? [] : (routine.get(item.key) ?? [])) {
      for (const key of devicesOfTask(row.duty, takes, item)) {
        perYear.set(key, (perYear.get(key) ?? 0) + row.perYear * (row.quantity ?? usualQuantity(item)));
      }
    }
    const { all, installedAt } = stockOf.get(item.key) ?? { all: [], installedAt: new Map() };
    const places = placesOf(item, asPacks, use, perYear, installedAt, takes, policy);
    return { item, asPacks, use, places, stock: all };
  });
  return { book, takes, items, stock, uses };
}

/** An item's stock: all of it, and what is installed, by the key of its place. */
interface StockOfItem {
  all: StockUnit[];
  installedAt: Map<string, StockUnit[]>;
}

/** Stock by item key, without rows that are packs. */
function stockByItem(
  stock: readonly StockUnit[],
  isPack: (row: StockUnit["row"]) => boolean,
): Map<string, StockOfItem> {
  const found = new Map<string, StockOfItem>();
  // rows of one item mostly stand together
  let ofItem: StockOfItem = { all: [], installedAt: new Map() };
  let last: Item | null = null;
  for (let at = 0; at < stock.length; at++) {
    const unit = stock[at]!;
    if (isPack(unit.row)) continue;
    if (unit.item !== last) {
      last = unit.item;
      ofItem = found.get(last.key) ?? { all: [], installedAt: new Map() };
      found.set(last.key, ofItem);
    }
    ofItem.all.push(unit);
    if (!unit.installed) continue;
    const here = ofItem.installedAt.get(unit.placeKey);
    if (here) here.push(unit);
    else ofItem.installedAt.set(unit.placeKey, [unit]);
  }
  return found;
}

function placesOf(
  item: Item,
  asPacks: boolean,
  use: ItemUse | null,
  routinePerYear: ReadonlyMap<string, number>,
  stockAt: ReadonlyMap<string, readonly StockUnit[]>,
  takes: WhoTakes,
  policy: Policy,
): ItemPlace[] {
  const useAt = new Map((use?.places ?? []).map((place) => [place.key, place]));
  const newcomers = asPacks
    ? []
    : takes.takers(item).filter(({ device }) => device.inService !== null && device.inService > policy.asOf);
  const unitsOfNewcomer = new Map(newcomers.map(({ key, units }) => [key, units]));
  const keys = [...new Set([...stockAt.keys(), ...useAt.keys(), ...routinePerYear.keys(), ...unitsOfNewcomer.keys()])];
  const onRoutine = [...routinePerYear.keys()].sort();
  const rank = new Map(onRoutine.map((key, index) => [key, index]));
  return keys.sort().map((key) => {
    const device = takes.devices.get(key) ?? null;
    const here = stockAt.get(key) ?? [];
    const wanted = unitsOfNewcomer.get(key) ?? 0;
    return {
      key,
      device,
      from: Math.max(policy.asOf, device?.inService ?? policy.asOf),
      until: device?.retired ?? Number.POSITIVE_INFINITY,
      stock: here,
      lacking: wanted === 0 ? 0 : Math.max(0, wanted - here.reduce((sum, { row }) => sum + row.quantity, 0)),
      use: useAt.get(key) ?? null,
      routinePerYear: routinePerYear.get(key) ?? 0,
      // staggered, so that a fleet's half-used rolls do not all run out in one month
      routineStarted: rank.has(key) ? (rank.get(key)! + 0.5) / onRoutine.length : 0,
    };
  });
}
