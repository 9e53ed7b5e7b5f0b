import { fiscalYearOfMonth } from "../calendar/fiscal-year.ts";
import { type Month, monthOfDay } from "../calendar/month.ts";
import type { Policy } from "../fleet/policy.ts";
import type { ItemCase } from "./item-case.ts";
import type { PlannedLine } from "./order-lines.ts";
import { lineCostOf, orderFeeOf } from "./prices.ts";
import { SAMPLED_PATHS, samplePaths } from "./sample-paths.ts";
import { unitsOnPath } from "./spend-on-path.ts";
import type { BudgetYear } from "./types.ts";

/** An item with the lines that the schedule plans for it. */
export interface ScheduledItem {
  of: ItemCase;
  lines: PlannedLine[];
}

/**
 * Spend by fiscal year of the order date and by currency: as planned, and as it may come.
 *
 * The percentiles are those of the year's total over sampled joint futures (SAMPLED_PATHS of them, the fleet's draws
 * shared by all items): each is bought for by the schedule's own rule at the schedule's order points (see unitsOnPath),
 * priced by the same breaks, with one fee an order. A year's p95 is therefore not the sum of its months' or items' p95.
 * A year without an order between years with some has a row of its own, of nothing.
 */
export function budgetYears(items: readonly ScheduledItem[], policy: Policy): BudgetYear[] {
  const spend = new Map<string, YearSpend>();
  const rowFor = (month: Month, currency: string): YearSpend => {
    const fiscalYear = fiscalYearOfMonth(month, policy.fiscalYearStarts);
    const key = `${fiscalYear}|${currency}`;
    let row = spend.get(key);
    if (!row) {
      row = { fiscalYear, currency, byItem: new Map() };
      spend.set(key, row);
    }
    return row;
  };
  const ordered = new Map<string, { first: Month; last: Month }>();
  const placed = items.flatMap(({ of, lines }) => {
    const bought = lines.length === 0 ? [] : samplePaths(of.demand).map((path) => unitsOnPath(of, lines, policy, path));
    return lines.map((one, index) => {
      const month = monthOfDay(one.line.orderBy);
      const { currency } = one.line;
      if (one.line.lineCost > 0) {
        const known = ordered.get(currency) ?? { first: month, last: month };
        ordered.set(currency, { first: Math.min(known.first, month), last: Math.max(known.last, month) });
      }
      const row = rowFor(month, currency);
      const item = itemSpend(row, of.item);
      item.planned += one.line.lineCost + one.line.feeShare;
      return { one, item, units: Int32Array.from(bought, (units) => units[index]!) };
    });
  });
  // a year in which nothing is ordered is told as such, not left out; what has no price has no currency to tell it in
  for (const [currency, { first, last }] of ordered) {
    for (let month = first; month < last; month += 12) rowFor(month, currency);
  }
  const orders = new Map<string, typeof placed>();
  for (const place of placed) {
    const key = `${place.one.line.order}|${place.one.line.currency}`;
    orders.set(key, [...(orders.get(key) ?? []), place]);
  }
  for (const lines of orders.values()) addOrder(lines, policy);
  return [...spend.values()].map(yearFrom).sort(byYearAndCurrency);
}

interface ItemSpend {
  planned: number;
  /** Minor units by path; fractions where a fee is shared. */
  onPath: Float64Array;
}

interface YearSpend {
  fiscalYear: string;
  currency: string;
  byItem: Map<string, ItemSpend>;
}

/** Adds one order's lines and fee on every path. */
function addOrder(lines: readonly { one: PlannedLine; item: ItemSpend; units: Int32Array }[], policy: Policy): void {
  const costs = lines.map(() => 0);
  const known = lines.map(() => new Map<number, number>());
  for (let path = 0; path < SAMPLED_PATHS; path++) {
    let total = 0;
    lines.forEach(({ one, units }, index) => {
      const bought = units[path]!;
      let cost = known[index]!.get(bought);
      if (cost === undefined) {
        cost = bought > 0 ? lineCostOf(one.offer, policy, one.line.orderBy, bought) : 0;
        known[index]!.set(bought, cost);
      }
      costs[index] = cost;
      total += cost;
    });
    const ordered = lines.filter((line) => line.units[path]! > 0).length;
    const fee = ordered > 0 ? orderFeeOf(lines[0]!.one.offer, total) : 0;
    lines.forEach(({ item, units }, index) => {
      if (units[path]! === 0) return;
      item.onPath[path]! += costs[index]! + (total > 0 ? (fee * costs[index]!) / total : fee / ordered);
    });
  }
}

function itemSpend(row: YearSpend, item: string): ItemSpend {
  let spend = row.byItem.get(item);
  if (!spend) {
    spend = { planned: 0, onPath: new Float64Array(SAMPLED_PATHS) };
    row.byItem.set(item, spend);
  }
  return spend;
}

function yearFrom({ fiscalYear, currency, byItem }: YearSpend): BudgetYear {
  const all = new Float64Array(SAMPLED_PATHS);
  let planned = 0;
  for (const spend of byItem.values()) {
    planned += spend.planned;
    spend.onPath.forEach((value, path) => {
      all[path]! += value;
    });
  }
  return {
    fiscalYear,
    currency,
    planned,
    ...percentiles(all),
    byItem: [...byItem]
      .map(([item, spend]) => ({ item, planned: spend.planned, ...percentiles(spend.onPath) }))
      .sort((a, b) => (a.item < b.item ? -1 : 1)),
  };
}

/** Smallest spend that at least the share of paths stays within, to the minor unit. */
function percentiles(onPath: Float64Array): { p50: number; p80: number; p95: number } {
  const sorted = Float64Array.from(onPath).sort();
  const at = (share: number) => Math.round(sorted[Math.ceil(share * sorted.length) - 1]!);
  return { p50: at(0.5), p80: at(0.8), p95: at(0.95) };
}

function byYearAndCurrency(a: BudgetYear, b: BudgetYear): number {
  const left = `${a.fiscalYear}|${a.currency}`;
  const right = `${b.fiscalYear}|${b.currency}`;
  return left < right ? -1 : left > right ? 1 : 0;
}
