import { fiscalYearOfMonth, fiscalYearStart } from "../calendar/fiscal-year.ts";
import { firstDayOfMonth, monthOfDay } from "../calendar/month.ts";
import { listed } from "../fleet/first-told.ts";
import { exactFromText, minorUnits } from "../fleet/money.ts";
import type { OrderLine } from "../orders/types.ts";
import type { UsableLot } from "../supplies/types.ts";
import { costOf, DeferrableLine } from "./deferrable-line.ts";
import { lotsByItem } from "./forecast-short.ts";
import { type ShortModel, shortModel } from "./short-model.ts";
import type { CappedSchedule, Deferral, Scheduled } from "./types.ts";
import type { SupplyMonths } from "./unmet-needs.ts";

/**
 * What to put off where a fiscal year's orders cost more than its budget, the least harmful per unit of money first.
 *
 * Year by year: while the year's lines cost more than the budget, some boxes (an eighth of a line at a time) go to the
 * next fiscal year's first day, always those whose delay brings the fewest device-months short of their item per unit
 * of money; harm is counted anew after each. What is deferred counts against the next year and may be deferred again.
 * A line cut below its minimum order goes as a whole. The fee stays with what is left of a line.
 *
 * @returns null where the policy sets no budget
 */
export function deferOrders(scheduled: Scheduled): CappedSchedule | null {
  const { fleet, policy, dated, lots, schedule } = scheduled;
  if (policy.budgetPerFiscalYear === null) return null;
  const currencies = [...new Set(schedule.orders.map((line) => line.currency))];
  const named = policy.currency?.trim().toUpperCase();
  const currency = named ?? currencies[0] ?? "";
  const cap = minorUnits(exactFromText(policy.budgetPerFiscalYear), currency);
  const model = shortModel(scheduled);
  const harm = new Harm(model, lotsByItem(lots, dated));
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
    const within = lines.filter((one) => isWithin(one) && costOf(one.line) > 0);
    for (const one of within) one.startYear(to);
    cutToBudget(within, lines, cap, harm);
    const rows = within.filter((one) => one.deferredUnits > 0);
    rows.sort((a, b) => a.harm * b.saved - b.harm * a.saved || b.saved - a.saved || (a.line.id < b.line.id ? -1 : 1));
    const fiscalYear = fiscalYearOfMonth(year, policy.fiscalYearStarts);
    for (const one of rows) {
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
  const waiting = model.items.map((key, item) => model.waiting(item, harm.supplyOf(key, lines)));
  return { deferrals, short: model.shortBy(waiting), cautions: cautionsOn(currency, currencies, named !== undefined) };
}

/** Defers boxes of the year's lines until they cost no more than the budget. */
function cutToBudget(within: DeferrableLine[], lines: readonly DeferrableLine[], cap: number, harm: Harm): void {
  let spend = within.reduce((sum, one) => sum + costOf(one.line), 0);
  const harmNow = new Map<string, number>();
  const next = new Map<DeferrableLine, { units: number; more: number; saves: number }>();
  const prospectOf = (one: DeferrableLine) => {
    let prospect = next.get(one);
    if (!prospect) {
      const before = harmNow.get(one.key) ?? harm.of(one.key, lines);
      harmNow.set(one.key, before);
      const units = one.nextUnits(spend - cap);
      const more = one.tryDeferring(units, () => harm.of(one.key, lines)) - before;
      prospect = { units, more, saves: one.savesBy(units) };
      next.set(one, prospect);
    }
    return prospect;
  };
  while (spend > cap) {
    const open = within.filter((one) => one.keptUnits > 0);
    if (open.length === 0) return;
    let best = open[0]!;
    for (const one of open) {
      const [a, b] = [prospectOf(one), prospectOf(best)];
      if (a.more * b.saves < b.more * a.saves) best = one;
    }
    const { units, more, saves } = prospectOf(best);
    best.defer(units, more, saves);
    spend -= saves;
    harmNow.delete(best.key);
    for (const one of within) if (one.key === best.key) next.delete(one);
  }
}

/** Device-months short of an item alone, for the lines as they stand. */
class Harm {
  private readonly stock = new Map<string, SupplyMonths[]>();
  private readonly itemOf: Map<string, number>;

  constructor(
    private readonly model: ShortModel,
    stock: ReadonlyMap<string, readonly UsableLot[]>,
  ) {
    this.itemOf = new Map(model.items.map((key, index) => [key, index]));
    for (const [key, lots] of stock) this.stock.set(key, model.spans(lots));
  }

  supplyOf(key: string, lines: readonly DeferrableLine[]): SupplyMonths[] {
    return [...(this.stock.get(key) ?? []), ...lines.flatMap((one) => (one.key === key ? one.spans() : []))];
  }

  of(key: string, lines: readonly DeferrableLine[]): number {
    const item = this.itemOf.get(key);
    if (item === undefined) return 0;
    return this.model.deviceMonths(item, this.model.waiting(item, this.supplyOf(key, lines)));
  }
}

function cautionsOn(currency: string, currencies: readonly string[], named: boolean): string[] {
  const others = currencies.filter((one) => one !== currency);
  if (others.length === 0) return [];
  const which = named ? "" : " Name the budget's currency in the policy.";
  return [`The budget is taken to be in ${currency}; orders in ${listed(others)} are not held against it.${which}`];
}
