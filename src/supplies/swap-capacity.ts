import type { Month } from "../calendar/month.ts";
import type { Policy } from "../fleet/policy.ts";
import type { StockTally } from "./stock-tally.ts";
import type { StockUnits } from "./stock-units.ts";
import type { SwapCapacity } from "./types.ts";

/** Points of the trade-off curve at the most. */
const MOST_POINTS = 12;

/** When a visit is due and how much it swaps. */
export interface VisitSize {
  /** Month index of the due month, as-of's month = 0; what is overdue is due in month 0. */
  due: number;
  /** Units to swap, which is what a month earlier costs, in unit-months. */
  weight: number;
}

/** Visits counted by due month and weight, all that the life given up hangs on. */
export interface VisitCounts {
  /** Units of a visit, descending. */
  weights: readonly number[];
  /** By due month, then in the order of weights. */
  due: readonly Float64Array[];
}

/** The visits of `visitsDue`, counted without being listed. */
export function countDue({ toVisit }: StockTally, { horizonMonths }: Policy): VisitCounts {
  const tally = new VisitTally();
  toVisit.forEach((weight, at) => {
    if (weight > 0) tally.add(at % horizonMonths, weight);
  });
  return tally.counts();
}

/** Counts visits by due month and weight. */
export function countVisits(visits: readonly VisitSize[]): VisitCounts {
  const tally = new VisitTally();
  for (const { due, weight } of visits) tally.add(due, weight);
  return tally.counts();
}

class VisitTally {
  /** By weight, then due month; holes where none is due. */
  readonly #visits = new Map<number, number[]>();
  #months = 0;

  add(due: number, weight: number): void {
    let byMonth = this.#visits.get(weight);
    if (!byMonth) {
      byMonth = [];
      this.#visits.set(weight, byMonth);
    }
    byMonth[due] = (byMonth[due] ?? 0) + 1;
    this.#months = Math.max(this.#months, due + 1);
  }

  counts(): VisitCounts {
    const weights = [...this.#visits.keys()].sort((a, b) => b - a);
    const due = Array.from({ length: this.#months }, (_, month) =>
      Float64Array.from(weights, (weight) => this.#visits.get(weight)![month] ?? 0),
    );
    return { weights, due };
  }
}

/** Smallest number of visits a month that meets every expiry: over each run of months from now, all that falls due. */
export function smallestCapacity(counts: VisitCounts): number {
  let sum = 0;
  let smallest = 0;
  visitsByMonth(counts).forEach((count, due) => {
    sum += count;
    smallest = Math.max(smallest, Math.ceil(sum / (due + 1)));
  });
  return smallest;
}

function visitsByMonth({ due }: VisitCounts): number[] {
  return due.map((byWeight) => byWeight.reduce((sum, count) => sum + count, 0));
}

/**
 * Life given up by the latest schedule of so many visits a month, in unit-months, exactly: the visits still waiting
 * each month, counted by their weights, since which of two equal ones waits costs the same.
 */
export function monthsGivenUp({ weights, due }: VisitCounts, perMonth: number): number {
  const waiting = new Float64Array(weights.length);
  let givenUp = 0;
  for (let month = due.length - 1; month > 0; month--) {
    let room = perMonth;
    for (let at = 0; at < weights.length; at++) {
      const here = waiting[at]! + due[month]![at]!;
      const fit = Math.min(room, here);
      room -= fit;
      waiting[at] = here - fit;
      givenUp += weights[at]! * (here - fit);
    }
  }
  return givenUp;
}

/**
 * What a team's number of visits a month means: the smallest that meets every expiry, and what more of them save. Beyond
 * the last point of the curve nothing is given up.
 */
export function swapCapacity(counts: VisitCounts, perMonth: number | null): SwapCapacity {
  const smallest = smallestCapacity(counts);
  const busiest = Math.max(0, ...visitsByMonth(counts));
  const step = Math.max(1, Math.ceil((busiest - smallest) / (MOST_POINTS - 1)));
  const points = new Set<number>();
  for (let capacity = smallest; capacity < busiest; capacity += step) points.add(capacity);
  if (busiest > 0) points.add(busiest);
  const tradeOff = () =>
    [...points].map((capacity) => ({
      perMonth: capacity,
      unitMonthsGivenUp: monthsGivenUp(counts, capacity),
    }));
  return { perMonth, smallest, enough: perMonth === null || perMonth >= smallest, tradeOff };
}

/** True for what a visit has to swap, inside the horizon: an installed unit that serves, and whose device then still does. */
export function needsVisit(stock: StockUnits, at: number, lastMonth: Month): boolean {
  const { installed, until } = stock.placeOf(at);
  return stock.serves[at] === 1 && stock.swapMonth[at]! <= lastMonth && installed && stock.swapBy[at]! < until;
}
