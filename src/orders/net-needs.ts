import type { ItemDemand } from "../demand/types.ts";
import { missingAfter, type SupplySpan, stockToUse, useFirstExpired } from "./supply-spans.ts";

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
      net = missingAfter(after, through, spans, needsOf);
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
 * Needs that the supply leaves to be bought by each month when it is used first expired, first out, along the path of the
 * cumulative quantiles. Spans alone would miss stock that only serves months which need little, and what comes after the
 * needs of one month and lapses before those of the next: what is bought does not wait for it. Needs that nothing ordered now
 * can meet sooner wait for what is on its way.
 */
function unservedFirstExpiredFirstOut(
  months: number,
  spans: readonly SupplySpan[],
  needsThrough: (month: number) => number,
): number[] {
  const left = stockToUse(spans);
  const unserved: number[] = [];
  let toBuy = 0;
  let before = 0;
  let waiting = 0;
  for (let month = 0; month < months; month++) {
    const needed = Math.max(before, needsThrough(month));
    waiting = useFirstExpired(left, month, waiting + needed - before);
    before = needed;
    const coming = left.reduce(
      (sum, { from, arrives = from, units }) => sum + (from <= month && arrives > month ? units : 0),
      0,
    );
    const unmet = Math.max(0, waiting - coming);
    toBuy += unmet;
    waiting -= unmet;
    unserved.push(toBuy);
  }
  return unserved;
}
