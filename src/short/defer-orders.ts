import { fiscalYearOfMonth, fiscalYearStart } from "../calendar/fiscal-year.ts";
import { firstDayOfMonth, monthOfDay } from "../calendar/month.ts";
import { groupBy } from "../fleet/group-by.ts";
import { listed } from "../fleet/listed.ts";
import { exactFromText, minorUnits } from "../fleet/money.ts";
import { sortBy } from "../maths/sort-by.ts";
import type { OrderLine } from "../orders/types.ts";
import type { UsableLot } from "../supplies/types.ts";
import { DeferrableLine } from "./deferrable-line.ts";
import { lotsByItem } from "./forecast-short.ts";
import { KeptOrder } from "./kept-order.ts";
import { type ShortModel, shortModel } from "./short-model.ts";
import type { CappedSchedule, Deferral, Scheduled } from "./types.ts";
import type { SupplyMonths } from "./unmet-needs.ts";

/**
 * What to put off where a fiscal year's orders cost more than its budget, the least harmful per unit of money first.
 *
 * Year by year: while the year's lines cost more than the budget, some boxes (an eighth of a line at a time) go to the
 * next fiscal year's first day, always those whose delay brings the fewest device-months short of their item per unit
 * of money; harm is counted anew after each. What is deferred counts against the next year and may be deferred again.
 * A line cut below its minimum order goes as a whole; what the budget has room for after all, the most harmful to put off
 * first, then stays. An order's fee stays until its last line is gone, and what is put off to one day is one order. Where a
 * year has very many lines, as when a small budget has put off years of orders, lines of an item that serve the same months
 * go one after the other, each in the whole, and share their harm by their units.
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
    const ofYear = lines.filter(isWithin);
    for (const some of groupBy(ofYear, ({ line }) => `${line.supplier}|${line.orderBy}`).values()) {
      const order = new KeptOrder(some[0]!.offer);
      for (const one of some) one.startYear(to, order);
    }
    const within = ofYear.filter(({ order }) => order.cost > 0);
    const ofItem = byItem(lines);
    const spend = cutToBudget(within, ofItem, cap, harm);
    keepWhatFits(within, ofItem, cap - spend, harm);
    const rows = deferredOf(within);
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
  const left = byItem(lines);
  const waiting = model.items.map((key, item) => model.waiting(item, harm.supplyOf(key, left)));
  return { deferrals, short: model.shortBy(waiting), cautions: cautionsOn(currency, currencies, named !== undefined) };
}

/** Lines of which something is put off, the least harmful per unit of money first. */
function deferredOf(within: readonly DeferrableLine[]): DeferrableLine[] {
  const deferred = within.filter((one) => one.deferredUnits > 0);
  return sortBy(deferred, (one) => [perUnit(one.harm, one.saved), -one.saved, one.line.id]);
}

/** Harm for each minor unit: what spares nothing is put off last. */
const perUnit = (harm: number, saved: number) => (saved > 0 ? harm / saved : Infinity);

/** Takes back whole delays that a later and larger one has made needless, and tells anew what the others save and harm. */
function keepWhatFits(within: readonly DeferrableLine[], lines: LinesByItem, room: number, harm: Harm): void {
  const deferred = deferredOf(within);
  const harmNow = new Map<string, number>();
  let left = room;
  for (const one of [...deferred].reverse()) {
    const costs = -one.savesBy(-one.deferredUnits);
    if (costs > left) continue;
    left -= costs;
    one.deferredUnits = 0;
    harmNow.set(one.key, 0);
  }
  const rest = deferred.map((one) => ({ one, units: one.deferredUnits })).filter(({ units }) => units > 0);
  for (const { one } of rest) one.deferredUnits = 0;
  for (const key of harmNow.keys()) harmNow.set(key, harm.of(key, lines));
  for (const { one, units } of rest) {
    one.saved = one.savesBy(units);
    one.deferredUnits = units;
    const before = harmNow.get(one.key);
    if (before === undefined) continue;
    const then = harm.of(one.key, lines);
    one.harm = then - before;
    harmNow.set(one.key, then);
  }
}

const byItem = (lines: readonly DeferrableLine[]) => groupBy(lines, ({ key }) => key);

type LinesByItem = ReadonlyMap<string, readonly DeferrableLine[]>;

/** Lines of a year above which those alike are put off together and in the whole. */
const MANY = 100;

interface Move {
  one: DeferrableLine;
  units: number;
}

/** What to put off next: of some lines of an item, so many units each. */
interface Prospect {
  moves: Move[];
  units: number;
  /** Device-months short of the item once it is put off, and how many more than before. */
  then: number;
  more: number;
  saves: number;
}

/** Defers boxes of the year's lines until they cost no more than the budget, and tells what they then cost. */
function cutToBudget(within: readonly DeferrableLine[], lines: LinesByItem, cap: number, harm: Harm): number {
  let spend = [...new Set(within.map(({ order }) => order))].reduce((sum, { cost }) => sum + cost, 0);
  const many = within.length > MANY;
  const alike = many
    ? [...groupBy(within, (one) => `${one.key} ${one.changeBy(0)}`).values()]
    : within.map((one) => [one]);
  const harmNow = new Map<string, number>();
  // what deferring brings, by what it does to the supply of an item as it stands
  const known = new Map<string, Map<string, number>>();
  const next = new Map<DeferrableLine[], Prospect>();
  const prospectOf = (some: DeferrableLine[]) => {
    let prospect = next.get(some);
    if (!prospect) {
      const { key } = some[0]!;
      const before = harmNow.get(key) ?? harm.of(key, lines);
      harmNow.set(key, before);
      const moves: Move[] = [];
      let saves = 0;
      let units = 0;
      for (const one of some) {
        const toSpare = spend - cap - saves;
        if (one.keptUnits === 0 || (units > 0 && toSpare <= 0)) continue;
        const whole = many && one.savesBy(one.keptUnits) <= toSpare;
        const move = { one, units: whole ? one.keptUnits : one.nextUnits(toSpare) };
        moves.push(move);
        saves += one.savesBy(move.units);
        units += move.units;
        // until all is told: what the next saves may hang on it
        one.deferredUnits += move.units;
      }
      const ofItem = known.get(key) ?? new Map<string, number>();
      known.set(key, ofItem);
      const change = some[0]!.changeBy(units);
      const then = ofItem.get(change) ?? harm.of(key, lines);
      ofItem.set(change, then);
      for (const move of moves) move.one.deferredUnits -= move.units;
      prospect = { moves, units, then, more: then - before, saves };
      next.set(some, prospect);
    }
    return prospect;
  };
  while (spend > cap) {
    const open = alike.filter((some) => some.some((one) => one.keptUnits > 0));
    if (open.length === 0) break;
    let best = open[0]!;
    for (const some of open) {
      const [a, b] = [prospectOf(some), prospectOf(best)];
      if (perUnit(a.more, a.saves) < perUnit(b.more, b.saves)) best = some;
    }
    const { key } = best[0]!;
    const { moves, units: all, then, more, saves } = prospectOf(best);
    for (const { one, units } of moves) {
      one.saved += one.savesBy(units);
      one.harm += more * (units / all);
      one.deferredUnits += units;
    }
    spend -= saves;
    harmNow.set(key, then);
    known.delete(key);
    const touched = new Set(moves.map(({ one }) => one.order));
    for (const some of alike) {
      if (some[0]!.key === key || some.some(({ order }) => touched.has(order))) next.delete(some);
    }
  }
  return spend;
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

  supplyOf(key: string, lines: LinesByItem): SupplyMonths[] {
    return [...(this.stock.get(key) ?? []), ...(lines.get(key) ?? []).flatMap((one) => one.spans())];
  }

  of(key: string, lines: LinesByItem): number {
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
