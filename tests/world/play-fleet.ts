import { firstDayOfMonth, monthOfDay } from "../../src/calendar/month.ts";
import { forecastDemand } from "../../src/demand/forecast-demand.ts";
import { defaultPolicy, type Policy } from "../../src/fleet/policy.ts";
import { rememberStages } from "../../src/fleet/policy-reads.ts";
import type { Fleet, PackRow } from "../../src/fleet/rows.ts";
import { forecastPacks } from "../../src/life/forecast-packs.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import { settledOrders } from "../../src/orders/settled-orders.ts";
import type { OrderLine } from "../../src/orders/types.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { usableLots } from "../../src/supplies/usable-lots.ts";
import { certainDemand, day } from "../orders/made-up.ts";
import { calendarOrder } from "./calendar-rule.ts";
import { DEVICES, FleetInService, ITEMS, type ItemName, type Served } from "./fleet-in-service.ts";
import type { Buyer } from "./order-world.ts";
import { USES_PER_MONTH } from "./true-fleet.ts";

const START = monthOfDay(day("2027-01-01"));
export const MONTHS = 24;
const LOG_FROM = day("2025-01-01");
/** Mean needs a month that the calendar rule reckons with: packs of four years, pads of two and those used. */
const MEAN: Record<ItemName, number> = {
  Pack: DEVICES / 48,
  Pads: DEVICES * (1 / 24 + (USES_PER_MONTH.ward + USES_PER_MONTH.ambulance) / 2),
};

/** What became of a fleet over 24 months. Money in cents. */
export interface PlayedFleet {
  served: Record<ItemName, Served>;
  /** Spent on orders, less what the units left at the end cost at the list price, and the cost of holding stock. */
  cost: number;
  /** Mean worth of the stock on the shelf at a month's end. */
  held: number;
}

/**
 * Plays a fleet forward, month by month, with the whole engine: packs forecast from their yearly tests, pads from dates
 * and the use log. The calendar rule replaces packs at four years besides, as long as the shelf has others.
 */
export function playFleet(seed: number, buyer: Buyer): PlayedFleet {
  const start = firstDayOfMonth(START);
  const end = firstDayOfMonth(START + MONTHS);
  const fleet = new FleetInService(seed, start, end, { endless: false, fourYearly: buyer === "calendar" });
  const kept = buyer === "once" ? schedule(fleet.sheets(start), policyOn(START)) : foreseen(fleet.sheets(start), seed);
  let [spent, held] = [0, 0];
  for (let month = START; month < START + MONTHS; month++) {
    const policy = policyOn(month);
    const sheets = fleet.sheets(policy.asOf);
    if (buyer === "calendar") {
      for (const item of ITEMS) {
        const bought = calendarOrder(item, sheets, policy, fleet.there(item), MEAN[item]);
        if (bought === null) continue;
        spent += bought.cost;
        fleet.arrive(item, bought.lot.quantity, bought.lot.availableFrom);
      }
    } else {
      const lines = buyer === "replanned" ? schedule(sheets, policy) : kept;
      const leaving = lines.filter(({ orderBy }) => orderBy >= policy.asOf && orderBy < firstDayOfMonth(month + 1));
      for (const line of leaving) {
        spent += line.lineCost + line.feeShare;
        fleet.arrive(line.item as ItemName, line.quantity, line.arriveBy);
      }
    }
    for (let at = policy.asOf; at < firstDayOfMonth(month + 1); at++) fleet.play(at);
    held += fleet.worthOnShelf(firstDayOfMonth(month + 1) - 1) / MONTHS;
  }
  const holding = (MONTHS / 12) * policyOn(START).holdingRatePerYear * held;
  return { served: fleet.served, cost: spent + holding - fleet.worthLeft(), held };
}

function policyOn(month: number): Policy {
  return { ...defaultPolicy(firstDayOfMonth(month)), horizonMonths: MONTHS, useLogFrom: LOG_FROM };
}

/** The orders that the engine proposes for what the sheets say. */
function schedule(sheets: Fleet, policy: Policy): OrderLine[] {
  const life = forecastPacks(sheets, policy);
  const dated = forecastDatedStock(sheets, policy);
  const lots = usableLots(sheets, policy, life.stock);
  return settledOrders(
    (coming) => forecastDemand(policy, life, dated, rememberStages(), coming),
    (demand) => scheduleOrders(sheets, policy, demand, lots, life.packs),
    sheets,
    policy,
  ).schedule.orders;
}

/** Times that the needs of one who knows the future are worked out anew, as what is bought changes what expires. */
const ROUNDS = 4;

/** The orders of one who knows every need, that of the units bought included. */
function foreseen(sheets: Fleet, seed: number): OrderLine[] {
  const policy = policyOn(START);
  const shelf = usableLots(
    sheets,
    policy,
    sheets.packs.filter(isSpare).map((pack) => ({ pack, due: null })),
  );
  let lines: OrderLine[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const needs = needsServedBy(lines, seed);
    const demand = ITEMS.map((item) => ({ ...certainDemand(item, needs[item]), from: START }));
    lines = scheduleOrders(sheets, policy, demand, shelf, []).orders;
  }
  return lines;
}

const isSpare = ({ device, retired }: PackRow) => device === null && retired === null;

/** Units needed by item and month where orders arrive as planned and nothing ever lacks. */
function needsServedBy(lines: readonly OrderLine[], seed: number): Record<ItemName, number[]> {
  const [start, end] = [firstDayOfMonth(START), firstDayOfMonth(START + MONTHS)];
  const fleet = new FleetInService(seed, start, end, { endless: true, fourYearly: false });
  for (const line of lines) fleet.arrive(line.item as ItemName, line.quantity, line.arriveBy);
  for (let at = start; at < end; at++) fleet.play(at);
  const zeros = () => new Array<number>(MONTHS).fill(0);
  const needs = { Pack: zeros(), Pads: zeros() };
  for (const { item, day: on } of fleet.needs) needs[item][monthOfDay(on) - START]!++;
  return needs;
}
