import type { BuyingOptions } from "./buying-options.ts";
import { knownLots } from "./known-lots.ts";
import type { Lot } from "./lot-problem.ts";
import type { NetNeeds } from "./net-needs.ts";
import type { OrderSlot } from "./order-slots.ts";

/** Rounds in which only the spans found short are raised, before whole spans are. */
const GENTLE_ROUNDS = 12;

/** A lot with the day on which it is ordered. */
export interface PlacedLot extends Lot {
  slot: OrderSlot;
  /** Minor units, for the search: the line's own cost is worked out exactly later. */
  lineCost: number;
}

/** An item's lots with the cumulative needs they were sized for. */
export interface ItemLots {
  lots: PlacedLot[];
  /** Units that must have arrived by each month, as planned. */
  cumulativeNeed: readonly number[];
  /** Prices and holding without fees, in minor units. */
  ownCost: number;
}

/** The cheapest lots for given cumulative needs, or null where no order can meet them. */
export function lotsForNeeds(cumulativeNeed: readonly number[], options: BuyingOptions): ItemLots | null {
  const plan = knownLots({ cumulativeNeed, sources: options.sources, surplusAtEnd: true });
  if (plan === null) return null;
  let ownCost = plan.cost;
  const lots = plan.lots.map((lot) => {
    const { line, fee } = options.costOf(lot);
    ownCost -= fee;
    return { ...lot, slot: options.slotOf(lot), lineCost: line };
  });
  return { lots, cumulativeNeed, ownCost };
}

/**
 * The cheapest lots such that supply covers the needs of every span of months at the service level.
 *
 * The lots are sized for the cumulative net needs. Where a lot lapses within the months, stock that was enough in
 * total may not be enough after it: each span that ends up short raises the needs by what it lacks, and the lots
 * are sized again until no span is short. Exact where no lot lapses within the months; else a heuristic.
 *
 * @param start  cumulative needs to begin with, not below the net needs
 * @returns the lots, or null where no order can meet the needs
 */
export function planItemLots(
  net: NetNeeds,
  options: BuyingOptions,
  start: readonly number[] = net.cumulative,
): ItemLots | null {
  const cumulativeNeed = [...start];
  const closedAfter = new Set<number>();
  for (let round = 0; ; round++) {
    const planned = lotsForNeeds(cumulativeNeed, options);
    if (planned === null) return null;
    const short = shortSpans(planned.lots, net, cumulativeNeed.length);
    if (short.length === 0) return planned;
    const raise = new Map<number, number>();
    if (round < GENTLE_ROUNDS) {
      for (const { through, units } of short) raise.set(through, Math.max(units, raise.get(through) ?? 0));
    } else {
      // needs of a span on top of all needs before it: no plan can then be short in it
      for (const { after } of short) closedAfter.add(after);
    }
    for (let through = 0; through < cumulativeNeed.length; through++) {
      let least = Math.max(cumulativeNeed[through - 1] ?? 0, cumulativeNeed[through]! + (raise.get(through) ?? 0));
      for (const after of closedAfter) {
        if (after < through) least = Math.max(least, (cumulativeNeed[after] ?? 0) + net.shortOf(after, through));
      }
      cumulativeNeed[through] = least;
    }
  }
}

interface ShortSpan {
  after: number;
  through: number;
  units: number;
}

/** Spans in which stock, orders on the way and the lots usable in them are fewer than the needs. */
function shortSpans(lots: readonly PlacedLot[], net: NetNeeds, months: number): ShortSpan[] {
  const lapses = lots.map((lot) => lot.slot.lastServed).filter((last) => last < months - 1);
  const found: ShortSpan[] = [];
  for (const after of new Set([-1, ...net.lapses, ...lapses])) {
    const lasting = lots.filter((lot) => lot.slot.lastServed > after);
    let next = 0;
    let arrived = 0;
    for (let through = after + 1; through < months; through++) {
      // lots are in the order of their periods
      for (; next < lasting.length && lasting[next]!.period <= through; next++) arrived += lasting[next]!.units;
      const units = net.shortOf(after, through) - arrived;
      if (units > 0) found.push({ after, through, units });
    }
  }
  return found;
}
