import { groupBy } from "../fleet/group-by.ts";
import type { ItemBook } from "../fleet/item-book.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Policy } from "../fleet/policy.ts";
import type { DatedStockRow, Fleet, PackRow } from "../fleet/rows.ts";
import { shelfPacks } from "../fleet/shelf-packs.ts";
import type { WhoTakes } from "../fleet/who-takes.ts";
import { dayCovered } from "./day-covered.ts";
import type { Touched, TracedItem } from "./traced.ts";
import { fittableUntil, packShelfEnd } from "./unit-life.ts";

/** The fleet in which something is traced. */
interface TracedFleet {
  /** Its packs name their devices, where any sheet does. */
  fleet: Fleet;
  book: ItemBook;
  takes: WhoTakes;
  isPack: (row: DatedStockRow) => boolean;
  policy: Policy;
}

/** What it takes to do without what is touched, by item. */
export function itemsTouched(touched: Touched, of: TracedFleet): TracedItem[] {
  const { book, fleet, policy } = of;
  const items = countTouched(touched, of);
  countUsableElsewhere(items, touched, of);
  const coming = groupBy(
    fleet.onOrder.filter((row) => !touched.orders.includes(row)),
    (row) => book.find(row.item).key,
  );
  for (const [key, found] of items) {
    found.lacking = Math.max(0, found.inUse - found.usableElsewhere);
    found.coveredOn = dayCovered(found.lacking, coming.get(key) ?? [], book.find(found.item).leadDays, policy.asOf);
  }
  return [...items].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, found]) => found);
}

/** What is touched, counted by the key of its item. */
function countTouched(
  { stock, packs, orders }: Touched,
  { fleet, book, takes, policy }: TracedFleet,
): Map<string, TracedItem> {
  const isSpare = shelfPacks(fleet);
  const items = new Map<string, TracedItem>();
  const of = (name: string) => {
    const { key, name: item } = book.find(name);
    const found = items.get(key) ?? {
      item,
      inUse: 0,
      onShelves: 0,
      onOrder: 0,
      usableElsewhere: 0,
      lacking: 0,
      coveredOn: policy.asOf,
    };
    items.set(key, found);
    return found;
  };
  for (const { row, installed } of stock) of(row.item)[installed ? "inUse" : "onShelves"] += row.quantity;
  for (const pack of packs) {
    if (pack.item === null || hasLeft(pack, policy)) continue;
    const isIdle = isSpare(pack) || takes.retired.has(nameKey(pack.device ?? ""));
    of(pack.item)[isIdle ? "onShelves" : "inUse"] += 1;
  }
  for (const order of orders) of(order.item).onOrder += order.quantity;
  return items;
}

/** Counts what lies on shelves of the same items, untouched and fit for use. */
function countUsableElsewhere(
  items: ReadonlyMap<string, TracedItem>,
  touched: Touched,
  { fleet, book, takes, isPack, policy }: TracedFleet,
): void {
  const tracedStock = new Set(touched.stock.map(({ row }) => row));
  const tracedPacks = new Set(touched.packs);
  const isSpare = shelfPacks(fleet);
  const unfit = new Set<string>();
  for (const row of fleet.datedStock) {
    const found = items.get(book.find(row.item).key);
    if (!found) continue;
    const isFit = row.held === null && fittableUntil(row, book.find(row.item), policy) >= policy.asOf;
    if (isPack(row)) {
      if (!isFit) unfit.add(nameKey(row.serial!));
    } else if (isFit && !tracedStock.has(row) && !isDevice(row.place, takes)) found.usableElsewhere += row.quantity;
  }
  for (const pack of fleet.packs) {
    if (pack.item === null || tracedPacks.has(pack) || pack.held !== null || hasLeft(pack, policy)) continue;
    const item = book.find(pack.item);
    const found = items.get(item.key);
    const isFit =
      !unfit.has(nameKey(pack.serial)) && (packShelfEnd(item, pack.made, policy) ?? Infinity) >= policy.asOf;
    if (found && isSpare(pack) && isFit) found.usableElsewhere += 1;
  }
}

/** True for a device of the fleet, in service or not. */
export function isDevice(place: string | null, { devices, retired }: WhoTakes): boolean {
  const key = nameKey(place ?? "");
  return devices.has(key) || retired.has(key);
}

/** True for a pack that has left the fleet by as-of. */
export function hasLeft(pack: PackRow, policy: Policy): boolean {
  return pack.retired !== null && pack.retired <= policy.asOf;
}
