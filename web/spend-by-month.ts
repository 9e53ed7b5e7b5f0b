import type { Plan } from "../src/index.ts";
import { monthsBetween } from "./months.ts";

export interface SpendMonth {
  month: string;
  /** The fiscal year as the plan's budget names it. */
  fiscalYear: string;
  /** Planned spend since the fiscal year's first month, by order date; minor units. */
  soFar: number;
}

/**
 * The fiscal year of a month, named as in plan.json: by the year in which it starts, "2027" or "2026/27". A test holds it
 * to the engine's, which is longer.
 */
export function fiscalYearOf(month: string, startsInMonth: number): string {
  const year = Number(month.slice(0, 4)) - (Number(month.slice(5)) < startsInMonth ? 1 : 0);
  return startsInMonth === 1 ? String(year) : `${year}/${String((year + 1) % 100).padStart(2, "0")}`;
}

/** Planned spend in one currency, adding up within each fiscal year of the plan's months. */
export function spendByMonth(plan: Plan, currency: string): SpendMonth[] {
  const startsInMonth = Number(plan.policy.fiscal_year_starts ?? 1);
  const byMonth = new Map<string, number>();
  for (const order of plan.orders) {
    if (order.currency !== currency) continue;
    const month = order.orderBy.slice(0, 7);
    byMonth.set(month, (byMonth.get(month) ?? 0) + order.lineCost + order.feeShare);
  }
  let soFar = 0;
  let year = "";
  return monthsBetween(plan.horizon.from, plan.horizon.to).map((month) => {
    const fiscalYear = fiscalYearOf(month, startsInMonth);
    if (fiscalYear !== year) soFar = 0;
    year = fiscalYear;
    soFar += byMonth.get(month) ?? 0;
    return { month, fiscalYear, soFar };
  });
}
