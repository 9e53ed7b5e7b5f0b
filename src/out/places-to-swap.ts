import { monthOfDay } from "../calendar/month.ts";
import type { Policy } from "../fleet/policy.ts";
import type { StockUnit } from "../supplies/stock-units.ts";
import { NO_PLACE } from "../supplies/trace.ts";
import { sortBy } from "./sort-by.ts";

/** Months that are soon, as-of's the first. */
export const SOON_MONTHS = 3;
const YEAR_MONTHS = 12;

/** A place with the units to be swapped there: overdue ones, those of the next months, all of the plan's first year. */
export interface PlaceToSwap {
  place: string;
  overdue: number;
  soon: number;
  /** The overdue and the soon ones too. */
  year: number;
}

/** Places with units to swap in the plan's first year, the busiest first. Held stock is left out. */
export function placesToSwap(
  units: readonly Pick<StockUnit, "row" | "swapBy" | "swapMonth">[],
  { asOf, horizonMonths }: Policy,
): PlaceToSwap[] {
  const first = monthOfDay(asOf);
  const places = new Map<string, PlaceToSwap>();
  for (const { row, swapBy, swapMonth } of units) {
    if (row.held !== null || row.quantity === 0 || swapMonth - first >= Math.min(YEAR_MONTHS, horizonMonths)) continue;
    const place = row.place ?? NO_PLACE;
    let found = places.get(place);
    if (!found) {
      found = { place, overdue: 0, soon: 0, year: 0 };
      places.set(place, found);
    }
    if (swapBy < asOf) found.overdue += row.quantity;
    else if (swapMonth - first < SOON_MONTHS) found.soon += row.quantity;
    found.year += row.quantity;
  }
  return sortBy([...places.values()], ({ place, overdue, soon, year }) => [-overdue, -year, -soon, place]);
}
