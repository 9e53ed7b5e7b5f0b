import { monthOfDay } from "../calendar/month.ts";
import type { Policy } from "../fleet/policy.ts";
import type { StockUnit } from "../supplies/stock-units.ts";
import type { Move } from "../supplies/types.ts";
import { roundUnits } from "./rounding.ts";
import { sortBy } from "./sort-by.ts";

/** Units of an item that reach their swap date inside the horizon, and what is expected to become of them. */
export interface Lapse {
  item: string;
  due: number;
  /** Of these, used before their swap date if nothing is done. */
  used: number;
  /** Units that the moves save from lapsing. */
  saved: number;
}

/** What is expected to lapse if nothing is done, by item, and how much of it the moves save. Held stock is left out. */
export function lapsesByItem(
  units: readonly Pick<StockUnit, "row" | "swapBy" | "swapMonth" | "chanceUsed">[],
  moves: readonly Pick<Move, "item" | "unitsSaved">[],
  { asOf, horizonMonths }: Policy,
): Lapse[] {
  const end = monthOfDay(asOf) + horizonMonths;
  const items = new Map<string, Lapse>();
  for (const { row, swapBy, swapMonth, chanceUsed } of units) {
    if (row.held !== null || row.quantity === 0 || swapBy < asOf || swapMonth >= end) continue;
    let found = items.get(row.item);
    if (!found) {
      found = { item: row.item, due: 0, used: 0, saved: 0 };
      items.set(row.item, found);
    }
    found.due += row.quantity;
    found.used += row.quantity * chanceUsed;
  }
  for (const { item, unitsSaved } of moves) {
    const found = items.get(item);
    if (found) found.saved += unitsSaved;
  }
  const rows = [...items.values()].map((row) => ({
    ...row,
    used: roundUnits(row.used),
    saved: roundUnits(row.saved),
  }));
  return sortBy(rows, ({ item }) => [item]);
}
