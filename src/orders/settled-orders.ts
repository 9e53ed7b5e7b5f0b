import type { ItemDemand } from "../demand/types.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet } from "../fleet/rows.ts";
import { monthsWaited } from "./months-waited.ts";
import type { OrderSchedule } from "./types.ts";

/**
 * Times that needs are told again at most: where orders go on changing, they do so by a unit here and there. Once for many
 * devices, where a unit matters less and each time takes longer.
 */
const MOST_TIMES = 3;
const MANY_DEVICES = 1000;

/** Needs, and the orders that meet them. */
export interface SettledOrders {
  demand: ItemDemand[];
  schedule: OrderSchedule;
}

/**
 * Orders meet needs, and needs hang on orders: a unit that waits on a shelf before it is fitted lapses the sooner after it.
 * Needs are told as if nothing waited, then again with what the orders for them have wait, until that stays as it is.
 *
 * @param needs  tells the needs; see `monthsWaited` for what waits
 * @param order  the cheapest orders for them
 */
export function settledOrders(
  needs: (waited: ReadonlyMap<string, string>) => ItemDemand[],
  order: (demand: ItemDemand[]) => OrderSchedule,
  fleet: Fleet,
  policy: Policy,
): SettledOrders {
  let demand = needs(new Map());
  let schedule = order(demand);
  const most = fleet.devices.length > MANY_DEVICES ? 1 : MOST_TIMES;
  for (let times = 0, before = ""; times < most; times++) {
    const waited = monthsWaited(schedule, demand, fleet, policy);
    const now = [...waited].join();
    if (now === before) break;
    before = now;
    demand = needs(waited);
    schedule = order(demand);
  }
  return { demand, schedule };
}
