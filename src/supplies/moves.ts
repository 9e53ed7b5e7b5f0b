import type { Day } from "../calendar/day.ts";
import { DAYS_PER_MONTH } from "../calendar/mean-year.ts";
import { merged } from "../fleet/merged.ts";
import type { Policy } from "../fleet/policy.ts";
import type { DatedStockRow } from "../fleet/rows.ts";
import { largest } from "../maths/largest.ts";
import { sortBy } from "../maths/sort-by.ts";
import { expectedUsed } from "./chance-used.ts";
import type { ItemPlace } from "./item-place.ts";
import type { ItemPlaces } from "./item-places.ts";
import { type Candidate, listMoves } from "./move-list.ts";
import { searchMoves } from "./move-search.ts";
import { ratesDiffer } from "./rates-differ.ts";
import type { Move } from "./types.ts";

/** What carrying a unit to another place costs, in units: an exchange of two must save more than a fifth of one. */
export const COST_PER_UNIT_MOVED = 0.1;
/** Places looked at: those that stand to lose most, and those that use most. More would not fit a round of visits. */
const PLACES_THAT_LOSE = 120;
const PLACES_THAT_USE = 60;
/** Places that hold more units of the item are left out: exchanges of single units mean nothing to them. */
const MOST_UNITS_HELD = 1000;

/**
 * Exchanges of an item's units between devices that raise the units expected to be used before they lapse, every
 * device keeping its count. Empty unless the log shows beyond chance that rates differ: on noise alone nothing moves.
 * Opened, held, overdue and short-dated units stay where they are, and so does anything that is not the same item.
 */
export function proposeMoves(ofItem: ItemPlaces, policy: Policy): Move[] {
  if (ofItem.use === null || !ratesDiffer(ofItem.use)) return [];
  const candidates = candidatePlaces(ofItem, policy);
  const found = searchMoves(
    candidates.map(({ search }) => search),
    COST_PER_UNIT_MOVED,
  );
  return found.saved <= 0 ? [] : listMoves(candidates, found.days, COST_PER_UNIT_MOVED, policy);
}

function candidatePlaces(ofItem: ItemPlaces, policy: Policy): Candidate[] {
  const { units } = ofItem;
  const all = ofItem.places.filter(
    ({ device, from, stock }) =>
      device !== null && from === policy.asOf && stock.length > 0 && units.unitsOf(stock) <= MOST_UNITS_HELD,
  );
  const rate = ({ use }: ItemPlace) => (use ? use.rate.shape / use.rate.exposure : 0);
  const most = (score: (of: ItemPlace) => number, count: number) =>
    largest(Float64Array.from(all.map(score)), count).map((at) => all[at]!);
  const chosen = new Set([...most(unitsThatLapse, PLACES_THAT_LOSE), ...most(rate, PLACES_THAT_USE)]);
  return all
    .filter((place) => chosen.has(place))
    .map((place) => candidate(ofItem, place, policy))
    .filter(({ search }) => search.days.length > 0);

  function unitsThatLapse({ stock }: ItemPlace): number {
    let lapse = 0;
    for (let i = 0; i < stock.length; i++) {
      const at = stock[i]!;
      if (units.serves[at] === 1 && units.swapBy[at]! > policy.asOf)
        lapse += units.quantity[at]! * (1 - units.chanceUsed[at]!);
    }
    return lapse;
  }
}

function candidate({ use, units }: ItemPlaces, place: ItemPlace, policy: Policy): Candidate {
  const good = Array.from(place.stock, (at) => ({ row: units.rows[at]!, day: units.swapBy[at]! })).filter(
    ({ row, day }) => row.held === null && day > policy.asOf,
  );
  const mayMove = ({ row }: { row: DatedStockRow }) =>
    row.opened === null && row.expiry - policy.asOf >= policy.minLifeDays;
  const repeat = (of: readonly { row: DatedStockRow; day: Day }[]) =>
    of.flatMap(({ row, day }) => new Array<Day>(row.quantity).fill(day)).sort((a, b) => a - b);
  const movable = sortBy(good.filter(mayMove), ({ row, day }) => [day, row.lot ?? ""]);
  const staying = repeat(good.filter((of) => !mayMove(of)));
  const days = repeat(movable);
  const value = (of: readonly Day[]) => {
    const together = staying.length === 0 ? of : merged(of, staying, (a, b) => a - b);
    return expectedUsed(together, place, use!.unitsPerUse);
  };
  const perDay = place.use
    ? ((place.use.rate.shape / place.use.rate.exposure) * use!.meanUnitsPerUse) / DAYS_PER_MONTH
    : 0;
  return {
    place,
    rows: movable,
    search: { days, value, expectedUses: (day) => perDay * (day - policy.asOf) },
  };
}
