import { fiscalYearOfMonth, fiscalYearStart } from "../calendar/fiscal-year.ts";
import { firstDayOfMonth, monthOfDay } from "../calendar/month.ts";
import { currencyWords } from "../fleet/currency.ts";
import { groupBy } from "../fleet/group-by.ts";
import { listed } from "../fleet/listed.ts";
import { exactFromText, minorUnits } from "../fleet/money.ts";
import type { OrderLine } from "../orders/types.ts";
import { cutToBudget } from "./cut-to-budget.ts";
import { DeferrableLine } from "./deferrable-line.ts";
import { lotsByItem } from "./forecast-short.ts";
import { ItemHarm, linesByItem } from "./item-harm.ts";
import { keepWhatFits } from "./keep-what-fits.ts";
import { KeptOrder } from "./kept-order.ts";
import { shortModel } from "./short-model.ts";
import type { CappedSchedule, Deferral, Scheduled } from "./types.ts";

/**
 * What to put off where a fiscal year's orders cost more than its budget, the least harmful per unit of money first.
 *
 * Year by year: while the year's lines cost more than the budget, some boxes (an eighth of a line at a time) go to the
 * next fiscal year's first day, always those whose delay brings the fewest device-months short of their item per unit
 * of money; harm is counted anew after each. What is deferred counts against the next year and may be deferred again.
 * No less than a minimum order goes, and a line cut below it goes as a whole; what the budget has room for after all,
 * the most harmful to put off first, then stays. An order's fee stays until its last line is gone, and what is put off
 * to one day is one order. Where a year has very many lines, as when a small budget has put off years of orders, lines
 * of an item that serve the same months go one after the other, each in the whole, and share their harm by their units.
 *
 * @returns null where the policy sets no budget
 */
export function deferOrders(scheduled: Scheduled): CappedSchedule | null {
  const { fleet, policy, dated, lots, schedule } = scheduled;
  if (policy.budgetPerFiscalYear === null) return null;
  // what has no price has no currency either
  const currencies = [...new Set(schedule.orders.flatMap((line) => (line.lineCost > 0 ? line.currency : [])))];
  const currency = policy.currency ?? currencies[0] ?? "";
  const cap = minorUnits(exactFromText(policy.budgetPerFiscalYear), currency);
  const model = shortModel(scheduled);
  const harm = new ItemHarm(model, lotsByItem(lots, dated));
  const keyOf = (line: OrderLine) => dated.needing.book.find(line.item).key;
  let lines = schedule.orders.map((line) => new DeferrableLine(line, keyOf(line), fleet, policy, model));
  const deferrals: Deferral[] = [];
  const firstYear = fiscalYearStart(model.from, policy.fiscalYearStarts);
  for (let year = firstYear; year < model.from + model.months; year += 12) {
    const to = firstDayOfMonth(year + 12);
    const isWithin = ({ line }: DeferrableLine) => {
      const month = monthOfDay(line.orderBy);
      return line.currency === currency && month >= year && month < year + 12;
    };
    const ofYear = lines.filter(isWithin);
    for (const some of groupBy(ofYear, ({ line }) => `${line.supplier}|${line.orderBy}`).values()) {
      const order = new KeptOrder(some[0]!.offer);
      for (const one of some) one.startYear(to, order);
    }
    const within = ofYear.filter(({ order }) => order.cost > 0);
    const ofItem = linesByItem(lines);
    const spend = cutToBudget(within, ofItem, cap, harm);
    const fiscalYear = fiscalYearOfMonth(year, policy.fiscalYearStarts);
    for (const one of keepWhatFits(within, ofItem, cap - spend, harm)) {
      deferrals.push({
        fiscalYear,
        currency,
        line: one.line.id,
        supplier: one.line.supplier,
        item: one.line.item,
        quantity: one.deferredUnits,
        orderBy: one.line.orderBy,
        deferredTo: to,
        saves: one.saved,
        deviceMonthsShort: one.harm,
      });
    }
    lines = lines.flatMap((one) => one.split());
  }
  const left = linesByItem(lines);
  const waiting = model.items.map((key, item) => model.waiting(item, harm.supplyOf(key, left)));
  return {
    deferrals,
    short: model.shortBy(waiting),
    cautions: cautionsOn(currency, currencies, policy.currency !== null),
  };
}

function cautionsOn(currency: string, currencies: readonly string[], named: boolean): string[] {
  const others = currencies.filter((one) => one !== currency);
  if (others.length === 0) return [];
  const which = named ? "" : " Name the budget's currency in the policy.";
  const [own, ...rest] = [currency, ...others].map(currencyWords);
  return [`The budget is taken to be in ${own}; orders in ${listed(rest)} are not held against it.${which}`];
}
