import { type Month, monthOfDay } from "../calendar/month.ts";
import type { Item, ItemBook } from "../fleet/item-book.ts";
import type { Policy } from "../fleet/policy.ts";
import { remembered } from "../fleet/remembered.ts";
import { type Fleet, nameKey } from "../fleet/rows.ts";
import type { WhoTakes } from "../fleet/who-takes.ts";
import type { DatedUnit } from "./types.ts";
import { swapDay } from "./unit-life.ts";

/** A row of dated stock with what all stages ask of it, so that names are folded once a row. */
export interface StockUnit extends DatedUnit {
  item: Item;
  /** Month of the swap day. */
  swapMonth: Month;
  /** "" where the row names no place. */
  placeKey: string;
  /** True where the place is a device that has left service: nobody can count on finding the units there. */
  stranded: boolean;
}

/** Every row of dated stock, in the fleet's order; chances of use are still 0. */
export function stockUnits(fleet: Fleet, book: ItemBook, takes: WhoTakes, policy: Policy): StockUnit[] {
  // few names and days stand in many rows
  const monthOf = remembered(monthOfDay);
  const placeOf = remembered((place: string | null) => {
    const placeKey = place === null ? "" : nameKey(place);
    return { placeKey, installed: takes.devices.has(placeKey), stranded: takes.retired.has(placeKey) };
  });
  return fleet.datedStock.map((row) => {
    const item = book.find(row.item);
    const { placeKey, installed, stranded } = placeOf(row.place);
    const swapBy = swapDay(row, item, policy);
    return { row, installed, swapBy, chanceUsed: 0, item, swapMonth: monthOf(swapBy), placeKey, stranded };
  });
}
