import { forecastDemand } from "./demand/forecast-demand.ts";
import type { Policy } from "./fleet/policy.ts";
import { forecastPacks } from "./life/forecast-packs.ts";
import { scheduleOrders } from "./orders/schedule-orders.ts";
import { assemblePlan } from "./out/assemble-plan.ts";
import { assembleDates, type DatesReport } from "./out/dates-report.ts";
import type { Plan } from "./out/plan-schema.ts";
import type { Reading } from "./sheets/reading.ts";
import { deferOrders } from "./short/defer-orders.ts";
import { forecastShort } from "./short/forecast-short.ts";
import { forecastDatedStock } from "./supplies/forecast-dated-stock.ts";
import { usableLots } from "./supplies/usable-lots.ts";

/**
 * The whole pipeline: what was read, and the planner's choices, to the plan.
 *
 * @param reading  the sheets as `readSheets` understood them
 * @param policy   as `resolvePolicy` filled it; its as-of is the day from which everything is forecast
 */
export function makePlan(reading: Reading, policy: Policy): Plan {
  const { fleet } = reading;
  const life = forecastPacks(fleet, policy);
  const dated = forecastDatedStock(fleet, policy);
  const demand = forecastDemand(policy, life, dated);
  const lots = usableLots(fleet, policy, life.stock);
  const schedule = scheduleOrders(fleet, policy, demand, lots, life.packs);
  const short = forecastShort(fleet, policy, life, dated, demand, lots, schedule);
  const capped = deferOrders(fleet, policy, life, dated, demand, lots, schedule);
  return assemblePlan({ reading, policy, life, dated, demand, schedule, short, capped });
}

/** The part of the plan that is about dated stock, for which no pack need be forecast. */
export function makeDates(reading: Reading, policy: Policy): DatesReport {
  return assembleDates(reading, policy, forecastDatedStock(reading.fleet, policy));
}
