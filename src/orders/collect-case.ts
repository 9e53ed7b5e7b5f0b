import type { ItemDemand } from "../demand/types.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Policy } from "../fleet/policy.ts";
import type { UsableLot } from "../supplies/types.ts";
import { buyingOptions } from "./buying-options.ts";
import type { CaseOffer, ItemCase } from "./item-case.ts";
import type { ItemCaution } from "./item-cautions.ts";
import { Ledger } from "./ledger.ts";
import { lotTiersOf } from "./lot-tiers.ts";
import { netNeeds } from "./net-needs.ts";
import { type Offer, offersForItem } from "./offers.ts";
import { latestSlots, type OrderSlot, slotOn } from "./order-slots.ts";
import { lotsForNeeds } from "./plan-item.ts";
import type { StandInGround } from "./stand-ins.ts";
import { stopgapsFor } from "./stopgaps.ts";
import { supplySpans } from "./supply-spans.ts";

/** Collects what one item's orders rest on. Whatever had to be assumed is a caution. */
export function itemCase(
  demand: ItemDemand,
  lots: readonly UsableLot[],
  ground: StandInGround,
): { itemCase: ItemCase; cautions: ItemCaution[] } {
  const { fleet, policy, book } = ground;
  const { key, name } = book.find(demand.item);
  const levels = fleet.catalogue.filter((row) => nameKey(row.item) === key).map((row) => row.serviceLevel ?? 0);
  const level = Math.max(...levels, 0) || policy.serviceLevel;
  const { offers, cautions } = offersForItem(name, fleet, policy, level);
  const shortestLead = Math.min(...offers.map((offer) => offer.leadDays));
  const own = lots.filter((lot) => book.find(lot.item).key === key);
  const supply = supplySpans(own, policy, demand, policy.asOf + shortestLead);
  const of: ItemCase = {
    item: demand.item,
    demand,
    level,
    supply,
    stopgapsUntil: (arrives) => stopgapsFor(book.find(demand.item), lots, arrives, ground),
    net: netNeeds(demand, supply, level, spareUnits(ground, key)),
    offers: offers.map((offer) => caseOffer(offer, policy, demand, offer.leadDays === shortestLead)),
  };
  if (offers.some((offer) => offer.orderEveryMonths !== null) && !canBeMet(of)) {
    of.offers = offers.map((offer) =>
      caseOffer({ ...offer, orderEveryMonths: null }, policy, demand, offer.leadDays === shortestLead),
    );
    const lapse = "would lapse before the supplier's next order day:";
    const one = `${lapse} it is ordered outside its calendar.`;
    cautions.push({ item: of.item, one, many: `${lapse} they are ordered outside its calendar.` });
  }
  return { itemCase: of, cautions };
}

/** Whether any lots at all meet the needs on the order days there are. */
function canBeMet(of: ItemCase): boolean {
  return lotsForNeeds(of.net.cumulative, buyingOptions(of, new Ledger().market())) !== null;
}

function caseOffer(offer: Offer, policy: Policy, demand: ItemDemand, mayBeLate: boolean): CaseOffer {
  const known = new Map<number, OrderSlot>();
  return {
    offer,
    slots: latestSlots(offer, policy, demand, mayBeLate),
    earlierSlot(orderBy, index) {
      const key = orderBy * demand.months + index;
      const slot = known.get(key) ?? slotOn(orderBy, index, offer, policy, demand);
      known.set(key, slot);
      return slot;
    },
    tiers: lotTiersOf(offer, policy),
  };
}

/** Good packs to keep on the shelf: a share of those in devices that have not left service, rounded up. */
function spareUnits({ fleet, policy, book, takes }: StandInGround, key: string): number {
  if (policy.sparesPercent === 0) return 0;
  const inUse = fleet.packs.filter(
    (pack) =>
      pack.item !== null &&
      takes.devices.has(nameKey(pack.device ?? "")) &&
      (pack.retired === null || pack.retired > policy.asOf) &&
      book.find(pack.item).key === key,
  );
  return Math.ceil((inUse.length * policy.sparesPercent) / 100 - 1e-9);
}
