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
  const keyOf = remembered(nameKey);
  const monthOf = remembered(monthOfDay);
  return fleet.datedStock.map((row) => {
    const item = book.find(row.item);
    const placeKey = row.place === null ? "" : keyOf(row.place);
    const swapBy = swapDay(row, item, policy);
    return {
      row,
      installed: takes.devices.has(placeKey),
      swapBy,
      chanceUsed: 0,
      item,
      swapMonth: monthOf(swapBy),
      placeKey,
      stranded: takes.retired.has(placeKey),
    };
  });
}

function remembered<From, To>(work: (from: From) => To): (from: From) => To {
  const known = new Map<From, To>();
  return (from) => {
    let to = known.get(from);
    if (to === undefined) {
      to = work(from);
      known.set(from, to);
    }
    return to;
  };
}
