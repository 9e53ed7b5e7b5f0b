import type { Day } from "../calendar/day.ts";
import { type Month, monthOfDay } from "../calendar/month.ts";
import type { Item, ItemBook } from "../fleet/item-book.ts";
import type { Policy } from "../fleet/policy.ts";
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
  const months = new Map<Day, Month>();
  const places = new Map<string | null, Pick<StockUnit, "placeKey" | "installed" | "stranded">>();
  return fleet.datedStock.map((row) => {
    const item = book.find(row.item);
    const swapBy = swapDay(row, item, policy);
    let swapMonth = months.get(swapBy);
    if (swapMonth === undefined) {
      swapMonth = monthOfDay(swapBy);
      months.set(swapBy, swapMonth);
    }
    let place = places.get(row.place);
    if (!place) {
      const placeKey = row.place === null ? "" : nameKey(row.place);
      place = { placeKey, installed: takes.devices.has(placeKey), stranded: takes.retired.has(placeKey) };
      places.set(row.place, place);
    }
    const { placeKey, installed, stranded } = place;
    return { row, installed, swapBy, chanceUsed: 0, item, swapMonth, placeKey, stranded };
  });
}
