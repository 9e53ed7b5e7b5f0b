import { addMonths, type Day } from "../calendar/day.ts";
import { fiscalYearStart } from "../calendar/fiscal-year.ts";
import { firstDayOfMonth, lastDayOfMonth, type Month, monthOfDay } from "../calendar/month.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Offer } from "./offers.ts";

/** An order day for the needs of one month, and what a lot ordered then can serve. */
export interface OrderSlot {
  orderBy: Day;
  /** Expected arrival. */
  arriveBy: Day;
  /** Last day on which a unit of the lot may still be fitted; null = no limit. */
  usableUntil: Day | null;
  /** Last month index that the lot can serve, never before its own. */
  lastServed: number;
  /** True where the supplier's calendar has no such order day. */
  offCadence: boolean;
}

/** The latest order day for the needs of a month, as-of where that has passed. */
export interface LatestSlot extends OrderSlot {
  /** True where the day on which the order should have left is before as-of. */
  missed: boolean;
  /** True where this is the first month that the order can serve; orders leave only for such months. */
  opens: boolean;
  /** Order days after this one, up to the latest, reach this month first. */
  after: Day;
}

/** The months that needs are told for: the first, and how many. */
interface Horizon {
  from: Month;
  months: number;
}

/** The day on which the needs of a month index fall: as-of for the first, then the month's first day. */
export function needDay(policy: Policy, from: Month, index: number): Day {
  return index === 0 ? policy.asOf : firstDayOfMonth(from + index);
}

/**
 * The latest order day of every month for an offer: need day less the safety days less the planned lead time, or the
 * last order day of the supplier's calendar before that; as-of where that day has passed. Months that share an order
 * day are served by the order for the first of them.
 *
 * @param mayBeLate  false where another offer arrives sooner: then no order opens for months that are missed
 */
export function latestSlots(offer: Offer, policy: Policy, horizon: Horizon, mayBeLate: boolean): LatestSlot[] {
  const { from, months } = horizon;
  const slots: LatestSlot[] = [];
  for (let index = 0; index < months; index++) {
    const latest = needDay(policy, from, index) - policy.orderBeforeNeedDays - offer.planLeadDays;
    const wished = offer.orderEveryMonths === null ? latest : lastOrderDay(latest, offer.orderEveryMonths, policy);
    const missed = wished < policy.asOf;
    const orderBy = missed ? policy.asOf : wished;
    const before = slots[index - 1];
    slots.push({
      ...slotOn(orderBy, index, offer, policy, horizon),
      missed,
      opens: mayBeLate ? before?.orderBy !== orderBy : !missed && (before?.missed || before?.orderBy !== orderBy),
      after: before?.orderBy ?? orderBy - 1,
    });
  }
  return slots;
}

/** The slot of an order that leaves on a day and reaches a month first. */
export function slotOn(
  orderBy: Day,
  index: number,
  offer: Offer,
  policy: Policy,
  { from, months }: Horizon,
): OrderSlot {
  const arriveBy = orderBy + offer.leadDays;
  const usableUntil = lastUsableDay(offer, arriveBy);
  const lastServed = usableUntil === null ? months - 1 : lastMonthServed(policy, from, index, months, usableUntil);
  const offCadence = offer.orderEveryMonths !== null && !isOrderDay(orderBy, offer.orderEveryMonths, policy);
  return { orderBy, arriveBy, usableUntil, lastServed, offCadence };
}

/** Last day on which a unit that arrives on a day may still be fitted; null = no limit. */
export function lastUsableDay(offer: Offer, arriveBy: Day): Day | null {
  if (offer.lifeMonths === null) return null;
  return lastDayOfMonth(monthOfDay(addMonths(arriveBy, offer.lifeMonths))) - offer.minLifeDays;
}

function lastMonthServed(policy: Policy, from: Month, index: number, months: number, usableUntil: Day): number {
  let last = index;
  while (last + 1 < months && needDay(policy, from, last + 1) <= usableUntil) last++;
  return last;
}

/** The last order day on or before a day. */
function lastOrderDay(day: Day, everyMonths: number, policy: Policy): Day {
  let month = monthOfDay(day);
  while (!isOrderMonth(month, everyMonths, policy)) month--;
  return firstDayOfMonth(month);
}

function isOrderDay(day: Day, everyMonths: number, policy: Policy): boolean {
  const month = monthOfDay(day);
  return firstDayOfMonth(month) === day && isOrderMonth(month, everyMonths, policy);
}

/** Order months count from the fiscal year's first month; a calendar of more than a year counts from year 0. */
function isOrderMonth(month: Month, everyMonths: number, { fiscalYearStarts }: Policy): boolean {
  const into = everyMonths <= 12 ? month - fiscalYearStart(month, fiscalYearStarts) : month - fiscalYearStarts + 1;
  return into % everyMonths === 0;
}
