import { sortBy } from "../maths/sort-by.ts";
import type { DueAtPlace, StockTally } from "../supplies/stock-tally.ts";
import type { StockUnits } from "../supplies/stock-units.ts";
import { NO_PLACE } from "../supplies/traced.ts";

/** A place with the units to be swapped there. */
export interface PlaceToSwap extends DueAtPlace {
  place: string;
}

/** Places with units to swap in the plan's first year, the busiest first. Held stock is left out. */
export function placesToSwap({ places }: StockUnits, { atPlaces }: StockTally): PlaceToSwap[] {
  const busy = places
    .map(({ name }, number): PlaceToSwap => ({ place: name ?? NO_PLACE, ...atPlaces[number]! }))
    .filter(({ year }) => year > 0);
  return sortBy(busy, ({ place, overdue, soon, year }) => [-overdue, -year, -soon, place]);
}
