import { sortBy } from "../maths/sort-by.ts";
import type { DueAtPlace, StockTally } from "../supplies/stock-tally.ts";
import type { StockUnits } from "../supplies/stock-units.ts";
import { NO_PLACE } from "../supplies/traced.ts";

/** A place with the units to be swapped there. */
export interface PlaceToSwap extends DueAtPlace {
  place: string;
}

/** Places with units to swap in the plan's first year, the busiest first, each however rows spell it. Held stock is left out. */
export function placesToSwap({ places }: StockUnits, { atPlaces }: StockTally): PlaceToSwap[] {
  const byKey = new Map<number, PlaceToSwap>();
  places.forEach(({ name, keyNumber }, number) => {
    const { overdue, soon, year } = atPlaces[number]!;
    const found = byKey.get(keyNumber) ?? { place: name ?? NO_PLACE, overdue: 0, soon: 0, year: 0 };
    found.overdue += overdue;
    found.soon += soon;
    found.year += year;
    byKey.set(keyNumber, found);
  });
  const busy = [...byKey.values()].filter(({ year }) => year > 0);
  return sortBy(busy, ({ place, overdue, soon, year }) => [-overdue, -year, -soon, place]);
}
