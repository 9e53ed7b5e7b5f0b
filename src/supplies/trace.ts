import type { Day } from "../calendar/day.ts";
import { groupBy } from "../fleet/group-by.ts";
import { type ItemBook, itemBook } from "../fleet/item-book.ts";
import { nameKey } from "../fleet/name-key.ts";
import { withNamedItems } from "../fleet/named-items.ts";
import { listedAsPack } from "../fleet/packs-in-stock.ts";
import type { Policy } from "../fleet/policy.ts";
import type { DatedStockRow, Fleet, OnOrderRow, PackRow } from "../fleet/rows.ts";
import { type WhoTakes, whoTakes } from "../fleet/who-takes.ts";
import { sortBy } from "../maths/sort-by.ts";
import { dayCovered } from "./day-covered.ts";
import { gtinKey, type Matcher, matcherOf } from "./trace-matcher.ts";
import { fittableUntil, swapDay } from "./unit-life.ts";

/** Stands for the place of rows that name none. */
export const NO_PLACE = "(no place given)";

/** What an identifier turned out to be. */
export type TracedAs = "lot" | "serial" | "gtin" | "order";

/** One identifier and what it matched; an empty list = nothing in these sheets. */
export interface TracedId {
  id: string;
  as: TracedAs[];
  /** Only where it matched nothing and has the form of a label that cannot be trusted: why, as words after "the label". */
  wrong?: string;
}

/** A row of dated stock that an identifier touches. */
export interface TracedStock {
  row: DatedStockRow;
  /** True where the units are in a device that has not left service. */
  installed: boolean;
  swapBy: Day;
}

/** What it takes to do without the traced units of an item. */
export interface TracedItem {
  item: string;
  /** Units and packs in devices in service, and packs of a pool: each leaves a gap when it is taken out. */
  inUse: number;
  /** Units on shelves, spare packs, and what lies in devices that have left service: it would be lost. */
  onShelves: number;
  onOrder: number;
  /** Usable units of the item on shelves that the identifiers do not touch. */
  usableElsewhere: number;
  /** Units in use that no usable unit on a shelf can replace. */
  lacking: number;
  /**
   * Day on which the units lacking can be there: from open orders that the identifiers do not touch, or from an order
   * that leaves on as-of, whichever is sooner. As-of where nothing is lacking; null where neither has a date.
   */
  coveredOn: Day | null;
}

/** Everything that some identifiers touch. */
export interface Trace {
  ids: TracedId[];
  /** By place, item and expiry. */
  stock: TracedStock[];
  /** By device and serial; retired ones are listed, too. */
  packs: PackRow[];
  orders: OnOrderRow[];
  /** Places touched, with their units of dated stock and packs, by name. */
  places: { place: string; device: boolean; units: number; packs: number }[];
  /** By item. */
  items: TracedItem[];
}

/**
 * Follows lots, serial numbers, GTINs, order numbers and scanned labels to every place, device, pack and open order that they touch, as
 * for a recall. Case and outer blanks do not matter; an identifier that ends in `*` is a prefix of lots and serials; a
 * GTIN may lack its leading zeros; a label stands for its lot and serial, of its product only where the catalogue knows it.
 *
 * @param ids  one or a recall notice's list; blank ones are skipped
 */
export function traceIds(sheets: Fleet, policy: Policy, ids: readonly string[]): Trace {
  const named = withNamedItems(sheets);
  const book = itemBook(named);
  const takes = whoTakes(named, book, policy.asOf);
  const isPack = listedAsPack(named);
  const fleet = { ...named, packs: packsInPlace(named, isPack, takes) };
  const wanted = ids.map((id) => id.trim()).filter((id) => id !== "");
  const matchers = wanted.map((id) => ({ id, ...matcherOf(id, policy.asOf), as: new Set<TracedAs>() }));
  const touches = touchedBy(matchers, fleet);
  const touchedRows = fleet.datedStock.filter((row) =>
    touches(row.item, [
      ["lot", row.lot],
      ["serial", row.serial],
    ]),
  );
  const stock = sortBy(touchedRows, stockKey).map((row) => ({
    row,
    installed: row.place !== null && takes.devices.has(nameKey(row.place)),
    swapBy: swapDay(row, book.find(row.item), policy, isPack(row)),
  }));
  // a lot that stands in dated stock alone is its battery's, too
  const alsoPacks = new Set(touchedRows.filter(isPack).map(({ serial }) => nameKey(serial!)));
  const packs = sortBy(
    fleet.packs.filter((row) => touches(row.item, [["serial", row.serial]]) || alsoPacks.has(nameKey(row.serial))),
    ({ device, serial }) => [nameKey(device ?? ""), nameKey(serial)],
  );
  const orders = fleet.onOrder.filter((row) => touches(row.item, [["order", row.order]]));
  const counted = { stock: stock.filter(({ row }) => !isPack(row)), packs, orders };
  return {
    ids: matchers.map(({ id, as, wrong }) => ({
      id,
      as: [...as].sort(),
      ...(wrong !== null && as.size === 0 ? { wrong } : {}),
    })),
    stock,
    packs,
    orders,
    places: placesTouched(counted, takes, policy),
    items: itemsTouched(fleet, counted, isPack, book, takes, policy),
  };
}

/** An identifier with what it turned out to be so far. */
interface Wanted extends Matcher {
  as: Set<TracedAs>;
}

/** Whether any identifier is one of a row's texts, or its item's GTIN; each that is notes as what. */
function touchedBy(
  wanted: readonly Wanted[],
  { catalogue }: Fleet,
): (item: string | null, texts: [TracedAs, string | null][]) => boolean {
  const gtinsOf = groupBy(
    catalogue.filter((row) => row.gtin !== null),
    (row) => nameKey(row.item),
  );
  return (item, texts) => {
    let touched = false;
    const gtins = item === null ? [] : (gtinsOf.get(nameKey(item)) ?? []);
    const bears = (gtin: string) => gtins.some((row) => gtinKey(row.gtin!) === gtin);
    for (const { match, gtin, onlyOf, as } of wanted) {
      if (onlyOf !== null && gtins.length > 0 && !bears(onlyOf)) continue;
      for (const [kind, text] of texts) {
        if (text === null || !match(nameKey(text))) continue;
        as.add(kind);
        touched = true;
      }
      if (gtin !== null && bears(gtin)) {
        as.add("gtin");
        touched = true;
      }
    }
    return touched;
  };
}

/** What is touched, a battery that stands in two lists once. */
type Touched = Pick<Trace, "stock" | "packs" | "orders">;

function placesTouched({ stock, packs }: Touched, takes: WhoTakes, policy: Policy): Trace["places"] {
  const places = new Map<string, Trace["places"][number]>();
  const at = (name: string | null) => {
    const place = name?.trim() || NO_PLACE;
    const key = nameKey(place);
    const found = places.get(key) ?? {
      place,
      device: isDevice(place, takes),
      units: 0,
      packs: 0,
    };
    places.set(key, found);
    return found;
  };
  for (const { row } of stock) at(row.place).units += row.quantity;
  for (const pack of packs) if (!hasLeft(pack, policy)) at(pack.device ?? pack.site).packs += 1;
  return [...places].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, place]) => place);
}

function itemsTouched(
  fleet: Fleet,
  touched: Touched,
  isPack: (row: DatedStockRow) => boolean,
  book: ItemBook,
  takes: WhoTakes,
  policy: Policy,
): TracedItem[] {
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
  for (const { row, installed } of touched.stock) of(row.item)[installed ? "inUse" : "onShelves"] += row.quantity;
  for (const pack of touched.packs) {
    if (pack.item === null || hasLeft(pack, policy)) continue;
    const isIdle = isSpare(pack) || takes.retired.has(nameKey(pack.device ?? ""));
    of(pack.item)[isIdle ? "onShelves" : "inUse"] += 1;
  }
  for (const order of touched.orders) of(order.item).onOrder += order.quantity;
  const tracedStock = new Set(touched.stock.map(({ row }) => row));
  const tracedPacks = new Set(touched.packs);
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
    const found = items.get(book.find(pack.item).key);
    if (found && isSpare(pack) && !unfit.has(nameKey(pack.serial))) found.usableElsewhere += 1;
  }
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

/** Packs, each with the device where dated stock has it if its own row names none. */
function packsInPlace(fleet: Fleet, isPack: (row: DatedStockRow) => boolean, takes: WhoTakes): PackRow[] {
  const places = new Map<string, string>();
  for (const row of fleet.datedStock)
    if (isPack(row) && isDevice(row.place, takes)) places.set(nameKey(row.serial!), row.place!);
  return fleet.packs.map((pack) => ({ ...pack, device: pack.device ?? places.get(nameKey(pack.serial)) ?? null }));
}

/** True for a device of the fleet, in service or not. */
function isDevice(place: string | null, { devices, retired }: WhoTakes): boolean {
  const key = nameKey(place ?? "");
  return devices.has(key) || retired.has(key);
}

function hasLeft(pack: PackRow, policy: Policy): boolean {
  return pack.retired !== null && pack.retired <= policy.asOf;
}

/** A pack that no cell says is or was in service lies on a shelf. */
function isSpare(pack: PackRow): boolean {
  return pack.device === null && pack.inService === null && pack.cycles === null;
}

function stockKey(row: DatedStockRow): (string | number)[] {
  return [nameKey(row.place ?? ""), nameKey(row.item), row.expiry, nameKey(row.lot ?? ""), nameKey(row.serial ?? "")];
}
