import type { Day } from "../calendar/day.ts";
import { type Month, monthOfDay } from "../calendar/month.ts";
import type { Item, ItemBook } from "../fleet/item-book.ts";
import { nameKey } from "../fleet/name-key.ts";
import { listedAsPack } from "../fleet/packs-in-stock.ts";
import type { Policy } from "../fleet/policy.ts";
import { remembered } from "../fleet/remembered.ts";
import type { DatedStockRow, Fleet } from "../fleet/rows.ts";
import type { WhoTakes } from "../fleet/who-takes.ts";
import { dealtOut, firstNumbers } from "../maths/dealt-out.ts";
import { orderOf } from "../maths/order-of.ts";
import { swapDay } from "./unit-life.ts";

/** An item under one of its names. */
interface StockName {
  /** As the row spells it. */
  name: string;
  item: Item;
}

/** A place under one of its spellings. */
interface StockPlace {
  /** As the row spells it. */
  name: string | null;
  /** "" where the row names no place. */
  key: string;
  /** One for each key, from 0. */
  keyNumber: number;
  /** True where the place is a device: the units are installed and their end is a need. */
  installed: boolean;
  /** True where the place is a device that has left service: nobody can count on finding the units there. */
  stranded: boolean;
  /** When the device that is the place leaves service: from then on nothing is swapped there. */
  until: Day;
}

/**
 * Dated stock with what all stages ask of it, in columns by the number of the row: many stages go through all rows, and an
 * object a row would take longer to make, and to look at each time, than what is worked out of it.
 */
export class StockUnits {
  /** In the fleet's order. */
  readonly rows: readonly DatedStockRow[];
  readonly names: readonly StockName[];
  /** By row, its item's name among `names`. */
  readonly nameAt: Int32Array;
  readonly places: readonly StockPlace[];
  /** By row, its place among `places`, which holds each spelling, and the number of the place's key. */
  readonly placeAt: Int32Array;
  readonly keyAt: Int32Array;
  /** How many different keys there are. */
  readonly keys: number;
  readonly quantity: Int32Array;
  /** By row, 1 where it is a battery that is listed as a pack, too. */
  readonly asPack: Uint8Array;
  /** By row, 1 where it is not held and holds units. */
  readonly serves: Uint8Array;
  readonly expiry: Int32Array;
  /** Swap days. */
  readonly swapBy: Int32Array;
  /** Months of the swap days. */
  readonly swapMonth: Int32Array;
  /** Expected share of a row's units used before its swap day; 0 until it is worked out. */
  readonly chanceUsed: Float64Array;
  /** Numbers of rows that are no installed units, that do not serve, and whose swap day is before as-of. */
  readonly elsewhere: readonly number[];
  readonly idle: readonly number[];
  readonly overdue: readonly number[];
  /** By row, the number of its swap day among the different ones, in the order in which they are met. */
  readonly #dayAt: Int32Array;
  readonly #days: readonly Day[];

  constructor(fleet: Fleet, book: ItemBook, takes: WhoTakes, policy: Policy) {
    const rows = fleet.datedStock;
    const size = rows.length;
    const names: StockName[] = [];
    const places: StockPlace[] = [];
    this.rows = rows;
    this.names = names;
    this.nameAt = new Int32Array(size);
    this.places = places;
    this.placeAt = new Int32Array(size);
    this.keyAt = new Int32Array(size);
    this.quantity = new Int32Array(size);
    this.asPack = new Uint8Array(size);
    this.serves = new Uint8Array(size);
    this.expiry = new Int32Array(size);
    this.swapBy = new Int32Array(size);
    this.swapMonth = new Int32Array(size);
    this.chanceUsed = new Float64Array(size);
    this.#dayAt = new Int32Array(size);
    const isPack = listedAsPack(fleet);
    // few names and days stand in many rows
    const numberOfName = remembered((name: string) => names.push({ name, item: book.find(name) }) - 1);
    const keys: string[] = [];
    const numberOfKey = remembered((key: string) => keys.push(key) - 1);
    const numberOfPlace = remembered((name: string | null) => {
      const key = name === null ? "" : nameKey(name);
      const device = takes.devices.get(key);
      const stranded = takes.retired.has(key);
      const until = stranded ? Number.NEGATIVE_INFINITY : (device?.retired ?? Number.POSITIVE_INFINITY);
      return (
        places.push({ name, key, keyNumber: numberOfKey(key), installed: device !== undefined, stranded, until }) - 1
      );
    });
    const days: Day[] = [];
    const months: Month[] = [];
    const numberOfDay = remembered((day: Day) => {
      months.push(monthOfDay(day));
      return days.push(day) - 1;
    });
    this.#days = days;
    const elsewhere: number[] = [];
    const idle: number[] = [];
    const overdue: number[] = [];
    for (let at = 0; at < size; at++) {
      const row = rows[at]!;
      const name = numberOfName(row.item);
      const place = numberOfPlace(row.place);
      const { keyNumber, installed } = places[place]!;
      const serves = row.held === null && row.quantity > 0;
      const asPack = isPack(row);
      const swapBy = swapDay(row, names[name]!.item, policy, asPack);
      const day = numberOfDay(swapBy);
      this.nameAt[at] = name;
      this.placeAt[at] = place;
      this.keyAt[at] = keyNumber;
      this.quantity[at] = row.quantity;
      this.asPack[at] = asPack ? 1 : 0;
      this.serves[at] = serves ? 1 : 0;
      this.expiry[at] = row.expiry;
      this.swapBy[at] = swapBy;
      this.swapMonth[at] = months[day]!;
      this.#dayAt[at] = day;
      if (!installed) elsewhere.push(at);
      if (!serves) idle.push(at);
      if (swapBy < policy.asOf) overdue.push(at);
    }
    this.keys = keys.length;
    this.elsewhere = elsewhere;
    this.idle = idle;
    this.overdue = overdue;
  }

  get size(): number {
    return this.rows.length;
  }

  itemOf(at: number): Item {
    return this.names[this.nameAt[at]!]!.item;
  }

  placeOf(at: number): StockPlace {
    return this.places[this.placeAt[at]!]!;
  }

  /** Units of some rows together. */
  unitsOf(rows: Int32Array | readonly number[]): number {
    let sum = 0;
    for (let i = 0; i < rows.length; i++) sum += this.quantity[rows[i]!]!;
    return sum;
  }

  /** The numbers of all rows in the order of their swap days; those of a day in the fleet's order. */
  bySwapDay(): Int32Array {
    const rank = new Int32Array(this.#days.length);
    orderOf(this.#days).forEach((number, place) => {
      rank[number] = place;
    });
    const rankAt = this.#dayAt.map((number) => rank[number]!);
    return dealtOut(firstNumbers(this.size), rankAt, rank.length);
  }

  /** The numbers of rows place by place, those of a place in their order. */
  byPlace(rows: Int32Array): Int32Array {
    return dealtOut(rows, this.keyAt, this.keys);
  }

  /** Of the numbers of rows in the order of their swap days, those of rows that serve and are due on a day or later. */
  servingFrom(rows: Int32Array, day: Day): Int32Array {
    let first = 0;
    while (first < rows.length && this.swapBy[rows[first]!]! < day) first++;
    const due = first === 0 ? rows : rows.subarray(first);
    // most places hold nothing else
    for (let i = 0; i < due.length; i++)
      if (this.serves[due[i]!] === 0) return due.filter((at) => this.serves[at] === 1);
    return due;
  }

  /** Of the numbers of rows, those that serve every place: neither held nor at a device, in service or not. */
  onShelves(rows: Int32Array): number[] {
    return [...rows].filter((at) => {
      const { installed, stranded } = this.placeOf(at);
      return !installed && !stranded && this.serves[at] === 1;
    });
  }

  /** The numbers of the rows for which something holds, in the fleet's order. */
  where(holds: (at: number) => boolean): number[] {
    const found: number[] = [];
    for (let at = 0; at < this.rows.length; at++) if (holds(at)) found.push(at);
    return found;
  }
}
