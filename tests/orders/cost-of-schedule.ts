import { monthOfDay } from "../../src/calendar/month.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import { cumulative, holdingCost, orderDays } from "./case-calendar.ts";
import { fleetOfCase } from "./fleet-of-case.ts";
import { certainDemand, day } from "./made-up.ts";
import type { OrderCase } from "./random-cases.ts";

/** The cost in cents of what the engine schedules for a case: its lines and fees, and the holding counted anew. */
export function costOfSchedule(one: OrderCase): { cost: number; lines: number } {
  const policy = {
    ...defaultPolicy(day(one.asOf)),
    horizonMonths: one.months,
    orderBeforeNeedDays: one.orderBeforeNeedDays,
    minLifeDays: one.minLifeDays,
    holdingRatePerYear: one.holdingRatePerYear,
    priceRisePerYear: one.priceRisePerYear,
  };
  const demand = one.items.map((item) => ({
    ...certainDemand(item.item, item.demand),
    from: monthOfDay(policy.asOf),
  }));
  const { orders } = scheduleOrders(fleetOfCase(one), policy, demand, []);
  let cost = orders.reduce((sum, line) => sum + line.lineCost + line.feeShare, 0);
  for (const item of one.items) {
    const needs = cumulative(item);
    const days = orderDays(one, item);
    let covered = 0;
    const bought = orders.filter((line) => line.item === item.item).sort((a, b) => a.orderBy - b.orderBy);
    const reached = new Array<number>(one.months).fill(0);
    for (const line of bought) {
      const at = days.find((order) => order.day === line.orderBy);
      if (!at) throw new Error(`${one.name}: ${line.id} leaves on a day on which it cannot`);
      const used = Math.max(0, Math.min(line.quantity, needs[at.last]! - covered));
      covered += used;
      cost += holdingCost(one, item) * (line.quantity - used) * (at.last - at.reaches + 1);
      for (let month = at.reaches; month < one.months; month++) reached[month] = covered;
    }
    reached.forEach((units, month) => {
      if (units < needs[month]!) throw new Error(`${one.name}: ${item.item} is short in month ${month}`);
      cost += holdingCost(one, item) * (units - needs[month]!);
    });
  }
  return { cost, lines: orders.length };
}
