import type { Day } from "../calendar/day.ts";
import type { ItemCase } from "./item-case.ts";
import type { Lot, LotSource, LotTier } from "./lot-problem.ts";
import type { OrderedBeside } from "./lot-tiers.ts";
import type { NetNeeds } from "./net-needs.ts";
import type { LatestSlot, OrderSlot } from "./order-slots.ts";

/** What other items order: where a line can join them, and what it then finds there. */
export interface Market {
  /** Days on which something is ordered of the account, ascending. */
  openDays(account: string): readonly Day[];
  beside(account: string, day: Day): OrderedBeside;
  /** False where nothing may be ordered of the account on the day. */
  allows(account: string, day: Day): boolean;
}

/** An item's ways to buy, as lot sizing takes them. */
export interface BuyingOptions {
  sources: LotSource[];
  slotOf(lot: Lot): OrderSlot;
  /** What the lot costs, and what the order's fee changes by with it, in minor units. */
  costOf(lot: Lot): { line: number; fee: number };
}

/**
 * An item's ways to buy in a market. For each month an order leaves on the latest day that is in time, or earlier, where
 * the supplier charges a fee, on the last day before it on which something else is ordered and which reaches no earlier month.
 */
export function buyingOptions({ net, offers }: ItemCase, market: Market): BuyingOptions {
  const made = offers.map(({ offer, slots, tiers, earlierSlot }) => {
    // without a fee to share, nothing is gained by leaving earlier
    const days = offer.fee > 0 ? market.openDays(offer.account) : [];
    return slots.map((latest, index): { slot: OrderSlot; tiers: LotTier[] } => {
      const closed = !latest.opens || (latest.offCadence && !needIsWaiting(net, slots));
      if (closed) return { slot: latest, tiers: [] };
      const joined = earlierSlot(lastDayWithin(days, latest.after, latest.orderBy) ?? latest.orderBy, index);
      // an order that another item must have outside the calendar is none to join
      const slot = joined.offCadence ? latest : joined;
      if (!market.allows(offer.account, slot.orderBy)) return { slot: latest, tiers: [] };
      return { slot, tiers: tiers(slot.orderBy, market.beside(offer.account, slot.orderBy)) };
    });
  });
  const at = (lot: Lot) => made[lot.source]![lot.period]!;
  return {
    sources: offers.map(({ offer }, source) => ({
      unitsPerBox: offer.unitsPerBox,
      tiersAt: (period) => made[source]![period]!.tiers,
      lastServed: (period) => made[source]![period]!.slot.lastServed,
    })),
    slotOf: (lot) => at(lot).slot,
    costOf: (lot) => {
      const tier = at(lot)
        .tiers.filter((one) => one.fromUnits <= lot.units)
        .at(-1)!;
      return { line: Math.floor(tier.unitCost * lot.units + 0.5), fee: tier.lotCost };
    },
  };
}

/** The last of the days (ascending) after one day and not after another. */
function lastDayWithin(days: readonly Day[], after: Day, until: Day): Day | null {
  for (let at = days.length - 1; at >= 0; at--) {
    if (days[at]! <= until) return days[at]! > after ? days[at]! : null;
  }
  return null;
}

/** Whether something is needed that no order day of the supplier's calendar can serve in time. */
function needIsWaiting(net: NetNeeds, slots: readonly LatestSlot[]): boolean {
  return slots.some((slot, index) => slot.missed && net.cumulative[index]! > 0);
}
