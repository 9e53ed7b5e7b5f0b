import type { Day } from "../calendar/day.ts";
import type { DatedStockRow, OnOrderRow, PackRow } from "../fleet/rows.ts";

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

/** What is touched, a battery that stands in two lists once. */
export type Touched = Pick<Trace, "stock" | "packs" | "orders">;
