import { firstDayOfMonth, monthOfDay } from "../../src/calendar/month.ts";
import type { ItemDemand } from "../../src/demand/types.ts";
import type { CatalogueRow, SupplierRow } from "../../src/fleet/rows.ts";
import { seededRandom } from "../../src/maths/random.ts";
import { lotsOfSchedule } from "../../src/orders/lots-of-schedule.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import type { OrderLine } from "../../src/orders/types.ts";
import type { UsableLot } from "../../src/supplies/types.ts";
import {
  catalogueRow,
  certainDemand,
  day,
  fleetWith,
  poissonDemand,
  policyWith,
  supplierRow,
} from "../orders/made-up.ts";
import { calendarOrder } from "./calendar-rule.ts";

const ITEM = "Pads, adult";
const START = monthOfDay(day("2027-01-01"));
const MONTHS = 24;

/** One item in a world of Poisson needs. Money in cents. */
export interface OrderWorld {
  meanPerMonth: number;
  facts: Partial<CatalogueRow>;
  supplier: Partial<SupplierRow>;
}

/** What became of it over 24 months. */
export interface Played {
  needed: number;
  servedAtOnce: number;
  monthsShort: number;
  /** Spent on orders, less what the units left at the end cost at the list price, and the cost of holding stock. */
  cost: number;
  /** Units that lapsed unused. */
  lapsed: number;
  /** Mean worth of the stock on the shelf after a month's needs, at the list price. */
  held: number;
}

/**
 * Who buys: `replanned` plans anew on the first of every month, with what is on order carried over; `once` keeps to the
 * first month's plan; `calendar` buys up to four months' mean needs whenever less than two months' is there or on order
 * (common practice, no source); `oracle` keeps to a plan made in the first month with every need known.
 */
export type Buyer = "replanned" | "once" | "calendar" | "oracle";

/** Plays a world forward, month by month. */
export function playOrders({ meanPerMonth, facts, supplier }: OrderWorld, seed: number, buyer: Buyer): Played {
  const random = seededRandom(seed);
  const needs = Array.from({ length: MONTHS }, () => poisson(meanPerMonth, random.uniform));
  const fleet = fleetWith({ catalogue: [catalogueRow({ item: ITEM, ...facts })], suppliers: [supplierRow(supplier)] });
  const price = 100 * Number(facts.price ?? "10.00");
  const first = Math.ceil(3 * meanPerMonth + 3);
  const lot = (): UsableLot => ({
    item: ITEM,
    quantity: first,
    availableFrom: firstDayOfMonth(START),
    usableUntil: null,
    place: "store",
    origin: "shelf",
    reference: null,
  });
  const played = { needed: 0, servedAtOnce: 0, monthsShort: 0, cost: 0, lapsed: 0, held: 0 };
  let stock = [lot()];
  let waiting = 0;
  let kept: OrderLine[] = [];
  needs.forEach((needed, month) => {
    const asOf = firstDayOfMonth(START + month);
    // the oracle's needs hold this month's, which have not left its stock yet
    const atStart = buyer === "oracle" && month === 0 ? [lot()] : null;
    waiting = useUp(stock, asOf, waiting + needed);
    played.needed += needed;
    played.servedAtOnce += needed - Math.min(waiting, needed);
    if (waiting > 0) played.monthsShort++;
    played.lapsed += unitsIn(stock.filter((one) => one.usableUntil !== null && one.usableUntil < asOf));
    stock = stock.filter((one) => one.quantity > 0 && (one.usableUntil === null || one.usableUntil >= asOf));
    played.held += (price * unitsIn(stock.filter((one) => one.availableFrom <= asOf))) / MONTHS;
    const policy = policyWith({ asOf, horizonMonths: MONTHS });
    if (buyer === "calendar") {
      const bought = calendarOrder(ITEM, fleet, policy, unitsIn(stock) - waiting, meanPerMonth);
      played.cost += bought?.cost ?? 0;
      if (bought !== null) stock.push(bought.lot);
    } else {
      const known = { ...certainDemand(ITEM, needs), from: START };
      const demand = buyer === "oracle" ? known : demandFrom(START + month, waiting, meanPerMonth);
      if (buyer === "replanned" || month === 0) kept = scheduleOrders(fleet, policy, [demand], atStart ?? stock).orders;
      const leaves = (line: OrderLine) => line.orderBy >= asOf && line.orderBy < firstDayOfMonth(START + month + 1);
      const placed = kept.filter(leaves);
      played.cost += cost(placed);
      stock.push(...lotsOfSchedule(placed, fleet, policy));
    }
    // what arrives within the month serves what waits
    for (let at = asOf; waiting > 0 && at < firstDayOfMonth(START + month + 1); at++)
      waiting = useUp(stock, at, waiting);
  });
  played.cost += 2 * policyWith().holdingRatePerYear * played.held - price * unitsIn(stock);
  return played;
}

function unitsIn(lots: readonly UsableLot[]): number {
  return lots.reduce((sum, one) => sum + one.quantity, 0);
}

function cost(orders: ReturnType<typeof scheduleOrders>["orders"]): number {
  return orders.reduce((sum, line) => sum + line.lineCost + line.feeShare, 0);
}

/** Needs as seen from a month's first day: what waits is known, this month's needs have come, the rest is Poisson. */
function demandFrom(from: number, waiting: number, mean: number): ItemDemand {
  const ahead = poissonDemand(ITEM, [0, ...new Array<number>(MONTHS - 1).fill(mean)]);
  return {
    ...ahead,
    from,
    needsQuantile: (after, through, level) =>
      (after < 0 ? waiting : 0) + (through > 0 ? ahead.needsQuantile(after, through, level) : 0),
  };
}

/** First expired, first out; returns what still waits. */
function useUp(stock: UsableLot[], at: number, waiting: number): number {
  stock.sort((a, b) => (a.usableUntil ?? 1e9) - (b.usableUntil ?? 1e9));
  let left = waiting;
  for (const one of stock) {
    if (one.availableFrom > at || (one.usableUntil !== null && one.usableUntil < at)) continue;
    const used = Math.min(left, one.quantity);
    one.quantity -= used;
    left -= used;
  }
  return left;
}

function poisson(mean: number, random: () => number): number {
  let units = 0;
  for (let left = random(); left > Math.exp(-mean); left *= random()) units++;
  return units;
}
