import type { Day } from "../calendar/day.ts";
import { groupBy } from "../fleet/group-by.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Policy } from "../fleet/policy.ts";
import type { DatedStockRow } from "../fleet/rows.ts";
import { sortBy } from "../maths/sort-by.ts";
import type { ItemPlace } from "./item-place.ts";
import type { MovePlace } from "./move-place.ts";
import { type Leg, roundsOf } from "./move-rounds.ts";
import type { Move } from "./types.ts";

/** A move waits for the next round of visits, this many days, but not past half of its unit's time. */
const DAYS_TO_NEXT_ROUND = 30;

/** A place with the rows whose units may move. */
export interface Candidate {
  place: ItemPlace;
  /** Rows whose units may move, in the order in which they are taken. */
  rows: { row: DatedStockRow; day: Day }[];
  search: MovePlace;
}

/**
 * Turns the swap days that each place ends with into a driver's list: units carried from place to place, straight
 * exchanges of two places first, so that one trip does both ways. Places that exchange among themselves only are a
 * round, and a round is listed where what it saves is more than what carrying its units costs.
 *
 * @param after             swap days by candidate
 * @param costPerUnitMoved  in units
 */
export function listMoves(
  candidates: readonly Candidate[],
  after: readonly (readonly Day[])[],
  costPerUnitMoved: number,
  policy: Policy,
): Move[] {
  const taken = new Map<DatedStockRow, number>();
  const moves = roundsOf(pairUp(candidates, after)).flatMap((legs) => {
    const saved = savedBy(legs, candidates, after);
    // a hair more than the cost is rounding, which must not move anything
    if (saved <= costPerUnitMoved * legs.length + 1e-9) return [];
    return groupMoves(candidates, carriedOn(legs, candidates, taken), saved / legs.length, policy);
  });
  return sortBy(moves, ({ from, to, lot, by }) => [nameKey(from), nameKey(to), lot ?? "", by]);
}

/** Units saved at the places of a round, which no other round changes: exact, since each place's value is its own. */
function savedBy(legs: readonly Leg[], candidates: readonly Candidate[], after: readonly (readonly Day[])[]): number {
  const places = new Set(legs.flatMap(({ from, to }) => [from, to]));
  return [...places].reduce((sum, index) => {
    const { search } = candidates[index]!;
    return sum + search.value(after[index]!) - search.value(search.days);
  }, 0);
}

/** The legs with the row of stock from which each unit is taken. */
function carriedOn(
  legs: readonly Leg[],
  candidates: readonly Candidate[],
  taken: Map<DatedStockRow, number>,
): (Leg & { row: DatedStockRow })[] {
  return legs.map((leg) => {
    const { rows } = candidates[leg.from]!;
    const { row } = rows.find((of) => of.day === leg.day && (taken.get(of.row) ?? 0) < of.row.quantity)!;
    taken.set(row, (taken.get(row) ?? 0) + 1);
    return { ...leg, row };
  });
}

/** Who carries what to whom: every place's surplus of a swap day goes to a place that lacks it. */
function pairUp(candidates: readonly Candidate[], after: readonly (readonly Day[])[]): Leg[] {
  const surplus = candidates.map(({ search }, index) => {
    const counts = new Map<Day, number>();
    for (const day of search.days) counts.set(day, (counts.get(day) ?? 0) + 1);
    for (const day of after[index]!) counts.set(day, (counts.get(day) ?? 0) - 1);
    for (const [day, count] of counts) if (count === 0) counts.delete(day);
    return counts;
  });
  const legs: Leg[] = [];
  const carry = (from: number, to: number, day: Day) => {
    surplus[from]!.set(day, surplus[from]!.get(day)! - 1);
    surplus[to]!.set(day, surplus[to]!.get(day)! + 1);
    legs.push({ from, to, day });
  };
  const wanted = (from: number, to: number) => {
    const lacking = surplus[to]!;
    for (const [day, count] of surplus[from]!) if (count > 0 && (lacking.get(day) ?? 0) < 0) return day;
    return undefined;
  };
  const givers = surplus.flatMap((counts, index) => ([...counts.values()].some((count) => count > 0) ? [index] : []));
  for (const straight of [true, false]) {
    for (const from of givers) {
      for (const to of givers) {
        for (;;) {
          const day = from === to ? undefined : wanted(from, to);
          const back = straight ? wanted(to, from) : null;
          if (day === undefined || back === undefined) break;
          carry(from, to, day);
          if (back !== null) carry(to, from, back);
        }
      }
    }
  }
  return legs;
}

/** One row a lot and pair of places. The units of a round share what it saves evenly: none saves without the others. */
function groupMoves(
  candidates: readonly Candidate[],
  carried: readonly (Leg & { row: DatedStockRow })[],
  savedPerUnit: number,
  policy: Policy,
): Move[] {
  const rows = [...groupBy(carried, ({ from, to, row, day }) => `${from}\n${to}\n${row.lot ?? ""}\n${day}`).values()];
  return rows.map((alike) => {
    const { from, to, row, day } = alike[0]!;
    return {
      from: nameOf(candidates[from]!.place),
      to: nameOf(candidates[to]!.place),
      item: row.item,
      lot: row.lot,
      quantity: alike.length,
      swapBy: day,
      by: policy.asOf + Math.min(DAYS_TO_NEXT_ROUND, Math.floor((day - policy.asOf) / 2)),
      unitsSaved: savedPerUnit * alike.length,
    };
  });
}

function nameOf(place: ItemPlace): string {
  return place.device!.device;
}
