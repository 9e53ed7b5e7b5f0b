import { groupBy } from "../fleet/group-by.ts";
import { type Item, type ItemBook, itemBook, packItemKeys } from "../fleet/item-book.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet, OnOrderRow } from "../fleet/rows.ts";
import { type WhoTakes, whoTakes } from "../fleet/who-takes.ts";
import { dealtOut } from "../maths/dealt-out.ts";
import type { SplitUses } from "./bulk-issues.ts";
import type { ItemPlace } from "./item-place.ts";
import { devicesEmptied, type Holdings, holdings, type Lack } from "./lacking-units.ts";
import { devicesOfTask, usualQuantity } from "./routine-task.ts";
import { StockUnits } from "./stock-units.ts";
import { type ItemUse, itemUse, usesByItem } from "./use-rates.ts";

/** An item with all places that need it. */
export interface ItemPlaces {
  item: Item;
  /** True where packs with serials carry the item: their lives are forecast as packs, not here. */
  asPacks: boolean;
  use: ItemUse | null;
  /** By key ascending. */
  places: readonly ItemPlace[];
  /** What devices hold of it beside what they should. */
  held: Holdings;
  /** Numbers of all rows of the item's dated stock but those that are packs, by place and swap day. */
  stock: Int32Array;
  /** What those numbers stand for. */
  units: StockUnits;
  onOrder: readonly OnOrderRow[];
}

/** The fleet's items, who takes them and what takes units from where. */
export interface Needing {
  book: ItemBook;
  takes: WhoTakes;
  /** By item key ascending. */
  items: readonly ItemPlaces[];
  stock: StockUnits;
  /** The log's uses by item key. */
  uses: ReadonlyMap<string, SplitUses>;
}

const NO_ROWS = new Int32Array(0);

/** Collects, for every item, the places that need it: installed units, uses, routine and growth. */
export function itemPlaces(fleet: Fleet, policy: Policy): Needing {
  const book = itemBook(fleet);
  const takes = whoTakes(fleet, book, policy.asOf);
  const { from, uses } = usesByItem(fleet, book, policy);
  const packItems = packItemKeys(fleet, book);
  const stock = new StockUnits(fleet, book, takes, policy);
  const stockOf = rowsByItem(stock);
  const routine = groupBy(
    fleet.routine.filter((row) => row.item !== null),
    (row) => book.find(row.item!).key,
  );
  const onOrder = groupBy(fleet.onOrder, (row) => book.find(row.item).key);
  const emptied = devicesEmptied(fleet, policy);
  const items = book.items.map((item) => {
    const asPacks = item.kind === "pack" || packItems.has(item.key);
    const use = asPacks ? null : itemUse(uses.get(item.key)?.uses ?? [], from, takes, item, policy.asOf);
    const perYear = new Map<string, number>();
    for (const row of asPacks ? [] : (routine.get(item.key) ?? [])) {
      for (const key of devicesOfTask(row.duty, takes, item)) {
        perYear.set(key, (perYear.get(key) ?? 0) + row.perYear * (row.quantity ?? usualQuantity(item)));
      }
    }
    const ofItem = stockOf.get(item) ?? NO_ROWS;
    const held = holdings(item, asPacks ? emptied : null, takes, policy);
    const rowsAt = installedByPlace(ofItem, stock);
    const places = placesOf({ use, routinePerYear: perYear, rowsAt, lacks: asPacks ? [] : held.lacks }, takes, policy);
    return { item, asPacks, use, places, held, stock: ofItem, units: stock, onOrder: onOrder.get(item.key) ?? [] };
  });
  return { book, takes, items, stock, uses };
}

/** Numbers of the rows of each item, place by place and in the order of their swap days; rows that are packs are left out. */
function rowsByItem(stock: StockUnits): Map<Item, Int32Array> {
  const { size, names, nameAt, asPack } = stock;
  const numbers = new Map<Item, number>();
  for (const { item } of names) if (!numbers.has(item)) numbers.set(item, numbers.size);
  const under = names.map(({ item }) => numbers.get(item)!);
  // packs stand behind all items
  const itemAt = new Int32Array(size);
  const counts = new Int32Array(numbers.size + 1);
  for (let at = 0; at < size; at++) {
    itemAt[at] = asPack[at] === 1 ? numbers.size : under[nameAt[at]!]!;
    counts[itemAt[at]!]!++;
  }
  const inOrder = dealtOut(stock.byPlace(stock.bySwapDay()), itemAt, counts.length);
  let from = 0;
  return new Map(
    [...numbers].map(([item, number]) => {
      const rows = inOrder.subarray(from, from + counts[number]!);
      from += counts[number]!;
      return [item, rows];
    }),
  );
}

/** Of rows that stand place by place, those of each device, by its key. */
function installedByPlace(rows: Int32Array, stock: StockUnits): Map<string, Int32Array> {
  const found = new Map<string, Int32Array>();
  for (let from = 0, to = 0; from < rows.length; from = to) {
    const { key, installed } = stock.placeOf(rows[from]!);
    to = from + 1;
    while (to < rows.length && stock.keyAt[rows[to]!] === stock.keyAt[rows[from]!]) to++;
    if (installed) found.set(key, rows.subarray(from, to));
  }
  return found;
}

/** What makes places need an item. */
interface NeedsOfItem {
  use: ItemUse | null;
  /** Units a year consumed on schedule, by place. */
  routinePerYear: ReadonlyMap<string, number>;
  /** Numbers of the rows installed, by place. */
  rowsAt: ReadonlyMap<string, Int32Array>;
  lacks: readonly Lack[];
}

function placesOf({ use, routinePerYear, rowsAt, lacks }: NeedsOfItem, takes: WhoTakes, policy: Policy): ItemPlace[] {
  const useAt = new Map((use?.places ?? []).map((place) => [place.key, place]));
  const lackingAt = new Map(lacks.map(({ key, units }) => [key, units]));
  // those of the uses first, since they are in order
  const keys = [...new Set([...useAt.keys(), ...rowsAt.keys(), ...routinePerYear.keys(), ...lackingAt.keys()])];
  const onRoutine = [...routinePerYear.keys()].sort();
  const rank = new Map(onRoutine.map((key, index) => [key, index]));
  return keys.sort().map((key) => {
    const device = takes.devices.get(key) ?? null;
    return {
      key,
      device,
      from: Math.max(policy.asOf, device?.inService ?? policy.asOf),
      until: device?.retired ?? Number.POSITIVE_INFINITY,
      stock: rowsAt.get(key) ?? NO_ROWS,
      lacking: lackingAt.get(key) ?? 0,
      use: useAt.get(key) ?? null,
      routinePerYear: routinePerYear.get(key) ?? 0,
      // staggered, so that a fleet's half-used rolls do not all run out in one month
      routineStarted: rank.has(key) ? (rank.get(key)! + 0.5) / onRoutine.length : 0,
    };
  });
}
