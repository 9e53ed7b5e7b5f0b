import { monthOfDay } from "../calendar/month.ts";
import type { Policy } from "../fleet/policy.ts";
import type { StockUnits } from "./stock-units.ts";

/** Months that are soon, as-of's the first, and those of a plan's first year. */
export const SOON_MONTHS = 3;
const YEAR_MONTHS = 12;

/** Units at a place: overdue ones, those to be swapped in the next months, and all of the plan's first year. */
export interface DueAtPlace {
  overdue: number;
  soon: number;
  year: number;
}

/** What falls due when, in units that serve, counted in one go over all rows. */
export interface StockTally {
  /** Of all rows, those that do not serve, too. */
  units: number;
  /** By name of an item (as of `StockUnits.names`), then when: overdue, each month of the plan, later. */
  due: readonly (readonly number[])[];
  /** By name of an item: of the units due in the plan, those expected to be used before their swap day. */
  used: Float64Array;
  /** By place (as of `StockUnits.places`), without what a device leaves service with. */
  atPlaces: readonly DueAtPlace[];
  /** The same of installed units, by number of the place's key, then month of the plan; overdue ones in its first. */
  toVisit: Float64Array;
}

/** Counts what falls due, once chances of use are known. */
export function tallyStock(stock: StockUnits, { asOf, horizonMonths }: Policy): StockTally {
  const first = monthOfDay(asOf);
  const yearMonths = Math.min(YEAR_MONTHS, horizonMonths);
  const { names, nameAt, places, placeAt, keyAt, serves, quantity, swapBy, swapMonth, chanceUsed } = stock;
  const due = names.map(() => new Array<number>(horizonMonths + 2).fill(0));
  const used = new Float64Array(names.length);
  const atPlaces = places.map((): DueAtPlace => ({ overdue: 0, soon: 0, year: 0 }));
  const toVisit = new Float64Array(stock.keys * horizonMonths);
  let units = 0;
  for (let at = 0; at < stock.size; at++) {
    const count = quantity[at]!;
    units += count;
    if (serves[at] === 0) continue;
    const name = nameAt[at]!;
    const month = swapMonth[at]! - first;
    const isOverdue = swapBy[at]! < asOf;
    due[name]![isOverdue ? 0 : Math.min(month, horizonMonths) + 1]! += count;
    if (!isOverdue && month < horizonMonths) used[name]! += count * chanceUsed[at]!;
    const place = placeAt[at]!;
    if (swapBy[at]! >= places[place]!.until) continue;
    if (month < horizonMonths && places[place]!.installed)
      toVisit[keyAt[at]! * horizonMonths + Math.max(0, month)]! += count;
    if (month >= yearMonths) continue;
    const here = atPlaces[place]!;
    here.year += count;
    if (isOverdue) here.overdue += count;
    else if (month < SOON_MONTHS) here.soon += count;
  }
  return { units, due, used, atPlaces, toVisit };
}
