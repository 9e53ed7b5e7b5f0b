import { addMonths, type Day } from "../calendar/day.ts";
import { type Month, monthOfDay } from "../calendar/month.ts";
import { groupBy } from "../fleet/group-by.ts";
import type { Policy } from "../fleet/policy.ts";
import type { StockUnit } from "./stock-units.ts";
import type { SwapCapacity, SwapVisit } from "./types.ts";

/** One visit: everything at one place that falls due in one month. */
export interface Visit {
  place: string;
  key: string;
  /** Month index of the due month, as-of's month = 0; what is overdue is due in month 0. */
  due: number;
  units: readonly StockUnit[];
  /** Units to swap, which is what a month earlier costs, in unit-months. */
  weight: number;
}

/** Points of the trade-off curve at the most. */
const MOST_POINTS = 12;

/** Visits needed to meet every expiry of installed units inside the horizon, by due month and place. */
export function visitsDue(units: readonly StockUnit[], policy: Policy): Visit[] {
  const first = monthOfDay(policy.asOf);
  const installed = units.filter((unit) => unit.installed && unit.row.quantity > 0 && unit.row.held === null);
  const dueOf = (unit: StockUnit) => Math.max(0, unit.swapMonth - first);
  const byPlace = groupBy(installed, ({ placeKey }) => placeKey);
  return [...byPlace.values()]
    .flatMap((here) => [...groupBy(here, dueOf).values()])
    .map((together) => ({
      place: together[0]!.row.place!,
      key: together[0]!.placeKey,
      due: dueOf(together[0]!),
      units: together,
      weight: together.reduce((sum, unit) => sum + unit.row.quantity, 0),
    }))
    .filter(({ due }) => due < policy.horizonMonths)
    .sort((a, b) => a.due - b.due || compareText(a.key, b.key));
}

/**
 * Month index for each visit, with at most `perMonth` visits a month: every visit in its due month or before, as late
 * as can be, and with the least life given up (unit-months), exactly.
 *
 * Run backwards in time these are unit jobs with release dates on identical machines; taking the heaviest of those
 * that are released is then optimal, and leaves the fewest for month 0. What does not fit into month 0 is put there
 * all the same: it has to be done at once.
 *
 * @see Lawler, E. L. (1964), On scheduling problems with deferral costs, Management Science 11, 280-288, for unit jobs
 *   as a transportation problem
 */
export function latestSchedule(visits: readonly Pick<Visit, "due" | "weight">[], perMonth: number): Int32Array {
  const months = new Int32Array(visits.length);
  const released = groupBy(visits.keys(), (index) => visits[index]!.due);
  // heaviest first; of equals the one due soonest, so that none waits longer than need be
  const order = (a: number, b: number) =>
    visits[b]!.weight - visits[a]!.weight || visits[a]!.due - visits[b]!.due || a - b;
  let waiting: number[] = [];
  const last = Math.max(0, ...released.keys());
  for (let month = last; month >= 0; month--) {
    const arriving = released.get(month) ?? [];
    // two sorted runs: the engine's merge sort joins them in one pass
    if (arriving.length > 0) waiting = [...waiting, ...arriving.sort(order)].sort(order);
    const fit = month === 0 ? waiting.length : Math.min(perMonth, waiting.length);
    for (const index of waiting.splice(0, fit)) months[index] = month;
  }
  return months;
}

/** Smallest number of visits a month that meets every expiry: over each run of months from now, all that falls due. */
export function smallestCapacity(visits: readonly Pick<Visit, "due">[]): number {
  const dueIn = new Map<number, number>();
  for (const { due } of visits) dueIn.set(due, (dueIn.get(due) ?? 0) + 1);
  let sum = 0;
  let smallest = 0;
  for (const [due, count] of [...dueIn].sort(([a], [b]) => a - b)) {
    sum += count;
    smallest = Math.max(smallest, Math.ceil(sum / (due + 1)));
  }
  return smallest;
}

/**
 * Life given up by the latest schedule of so many visits a month, in unit-months, exactly: the visits still waiting
 * each month, counted by their weights, since which of two equal ones waits costs the same.
 */
export function monthsGivenUp(visits: readonly Pick<Visit, "due" | "weight">[], perMonth: number): number {
  const released = groupBy(visits, ({ due }) => due);
  const heaviestFirst = [...new Set(visits.map(({ weight }) => weight))].sort((a, b) => b - a);
  const waiting = new Map(heaviestFirst.map((weight) => [weight, 0]));
  let givenUp = 0;
  for (let month = Math.max(0, ...released.keys()); month > 0; month--) {
    for (const { weight } of released.get(month) ?? []) waiting.set(weight, waiting.get(weight)! + 1);
    let room = perMonth;
    for (const weight of heaviestFirst) {
      const fit = Math.min(room, waiting.get(weight)!);
      room -= fit;
      waiting.set(weight, waiting.get(weight)! - fit);
      givenUp += weight * waiting.get(weight)!;
    }
  }
  return givenUp;
}

/**
 * What a team's number of visits a month means: the smallest that meets every expiry, and what more of them save. Beyond
 * the last point of the curve nothing is given up.
 */
export function swapCapacity(visits: readonly Visit[], perMonth: number | null): SwapCapacity {
  const smallest = smallestCapacity(visits);
  const busiest = [...groupBy(visits, ({ due }) => due).values()].reduce(
    (most, { length }) => Math.max(most, length),
    0,
  );
  const step = Math.max(1, Math.ceil((busiest - smallest) / (MOST_POINTS - 1)));
  const points = new Set<number>();
  for (let capacity = smallest; capacity < busiest; capacity += step) points.add(capacity);
  if (busiest > 0) points.add(busiest);
  const tradeOff = () =>
    [...points].map((capacity) => ({
      perMonth: capacity,
      unitMonthsGivenUp: monthsGivenUp(visits, capacity),
    }));
  return { perMonth, smallest, enough: perMonth === null || perMonth >= smallest, tradeOff };
}

/**
 * The visits of a schedule as rows, by month, place, item and lot. A visit that moves to another month keeps its day of
 * the month, but is not before as-of.
 */
export function swapCalendar(visits: readonly Visit[], perMonth: number, policy: Policy): SwapVisit[] {
  const first = monthOfDay(policy.asOf);
  const months = latestSchedule(visits, perMonth);
  const order = [...visits.keys()].sort(
    (a, b) => months[a]! - months[b]! || compareText(visits[a]!.key, visits[b]!.key),
  );
  return order.flatMap((index) => rowsOfVisit(visits[index]!, months[index]!, first, policy.asOf));
}

function rowsOfVisit({ units, due, place }: Visit, month: number, first: Month, asOf: Day): SwapVisit[] {
  return [...groupBy(units, ({ item, row, swapBy }) => `${item.key}\n${row.lot ?? ""}\n${swapBy}`).values()]
    .map((alike) => {
      const { row, swapBy } = alike[0]!;
      const quantity = alike.reduce((sum, unit) => sum + unit.row.quantity, 0);
      const day = month === due ? swapBy : Math.max(asOf, addMonths(swapBy, month - due));
      return {
        month: first + month,
        place,
        item: row.item,
        lot: row.lot,
        quantity,
        swapBy,
        daysGivenUp: quantity * Math.max(0, swapBy - day),
      };
    })
    .sort((a, b) => compareText(a.item, b.item) || compareText(a.lot ?? "", b.lot ?? "") || a.swapBy - b.swapBy);
}

function compareText(a: string, b: string): number {
  return a === b ? 0 : a < b ? -1 : 1;
}
