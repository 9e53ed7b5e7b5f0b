import { addMonths } from "../../src/calendar/day.ts";
import { firstDayOfMonth, lastDayOfMonth, monthOfDay } from "../../src/calendar/month.ts";
import { day } from "./made-up.ts";
import type { CaseItem, OrderCase } from "./random-cases.ts";

/** A day on which an item can be ordered, the month it reaches first and the last month its lot serves. */
export interface OrderDay {
  day: number;
  reaches: number;
  last: number;
}

/** Month in which an order leaving on a day is first in time; null = after the case's months. */
function reaches(one: OrderCase, item: CaseItem, orderDay: number): number | null {
  for (let month = 0; month < one.months; month++) if (latestDay(one, item, month).day >= orderDay) return month;
  return null;
}

function needDay(one: OrderCase, month: number): number {
  const asOf = day(one.asOf);
  return month === 0 ? asOf : firstDayOfMonth(monthOfDay(asOf) + month);
}

function latestDay(
  one: OrderCase,
  item: CaseItem,
  month: number,
): { day: number; missed: boolean; offCalendar: boolean } {
  let latest = needDay(one, month) - one.orderBeforeNeedDays - item.leadDays;
  if (one.everyMonths !== null) {
    let start = monthOfDay(latest);
    while (start % one.everyMonths !== 0) start--;
    latest = firstDayOfMonth(start);
  }
  const asOf = day(one.asOf);
  const onCalendar = one.everyMonths === null || one.asOf === "2027-01-01";
  if (latest >= asOf) return { day: latest, missed: false, offCalendar: false };
  return { day: asOf, missed: true, offCalendar: !onCalendar };
}

function ownDays(one: OrderCase, item: CaseItem): number[] {
  const waiting = item.demand.some((units, month) => units > 0 && latestDay(one, item, month).missed);
  const days = item.demand.map((_, month) => latestDay(one, item, month));
  return days.filter((latest) => !latest.offCalendar || waiting).map((latest) => latest.day);
}

/** Every day on which an item can be ordered: its own latest days, and those of the supplier's other items. */
export function orderDays(one: OrderCase, item: CaseItem): OrderDay[] {
  const all = [...new Set(one.items.flatMap((other) => ownDays(one, other)))].sort((a, b) => a - b);
  const own = new Set(ownDays(one, item));
  const asOf = day(one.asOf);
  const found: OrderDay[] = [];
  for (const orderDay of all) {
    const month = reaches(one, item, orderDay);
    if (month === null || (orderDay === asOf && !own.has(asOf))) continue;
    found.push({ day: orderDay, reaches: month, last: lastServed(one, item, orderDay, month) });
  }
  return found;
}

function lastServed(one: OrderCase, item: CaseItem, orderDay: number, month: number): number {
  if (item.lifeMonths === null) return one.months - 1;
  const until = lastDayOfMonth(monthOfDay(addMonths(orderDay + item.leadDays, item.lifeMonths))) - one.minLifeDays;
  let last = month;
  while (last + 1 < one.months && needDay(one, last + 1) <= until) last++;
  return last;
}

/** Price of a unit in cents, by order size and day. */
export function priceOn(one: OrderCase, price: number, orderDay: number): number {
  let years = 0;
  while (addMonths(day(one.asOf), 12 * (years + 1)) <= orderDay) years++;
  return price * (1 + one.priceRisePerYear) ** years;
}

/** Cost in cents of holding a unit for a month. */
export function holdingCost(one: OrderCase, item: CaseItem): number {
  return item.price * (one.holdingRatePerYear / 12 + (item.lifeMonths === null ? 0 : 1 / item.lifeMonths));
}

export function cumulative(item: CaseItem): number[] {
  let sum = 0;
  return item.demand.map((units) => {
    sum += units;
    return sum;
  });
}
