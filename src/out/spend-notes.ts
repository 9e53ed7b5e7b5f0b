import { fiscalYearOfMonth } from "../calendar/fiscal-year.ts";
import { monthFromText } from "../calendar/month.ts";
import { counted } from "../fleet/count-text.ts";
import { listed } from "../fleet/first-told.ts";
import { horizonLength } from "./horizon-text.ts";
import type { Plan } from "./plan-schema.ts";

/** What must be known to compare the fiscal years of a plan's spend: which are cut short, and where planned is above safe. */
export function spendNotes(plan: Plan): string[] {
  const months = monthsOfYears(plan);
  const spent = new Set(plan.budget.map(({ fiscalYear }) => fiscalYear));
  const parts = [...months].filter(([year, count]) => count < 12 && spent.has(year));
  const above = yearsAboveSafe(plan);
  return [
    ...(parts.length === 0
      ? []
      : [
          `Not the whole year lies in the plan: ${parts.map(([year, count]) => `${year} (${counted(count, "month", "months")})`).join(", ")}.`,
        ]),
    ...(above.length === 0
      ? []
      : [
          `In ${listed(above)} more is planned than the year's safe sum: each item is bought safely by itself, and hardly will all need their most at once.`,
        ]),
  ];
}

/** Fiscal years in which the schedule spends more than nineteen futures of twenty take. */
export function yearsAboveSafe({ budget }: Pick<Plan, "budget">): string[] {
  return [...new Set(budget.filter(({ planned, p95 }) => planned > p95).map(({ fiscalYear }) => fiscalYear))];
}

/** How many months of each fiscal year lie in the plan. */
function monthsOfYears(plan: Plan): Map<string, number> {
  const starts = Number(plan.policy.fiscal_year_starts ?? 1);
  const first = monthFromText(plan.horizon.from) ?? 0;
  const months = new Map<string, number>();
  for (let at = 0; at < horizonLength(plan); at++) {
    const year = fiscalYearOfMonth(first + at, starts);
    months.set(year, (months.get(year) ?? 0) + 1);
  }
  return months;
}
