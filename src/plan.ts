import { monthOfDay } from "./calendar/month.ts";
import type { ComingLot } from "./demand/fitted-lives.ts";
import { forecastDemand } from "./demand/forecast-demand.ts";
import type { ItemDemand } from "./demand/types.ts";
import { withNamedItems } from "./fleet/named-items.ts";
import type { Policy } from "./fleet/policy.ts";
import { type Remembered, rememberStages } from "./fleet/policy-reads.ts";
import type { Fleet } from "./fleet/rows.ts";
import { forecastPacks } from "./life/forecast-packs.ts";
import { scheduleOrders } from "./orders/schedule-orders.ts";
import { settledOrders } from "./orders/settled-orders.ts";
import { assemblePlan } from "./out/assemble-plan.ts";
import { type DatesBehind, datesBehind } from "./out/dates-behind.ts";
import { assembleDates, type DatesReport } from "./out/dates-report.ts";
import { type HeldRow, heldRows } from "./out/held-stock.ts";
import { packRows } from "./out/plan-packs.ts";
import type { Plan } from "./out/plan-schema.ts";
import type { Reading } from "./sheets/reading.ts";
import { deferOrders } from "./short/defer-orders.ts";
import { forecastShort } from "./short/forecast-short.ts";
import { type DatedStockForecast, forecastDatedStock } from "./supplies/forecast-dated-stock.ts";
import { usableLots } from "./supplies/usable-lots.ts";

function datedStockOf(fleet: Fleet, policy: Policy, remember: Remembered): DatedStockForecast {
  return remember("dated", [fleet], policy, (choices) => forecastDatedStock(fleet, choices));
}

/**
 * The whole pipeline: what was read, and the planner's choices, to the plan.
 *
 * @param reading   the sheets as `readSheets` understood them
 * @param policy    as `resolvePolicy` filled it; its as-of is the day from which everything is forecast
 * @param again     stages of earlier plans, kept between calls by whoever plans again and again: what a changed policy
 *                  value does not touch is then not computed anew, and the plan is the same
 */
export function makePlan(reading: Reading, policy: Policy, again?: Remembered): Plan {
  const remember = again ?? rememberStages();
  const fleet = withNamedItems(reading.fleet);
  const life = remember("life", [fleet], policy, (choices) => forecastPacks(fleet, choices, again));
  const dated = datedStockOf(fleet, policy, remember);
  const lots = usableLots(fleet, policy, life.stock);
  const needs = (coming: ReadonlyMap<string, readonly ComingLot[]>) =>
    remember(
      coming.size > 0 ? "demand again" : "demand",
      [life, dated, JSON.stringify([...coming])],
      policy,
      (choices) => forecastDemand(choices, life, dated, remember, coming),
    );
  const order = (demand: ItemDemand[]) => scheduleOrders(fleet, policy, demand, lots, life.packs);
  const { demand, schedule } = settledOrders(needs, order, fleet, policy);
  const scheduled = { fleet, policy, life, dated, demand, lots, schedule };
  const short = forecastShort(scheduled);
  const capped = deferOrders(scheduled);
  const packs = remember("packs", [life], policy, ({ asOf }) => packRows(life, monthOfDay(asOf)));
  return assemblePlan({ reading, policy, life, packs, dated, demand, schedule, short, capped });
}

/** The part of the plan that is about dated stock, for which no pack need be forecast. */
export function makeDates(reading: Reading, policy: Policy): DatesReport {
  return assembleDates(reading, policy, forecastDatedStock(withNamedItems(reading.fleet), policy));
}

/**
 * What stands behind a plan's dated stock: what lapses, where most is to be swapped, what more visits save, how much is used.
 *
 * @param remember  as of `makePlan`: what a plan has worked out already is not computed anew
 */
export function makeDatesBehind(reading: Reading, policy: Policy, remember: Remembered): DatesBehind {
  const fleet = withNamedItems(reading.fleet);
  return datesBehind(datedStockOf(fleet, policy, remember), fleet.routine);
}

/** Dated stock that is held, which plan.json does not hold. Of the rest behind a plan's dated stock nothing is worked out. */
export function makeHeldStock(reading: Reading, policy: Policy, remember: Remembered): HeldRow[] {
  return heldRows(datedStockOf(withNamedItems(reading.fleet), policy, remember).needing.stock);
}
