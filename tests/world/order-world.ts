import { firstDayOfMonth, monthOfDay } from "../../src/calendar/month.ts";
import type { ItemDemand } from "../../src/demand/types.ts";
import type { CatalogueRow, SupplierRow } from "../../src/fleet/rows.ts";
import { seededRandom } from "../../src/maths/random.ts";
import { lotsOfSchedule } from "../../src/orders/lots-of-schedule.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
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
  /** Spent on orders, less what the units left at the end cost at the list price. */
  spent: number;
  /** The same for someone who knows every need beforehand. */
  spentByOracle: number;
}

/** Plays a world forward: planned anew on the first of every month, with what is on order carried over. */
export function playOrders({ meanPerMonth, facts, supplier }: OrderWorld, seed: number): Played {
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
  const played = { needed: 0, servedAtOnce: 0, monthsShort: 0, spent: 0, spentByOracle: 0 };
  let stock = [lot()];
  let waiting = 0;
  needs.forEach((needed, month) => {
    const asOf = firstDayOfMonth(START + month);
    waiting = useUp(stock, asOf, waiting + needed);
    played.needed += needed;
    played.servedAtOnce += needed - Math.min(waiting, needed);
    if (waiting > 0) played.monthsShort++;
    stock = stock.filter((one) => one.quantity > 0 && (one.usableUntil === null || one.usableUntil >= asOf));
    const policy = policyWith({ asOf, horizonMonths: MONTHS });
    const demand = demandFrom(START + month, waiting, meanPerMonth);
    const { orders } = scheduleOrders(fleet, policy, [demand], stock);
    const placed = orders.filter((line) => line.orderBy < firstDayOfMonth(START + month + 1));
    played.spent += cost(placed);
    stock.push(...lotsOfSchedule(placed, fleet, policy));
    // what arrives within the month serves what waits
    for (let at = asOf; waiting > 0 && at < firstDayOfMonth(START + month + 1); at++)
      waiting = useUp(stock, at, waiting);
  });
  played.spent -= price * stock.reduce((sum, one) => sum + one.quantity, 0);
  const known = { ...certainDemand(ITEM, needs), from: START };
  const policy = policyWith({ asOf: firstDayOfMonth(START), horizonMonths: MONTHS });
  const oracle = scheduleOrders(fleet, policy, [known], [lot()]).orders;
  const left = first + oracle.reduce((sum, line) => sum + line.quantity, 0) - played.needed;
  played.spentByOracle = cost(oracle) - price * Math.max(0, left);
  return played;
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
