import type { Day } from "../calendar/day.ts";
import type { ItemDemand } from "../demand/types.ts";
import type { Policy } from "../fleet/policy.ts";
import type { UsableLot } from "../supplies/types.ts";
import { needDay } from "./order-slots.ts";

/** Units that can serve the needs of months `from` to `to` (indices, inclusive). */
export interface SupplySpan {
  from: number;
  to: number;
  units: number;
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
  let most = Math.max(0, missingAfter(after, through, supply, needsOf));
  for (const to of new Set(supply.map((span) => span.to))) {
    if (to > after && to < through) most = Math.max(most, missingAfter(to, through, supply, needsOf));
  }
  return most;
}

function missingAfter(
  after: number,
  through: number,
  supply: readonly SupplySpan[],
  needsOf: (after: number, through: number) => number,
): number {
  if (after >= through) return 0;
  let missing = needsOf(after, through);
  for (const span of supply) if (span.from <= through && span.to > after) missing -= span.units;
  return missing;
}

/** What must still be bought for an item, at a service level. Month indices; spans (after, through] exclude `after`. */
export interface NetNeeds {
  /** Units still needed for the months after+1 .. through, beyond stock and orders usable in them; may be negative. */
  shortOf(after: number, through: number): number;
  /** Units to be supplied for the months after+1 .. through: needs at the service level, and the spares. */
  needsOf(after: number, through: number): number;
  /** The same at another service level. */
  needsAt(after: number, through: number, level: number): number;
  /** Month indices after which some stock has lapsed. */
  lapses: number[];
  /** Least units that must have arrived by each month, over all spans that end in it; non-decreasing. */
  cumulative: number[];
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
  const spans: SupplySpan[] = [];
  for (const { quantity, availableFrom, usableUntil } of lots) {
    let from = 0;
    if (availableFrom > soonest) while (needDay(policy, demand.from, from) < availableFrom) from++;
    let to = demand.months - 1;
    while (to >= from && usableUntil !== null && needDay(policy, demand.from, to) > usableUntil) to--;
    if (quantity > 0 && from <= to) spans.push({ from, to, units: quantity });
  }
  return spans;
}

/**
 * Nets the needs of an item against its supply, span by span: supply must cover every span and not just the total,
 * since stock lapses.
 *
 * @param spares  units to be kept on the shelf beside the needs
 */
export function netNeeds(demand: ItemDemand, spans: readonly SupplySpan[], level: number, spares: number): NetNeeds {
  const { months } = demand;
  const known = new Map<number, number>();
  const needsOf = (after: number, through: number): number => {
    const key = (after + 1) * months + through;
    let needs = known.get(key);
    if (needs === undefined) {
      needs = demand.needsQuantile(after, through, level) + spares;
      known.set(key, needs);
    }
    return needs;
  };
  const knownShort = new Map<number, number>();
  const shortOf = (after: number, through: number): number => {
    const key = (after + 1) * months + through;
    let net = knownShort.get(key);
    if (net === undefined) {
      net = needsOf(after, through);
      for (const span of spans) if (span.from <= through && span.to > after) net -= span.units;
      knownShort.set(key, net);
    }
    return net;
  };
  const lapses = [...new Set(spans.map((span) => span.to))].filter((to) => to < months - 1).sort((a, b) => a - b);
  const unserved = unservedFirstExpiredFirstOut(months, spans, (month) => needsOf(-1, month));
  const cumulative: number[] = [];
  for (let through = 0; through < months; through++) {
    let least = Math.max(cumulative[through - 1] ?? 0, shortOf(-1, through), unserved[through]!);
    for (const after of lapses) if (after < through) least = Math.max(least, shortOf(after, through));
    cumulative.push(least);
  }
  const needsAt = (after: number, through: number, other: number) =>
    demand.needsQuantile(after, through, other) + spares;
  return { shortOf, needsOf, needsAt, lapses, cumulative };
}

/**
 * Needs left unserved by each month when the supply is used first expired, first out, along the path of the cumulative
 * quantiles. Spans alone would miss stock that only serves months which need little.
 */
function unservedFirstExpiredFirstOut(
  months: number,
  spans: readonly SupplySpan[],
  needsThrough: (month: number) => number,
): number[] {
  const left = spans.map((span) => ({ ...span })).sort((a, b) => a.to - b.to || a.from - b.from);
  const unserved: number[] = [];
  let waiting = 0;
  let before = 0;
  for (let month = 0; month < months; month++) {
    const needed = Math.max(before, needsThrough(month));
    waiting += needed - before;
    before = needed;
    for (const span of left) {
      if (span.from > month || span.to < month) continue;
      const used = Math.min(waiting, span.units);
      span.units -= used;
      waiting -= used;
    }
    unserved.push(waiting);
  }
  return unserved;
}
