import { monthOfDay } from "../calendar/month.ts";
import type { ItemDemand } from "../demand/types.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet } from "../fleet/rows.ts";
import { offerOfLine } from "./lots-of-schedule.ts";
import { needDay } from "./order-slots.ts";
import type { OrderSchedule } from "./types.ts";

/**
 * Whole months that what is bought for the needs of each month lies on a shelf before, where that brings a later need into
 * the horizon: an order that covers many months, or a supplier that takes orders seldom, has units lose life.
 *
 * @returns by item key, the months' numbers as text, by which the same is known again
 */
export function monthsWaited(
  { orders }: OrderSchedule,
  demand: readonly ItemDemand[],
  fleet: Fleet,
  policy: Policy,
): Map<string, string> {
  const needs = new Map(demand.map((one) => [one.item, one.mean]));
  const from = monthOfDay(policy.asOf);
  const found = new Map<string, number[]>();
  for (const line of orders) {
    const { lifeMonths, leavesByExpiry } = offerOfLine(line, fleet, policy);
    if (lifeMonths === null || !leavesByExpiry) continue;
    const key = nameKey(line.item);
    for (let at = line.covers.from - from; at <= line.covers.to - from; at++) {
      const waited = monthOfDay(needDay(policy, from, at) - policy.orderBeforeNeedDays) - monthOfDay(line.arriveBy);
      const bringsNeed = needs.get(line.item)![at]! > 0 && at - waited + lifeMonths < policy.horizonMonths;
      if (waited <= 0 || !bringsNeed) continue;
      const months = found.get(key) ?? new Array<number>(policy.horizonMonths).fill(0);
      found.set(key, months);
      months[at] = waited;
    }
  }
  return new Map([...found].map(([key, months]) => [key, months.join(" ")]));
}
