import type { Day } from "../calendar/day.ts";
import { groupBy } from "../fleet/group-by.ts";
import type { Policy } from "../fleet/policy.ts";
import { type DatedStockRow, nameKey } from "../fleet/rows.ts";
import { chancesUsed } from "./chance-used.ts";
import type { ItemPlace, ItemPlaces } from "./item-places.ts";
import { type MovePlace, searchMoves } from "./move-search.ts";
import { ratesDiffer } from "./rates-differ.ts";
import type { Move } from "./types.ts";
import { DAYS_PER_MONTH } from "./use-rates.ts";

/** What carrying a unit to another place costs, in units: an exchange of two must save more than a fifth of one. */
export const COST_PER_UNIT_MOVED = 0.1;
/** Places looked at: those that stand to lose most, and those that use most. More would not fit a round of visits. */
const PLACES_THAT_LOSE = 120;
const PLACES_THAT_USE = 60;
/** A move waits for the next round of visits, this many days, but not past half of its unit's time. */
const DAYS_TO_NEXT_ROUND = 30;

interface Candidate {
  place: ItemPlace;
  /** Rows whose units may move, in the order in which they are taken. */
  rows: { row: DatedStockRow; day: Day }[];
  search: MovePlace;
  value: number;
  units: number;
}

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
  return found.saved <= 0 ? [] : listMoves(candidates, found.days, found.saved, policy);
}

function candidatePlaces(ofItem: ItemPlaces, policy: Policy): Candidate[] {
  const all = ofItem.places
    .filter((place) => place.device !== null && place.from === policy.asOf)
    .map((place) => candidate(ofItem, place, policy))
    .filter(({ units }) => units > 0);
  const rate = ({ place }: Candidate) => (place.use ? place.use.rate.shape / place.use.rate.exposure : 0);
  const order = (score: (of: Candidate) => number) =>
    [...all].sort((a, b) => score(b) - score(a) || (a.place.key < b.place.key ? -1 : 1));
  const chosen = new Set([
    ...order(({ units, value }) => units - value).slice(0, PLACES_THAT_LOSE),
    ...order(rate).slice(0, PLACES_THAT_USE),
  ]);
  return all.filter((of) => chosen.has(of));
}

function candidate({ use }: ItemPlaces, place: ItemPlace, policy: Policy): Candidate {
  const good = place.stock
    .map(({ row, swapBy }) => ({ row, day: swapBy }))
    .filter(({ row, day }) => row.held === null && day > policy.asOf);
  const mayMove = ({ row }: { row: DatedStockRow }) =>
    row.opened === null && row.expiry - policy.asOf >= policy.minLifeDays;
  const repeat = (of: readonly { row: DatedStockRow; day: Day }[]) =>
    of.flatMap(({ row, day }) => new Array<Day>(row.quantity).fill(day)).sort((a, b) => a - b);
  const movable = good.filter(mayMove).sort((a, b) => a.day - b.day || compareText(a.row.lot ?? "", b.row.lot ?? ""));
  const staying = repeat(good.filter((of) => !mayMove(of)));
  const days = repeat(movable);
  const memo = new Map<string, number>();
  const value = (of: readonly Day[]) => {
    const key = of.join(" ");
    let used = memo.get(key);
    if (used === undefined) {
      const together = [...of, ...staying].sort((a, b) => a - b);
      used = chancesUsed(together, place, use!.unitsPerUse).reduce((a, b) => a + b, 0);
      memo.set(key, used);
    }
    return used;
  };
  const perDay = place.use
    ? ((place.use.rate.shape / place.use.rate.exposure) * use!.meanUnitsPerUse) / DAYS_PER_MONTH
    : 0;
  return {
    place,
    rows: movable,
    search: { days, value, expectedUses: (day) => perDay * (day - policy.asOf) },
    value: value(days),
    units: days.length,
  };
}

interface Carried {
  from: number;
  to: number;
  row: DatedStockRow;
  day: Day;
  /** How much likelier the unit is to be used where it goes. */
  better: number;
}

/** Turns the days that each place ends with into units carried from place to place. */
function listMoves(candidates: readonly Candidate[], after: readonly Day[][], saved: number, policy: Policy): Move[] {
  const givers = new Map<Day, number[]>();
  const takers = new Map<Day, number[]>();
  const push = (of: Map<Day, number[]>, day: Day, place: number) => of.set(day, [...(of.get(day) ?? []), place]);
  candidates.forEach(({ search }, index) => {
    const surplus = new Map<Day, number>();
    for (const day of search.days) surplus.set(day, (surplus.get(day) ?? 0) + 1);
    for (const day of after[index]!) surplus.set(day, (surplus.get(day) ?? 0) - 1);
    for (const [day, count] of surplus) {
      for (let unit = 0; unit < Math.abs(count); unit++) push(count > 0 ? givers : takers, day, index);
    }
  });
  const taken = new Map<DatedStockRow, number>();
  const carried: Carried[] = [];
  for (const [day, from] of [...givers].sort(([a], [b]) => a - b)) {
    from.forEach((giver, unit) => {
      const to = takers.get(day)![unit]!;
      const { row } = candidates[giver]!.rows.find(
        (of) => of.day === day && (taken.get(of.row) ?? 0) < of.row.quantity,
      )!;
      taken.set(row, (taken.get(row) ?? 0) + 1);
      const chanceThere = chanceOf(day, after[to]!, candidates[to]!);
      carried.push({
        from: giver,
        to,
        row,
        day,
        better: chanceThere - chanceOf(day, candidates[giver]!.search.days, candidates[giver]!),
      });
    });
  }
  return groupMoves(candidates, carried, saved, policy);
}

/** Mean chance of use of the units of one day at a place. */
function chanceOf(day: Day, days: readonly Day[], { search }: Candidate): number {
  const without = days.filter((other) => other < day);
  const alike = days.filter((other) => other === day);
  return (search.value([...without, ...alike]) - search.value(without)) / alike.length;
}

/** One row a lot and pair of places; the units saved are shared in proportion to what each unit gains by its move. */
function groupMoves(
  candidates: readonly Candidate[],
  carried: readonly Carried[],
  saved: number,
  policy: Policy,
): Move[] {
  const better = carried.reduce((sum, of) => sum + Math.max(0, of.better), 0);
  const rows = [...groupBy(carried, ({ from, to, row, day }) => `${from}\n${to}\n${row.lot ?? ""}\n${day}`).values()];
  return rows
    .map((alike) => {
      const { from, to, row, day } = alike[0]!;
      const gain = alike.reduce((sum, of) => sum + Math.max(0, of.better), 0);
      return {
        from: nameOf(candidates[from]!.place),
        to: nameOf(candidates[to]!.place),
        item: row.item,
        lot: row.lot,
        quantity: alike.length,
        by: policy.asOf + Math.min(DAYS_TO_NEXT_ROUND, Math.floor((day - policy.asOf) / 2)),
        unitsSaved: better > 0 ? (saved * gain) / better : saved / rows.length,
      };
    })
    .sort(
      (a, b) =>
        compareText(nameKey(a.from), nameKey(b.from)) ||
        compareText(nameKey(a.to), nameKey(b.to)) ||
        compareText(a.lot ?? "", b.lot ?? "") ||
        a.by - b.by,
    );
}

function nameOf(place: ItemPlace): string {
  return place.device!.device;
}

function compareText(a: string, b: string): number {
  return a === b ? 0 : a < b ? -1 : 1;
}
