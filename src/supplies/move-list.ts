import type { Day } from "../calendar/day.ts";
import { groupBy } from "../fleet/group-by.ts";
import type { Policy } from "../fleet/policy.ts";
import { type DatedStockRow, nameKey } from "../fleet/rows.ts";
import type { ItemPlace } from "./item-places.ts";
import type { MovePlace } from "./move-search.ts";
import type { Move } from "./types.ts";

/** A move waits for the next round of visits, this many days, but not past half of its unit's time. */
const DAYS_TO_NEXT_ROUND = 30;

/** A place with the rows whose units may move. */
export interface Candidate {
  place: ItemPlace;
  /** Rows whose units may move, in the order in which they are taken. */
  rows: { row: DatedStockRow; day: Day }[];
  search: MovePlace;
  value: number;
  units: number;
}

interface Carried {
  from: number;
  to: number;
  row: DatedStockRow;
  day: Day;
  /** How much likelier the unit is to be used where it goes. */
  better: number;
}

/**
 * Turns the swap days that each place ends with into a driver's list: units carried from place to place, straight
 * exchanges of two places first, so that one trip does both ways.
 *
 * @param after  swap days by candidate
 * @param saved  units saved by all moves together
 */
export function listMoves(
  candidates: readonly Candidate[],
  after: readonly Day[][],
  saved: number,
  policy: Policy,
): Move[] {
  const taken = new Map<DatedStockRow, number>();
  const carried = pairUp(candidates, after).map(({ from, to, day }): Carried => {
    const rows = candidates[from]!.rows;
    const { row } = rows.find((of) => of.day === day && (taken.get(of.row) ?? 0) < of.row.quantity)!;
    taken.set(row, (taken.get(row) ?? 0) + 1);
    const there = chanceOf(day, after[to]!, candidates[to]!);
    return { from, to, row, day, better: there - chanceOf(day, candidates[from]!.search.days, candidates[from]!) };
  });
  return groupMoves(candidates, carried, saved, policy);
}

interface Leg {
  from: number;
  to: number;
  day: Day;
}

/** Who carries what to whom: every place's surplus of a swap day goes to a place that lacks it. */
function pairUp(candidates: readonly Candidate[], after: readonly Day[][]): Leg[] {
  const surplus = candidates.map(({ search }, index) => {
    const counts = new Map<Day, number>();
    for (const day of search.days) counts.set(day, (counts.get(day) ?? 0) + 1);
    for (const day of after[index]!) counts.set(day, (counts.get(day) ?? 0) - 1);
    return counts;
  });
  const legs: Leg[] = [];
  const carry = (from: number, to: number, day: Day) => {
    surplus[from]!.set(day, surplus[from]!.get(day)! - 1);
    surplus[to]!.set(day, surplus[to]!.get(day)! + 1);
    legs.push({ from, to, day });
  };
  const wanted = (from: number, to: number) =>
    [...surplus[from]!].find(([day, count]) => count > 0 && (surplus[to]!.get(day) ?? 0) < 0)?.[0];
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
