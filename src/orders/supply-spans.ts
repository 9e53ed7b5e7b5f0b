import type { Day } from "../calendar/day.ts";
import { monthOfDay } from "../calendar/month.ts";
import type { ItemDemand } from "../demand/types.ts";
import type { Policy } from "../fleet/policy.ts";
import type { UsableLot } from "../supplies/types.ts";
import { needDay } from "./order-slots.ts";

/** Units that can serve the needs of months `from` to `to` (indices, inclusive). */
export interface SupplySpan {
  from: number;
  to: number;
  units: number;
  /** Month index in which they arrive, where they are counted on before. */
  arrives?: number;
}

/**
 * Units missing through a month: the most by which needs exceed the units usable in any span that ends there and
 * starts after one of the months given, or after stock has lapsed.
 */
export function missingThrough(
  through: number,
  after: number,
  supply: readonly SupplySpan[],
  needsOf: (after: number, through: number) => number,
): number {
  let most = after < through ? Math.max(0, missingAfter(after, through, supply, needsOf)) : 0;
  let seen = after;
  for (const { to } of supply) {
    // spans that lapse together mostly stand together
    if (to === seen || to <= after || to >= through) continue;
    seen = to;
    most = Math.max(most, missingAfter(to, through, supply, needsOf));
  }
  return most;
}

/** Units by which needs exceed supply in the months after+1 .. through; below zero where supply is more. */
export function missingAfter(
  after: number,
  through: number,
  supply: readonly SupplySpan[],
  needsOf: (after: number, through: number) => number,
): number {
  let missing = needsOf(after, through);
  for (const span of supply) if (span.from <= through && span.to > after) missing -= span.units;
  return missing;
}

/**
 * The months that stock and orders on the way can serve. What arrives no later than anything ordered today could is
 * counted from the first month: it meets the needs that are waiting, and ordering again would buy them twice.
 */
export function supplySpans(
  lots: readonly UsableLot[],
  policy: Policy,
  demand: ItemDemand,
  soonest: Day,
): SupplySpan[] {
  // thousands of units come down to few spans, which are gone through again and again
  const spans = new Map<number, SupplySpan>();
  for (const { quantity, availableFrom, usableUntil } of lots) {
    let from = 0;
    if (availableFrom > soonest) while (needDay(policy, demand.from, from) < availableFrom) from++;
    let to = demand.months - 1;
    while (to >= from && usableUntil !== null && needDay(policy, demand.from, to) > usableUntil) to--;
    if (quantity <= 0 || from > to) continue;
    const arrives = Math.max(from, monthOfDay(availableFrom) - demand.from);
    const key = (arrives * demand.months + from) * demand.months + to;
    const span = spans.get(key);
    if (span) span.units += quantity;
    else spans.set(key, { from, to, units: quantity, arrives });
  }
  return [...spans.values()];
}

const byLapse = (a: SupplySpan, b: SupplySpan) => a.to - b.to || a.from - b.from;

/** A copy of supply that can be used up, in the order in which it lapses. */
export function stockToUse(supply: readonly SupplySpan[]): SupplySpan[] {
  return supply.map((span) => ({ ...span })).sort(byLapse);
}

/** Puts a span among stock that lies in the order in which it lapses. */
export function addToStock(stock: SupplySpan[], span: SupplySpan): void {
  let at = stock.length;
  while (at > 0 && byLapse(stock[at - 1]!, span) > 0) at--;
  stock.splice(at, 0, span);
}

/**
 * Uses stock for the needs that wait in a month, first expired, first out.
 *
 * @param stock  in the order in which it lapses; what is used is taken off
 * @returns needs that still wait
 */
export function useFirstExpired(stock: readonly SupplySpan[], month: number, waiting: number): number {
  let left = waiting;
  for (const span of stock) {
    if (left <= 0) break;
    if ((span.arrives ?? span.from) > month || span.to < month) continue;
    const used = Math.min(left, span.units);
    span.units -= used;
    left -= used;
  }
  return left;
}
