import { addMonths, type Day } from "../calendar/day.ts";
import { type Month, monthOfDay } from "../calendar/month.ts";
import { groupBy } from "../fleet/group-by.ts";
import type { Policy } from "../fleet/policy.ts";
import { sortBy } from "../maths/sort-by.ts";
import type { StockUnits } from "./stock-units.ts";
import { needsVisit, type VisitSize } from "./swap-capacity.ts";
import type { SwapVisit } from "./types.ts";

/** One visit: everything at one place that falls due in one month. */
export interface Visit extends VisitSize {
  place: string;
  key: string;
  /** Numbers of the rows to swap. */
  rows: readonly number[];
}

/** Visits needed to meet every expiry of installed units inside the horizon, by due month and place. */
export function visitsDue(stock: StockUnits, policy: Policy): Visit[] {
  const first = monthOfDay(policy.asOf);
  const last = first + policy.horizonMonths - 1;
  const dueOf = (at: number) => Math.max(0, stock.swapMonth[at]! - first);
  const byPlace = groupBy(
    stock.where((at) => needsVisit(stock, at, last)),
    (at) => stock.placeOf(at).key,
  );
  const byMonth: Visit[][] = Array.from({ length: policy.horizonMonths }, () => []);
  // by place first, so that the visits of a month need no sorting
  for (const key of [...byPlace.keys()].sort()) {
    for (const [due, together] of groupBy(byPlace.get(key)!, dueOf)) {
      const place = stock.rows[together[0]!]!.place!;
      byMonth[due]!.push({ place, key, due, rows: together, weight: stock.unitsOf(together) });
    }
  }
  return byMonth.flat();
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
export function latestSchedule(visits: readonly VisitSize[], perMonth: number): Int32Array {
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

/**
 * The visits of a schedule as rows, by month, place, item and lot. A visit that moves to another month keeps its day of
 * the month, but is not before as-of.
 */
export function swapCalendar(
  stock: StockUnits,
  visits: readonly Visit[],
  perMonth: number,
  policy: Policy,
): SwapVisit[] {
  const first = monthOfDay(policy.asOf);
  const months = latestSchedule(visits, perMonth);
  const order = sortBy([...visits.keys()], (index) => [months[index]!, visits[index]!.key]);
  return order.flatMap((index) => rowsOfVisit(stock, visits[index]!, months[index]!, first, policy.asOf));
}

function rowsOfVisit(
  stock: StockUnits,
  { rows, due, place }: Visit,
  month: number,
  first: Month,
  asOf: Day,
): SwapVisit[] {
  const keyOf = (at: number) => `${stock.itemOf(at).key}\n${stock.rows[at]!.lot ?? ""}\n${stock.swapBy[at]}`;
  const swaps = [...groupBy(rows, keyOf).values()].map((alike) => {
    const row = stock.rows[alike[0]!]!;
    const swapBy = stock.swapBy[alike[0]!]!;
    const quantity = stock.unitsOf(alike);
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
  });
  return sortBy(swaps, ({ item, lot, swapBy }) => [item, lot ?? "", swapBy]);
}
