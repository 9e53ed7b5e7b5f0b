import type { ComingLot } from "../demand/fitted-lives.ts";
import type { ItemDemand } from "../demand/types.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet } from "../fleet/rows.ts";
import { lotsToCome } from "./lots-to-come.ts";
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
 * Needs are told as if nothing waited, then again with the orders for them as what is fitted, until those stay as they are.
 *
 * @param needs  tells the needs, given what is bought, by item key
 * @param order  the cheapest orders for them
 */
export function settledOrders(
  needs: (coming: ReadonlyMap<string, readonly ComingLot[]>) => ItemDemand[],
  order: (demand: ItemDemand[]) => OrderSchedule,
  fleet: Fleet,
  policy: Policy,
): SettledOrders {
  let demand = needs(new Map());
  let schedule = order(demand);
  const most = fleet.devices.length > MANY_DEVICES ? 1 : MOST_TIMES;
  for (let times = 0, before = "[]"; times < most; times++) {
    const coming = lotsToCome(schedule, demand, fleet, policy);
    const now = JSON.stringify([...coming]);
    if (now === before) break;
    before = now;
    demand = needs(coming);
    schedule = order(demand);
  }
  return { demand, schedule };
}
