import type { Day } from "../calendar/day.ts";
import type { ItemDemand } from "../demand/types.ts";
import type { LotTiers } from "./lot-tiers.ts";
import type { NetNeeds } from "./net-needs.ts";
import type { Offer } from "./offers.ts";
import type { LatestSlot, OrderSlot } from "./order-slots.ts";
import type { SupplySpan } from "./supply-spans.ts";

/** One item to be planned: what is needed beyond its supply, and from whom and when it can be had. */
export interface ItemCase {
  item: string;
  demand: ItemDemand;
  level: number;
  supply: SupplySpan[];
  net: NetNeeds;
  /** What could help out until a late order arrives on a day, each a plain clause. */
  stopgapsUntil(arrives: Day): string[];
  offers: CaseOffer[];
}

/** An offer with its order days and prices worked out. */
export interface CaseOffer {
  offer: Offer;
  /** By month. */
  slots: LatestSlot[];
  /** The slot of an order that leaves before a month's latest day. */
  earlierSlot(orderBy: Day, index: number): OrderSlot;
  tiers: LotTiers;
}
