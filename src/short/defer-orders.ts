import type { Day } from "../calendar/day.ts";
import { fiscalYearOfMonth, fiscalYearStart } from "../calendar/fiscal-year.ts";
import { firstDayOfMonth, monthOfDay } from "../calendar/month.ts";
import type { ItemDemand } from "../demand/types.ts";
import { exactFromText, minorUnits } from "../fleet/money.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet } from "../fleet/rows.ts";
import type { LifeForecast } from "../life/types.ts";
import { lotsOfSchedule } from "../orders/lots-of-schedule.ts";
import type { OrderLine, OrderSchedule } from "../orders/types.ts";
import type { DatedStockForecast } from "../supplies/forecast-dated-stock.ts";
import type { UsableLot } from "../supplies/types.ts";
import { lotsByItem } from "./forecast-short.ts";
import { shortModel } from "./short-model.ts";
import type { CappedSchedule, Deferral } from "./types.ts";

/**
 * What to put off where a fiscal year's orders cost more than its budget, the least harmful per unit of money first.
 *
 * Year by year: while the lines of the year cost more than the budget, the line whose delay to the next fiscal year's
 * first day brings the fewest device-months short of its item per unit of money is deferred; harm is counted anew after
 * each. A deferred line counts against the next year and may be deferred again; each keeps its price and fee share.
 *
 * @returns null where the policy sets no budget
 */
export function deferOrders(
  fleet: Fleet,
  policy: Policy,
  life: LifeForecast,
  dated: DatedStockForecast,
  demand: readonly ItemDemand[],
  lots: readonly UsableLot[],
  schedule: OrderSchedule,
): CappedSchedule | null {
  if (policy.budgetPerFiscalYear === null) return null;
  const currencies = [...new Set(schedule.orders.map((line) => line.currency))];
  const named = policy.currency?.trim().toUpperCase();
  const currency = named ?? currencies[0] ?? "";
  const cautions = cautionsOn(currency, currencies, named !== undefined);
  const cap = minorUnits(exactFromText(policy.budgetPerFiscalYear), currency);

  const model = shortModel(policy, life, dated, demand);
  const stock = lotsByItem(lots, dated);
  const itemOf = new Map(model.items.map((key, index) => [key, index]));
  const keyOf = (line: OrderLine) => dated.needing.book.find(line.item).key;
  const lines = [...schedule.orders];
  const supplyOf = (key: string, ordered: readonly OrderLine[]) => [
    ...(stock.get(key) ?? []),
    ...lotsOfSchedule(
      ordered.filter((line) => keyOf(line) === key),
      fleet,
      policy,
    ),
  ];
  const harmOf = (key: string, ordered: readonly OrderLine[]) => {
    const item = itemOf.get(key);
    return item === undefined ? 0 : model.deviceMonths(item, model.waiting(item, supplyOf(key, ordered)));
  };
  const harm = new Map<string, number>();
  const added = new Map<string, number>();
  const harmOfDeferring = (at: number, to: Day): number => {
    const key = keyOf(lines[at]!);
    const known = added.get(lines[at]!.id);
    if (known !== undefined) return known;
    const now = harm.get(key) ?? harmOf(key, lines);
    harm.set(key, now);
    const more =
      harmOf(
        key,
        lines.map((line, index) => (index === at ? postponed(line, to) : line)),
      ) - now;
    added.set(lines[at]!.id, more);
    return more;
  };

  const deferrals: Deferral[] = [];
  const firstYear = fiscalYearStart(model.from, policy.fiscalYearStarts);
  for (let year = firstYear; year < model.from + model.months; year += 12) {
    const to = firstDayOfMonth(year + 12);
    const fiscalYear = fiscalYearOfMonth(year, policy.fiscalYearStarts);
    added.clear();
    for (;;) {
      const within = lines.flatMap((line, at) => {
        const month = monthOfDay(line.orderBy);
        return line.currency === currency && month >= year && month < year + 12 ? [at] : [];
      });
      const spend = within.reduce((sum, at) => sum + costOf(lines[at]!), 0);
      const candidates = within.filter((at) => costOf(lines[at]!) > 0);
      if (spend <= cap || candidates.length === 0) break;
      const ranked = candidates
        .map((at) => ({ at, more: harmOfDeferring(at, to), cost: costOf(lines[at]!), id: lines[at]!.id }))
        .sort((a, b) => a.more * b.cost - b.more * a.cost || b.cost - a.cost || (a.id < b.id ? -1 : 1));
      const { at, more, cost } = ranked[0]!;
      const line = lines[at]!;
      deferrals.push({
        fiscalYear,
        currency,
        line: line.id,
        supplier: line.supplier,
        item: line.item,
        quantity: line.quantity,
        orderBy: line.orderBy,
        deferredTo: to,
        saves: cost,
        deviceMonthsShort: more,
      });
      lines[at] = postponed(line, to);
      const key = keyOf(line);
      harm.delete(key);
      for (const other of lines) if (keyOf(other) === key) added.delete(other.id);
    }
  }
  const waiting = model.items.map((key, item) => model.waiting(item, supplyOf(key, lines)));
  return { deferrals, short: model.shortBy(waiting), cautions };
}

function costOf(line: OrderLine): number {
  return line.lineCost + line.feeShare;
}

/** A line that leaves later and takes as long. */
function postponed(line: OrderLine, to: Day): OrderLine {
  return { ...line, orderBy: to, arriveBy: to + (line.arriveBy - line.orderBy) };
}

function cautionsOn(currency: string, currencies: readonly string[], named: boolean): string[] {
  const others = currencies.filter((one) => one !== currency);
  if (others.length === 0) return [];
  const which = named ? "" : " Name the budget's currency in the policy.";
  return [
    `The budget is taken to be in ${currency}; orders in ${others.join(" and ")} are not held against it.${which}`,
  ];
}
