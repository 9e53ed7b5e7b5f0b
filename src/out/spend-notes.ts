import { fiscalYearOfMonth, fiscalYearStart } from "../calendar/fiscal-year.ts";
import { monthFromText, monthText } from "../calendar/month.ts";
import { counted } from "../fleet/count-text.ts";
import { NO_CURRENCY } from "../fleet/currency.ts";
import { firstTold } from "../fleet/first-told.ts";
import { listed } from "../fleet/listed.ts";
import { horizonLength } from "./horizon-text.ts";
import { isPriced } from "./line-standing.ts";
import type { Plan } from "./plan-schema.ts";

/** Items without a price told by name before the rest is counted. */
const ITEMS_TOLD = 8;

/**
 * What must be known to read a plan's spend by fiscal year: what is bought and stands in no sum, that the sums are in
 * another currency than the policy's, which years are cut short or hang on the plan's end, and where planned is above safe.
 */
export function spendNotes(plan: Plan): string[] {
  const months = monthsOfYears(plan);
  const spent = new Set(plan.budget.map(({ fiscalYear }) => fiscalYear));
  const parts = [...months].filter(([year, count]) => count < 12 && spent.has(year));
  const above = yearsAboveSafe(plan);
  const unpriced = [...itemsWithoutPrice(plan)].sort();
  return [
    ...(unpriced.length === 0
      ? []
      : [`No price is known of ${firstTold(unpriced, ITEMS_TOLD)}: what that costs stands in no sum here.`]),
    ...otherCurrency(plan),
    ...spentBefore(plan),
    ...(parts.length === 0
      ? []
      : [
          `Not the whole year lies in the plan: ${parts.map(([year, count]) => `${year} (${counted(count, "month", "months")})`).join(", ")}.`,
        ]),
    ...beyondTheEnd(plan),
    ...(above.length === 0
      ? []
      : [
          `In ${listed(above)} more is planned than the year's safe sum: each order is sized to be safe by itself, and all will hardly be needed in full.`,
        ]),
  ];
}

/** Items that are to be ordered and of which no order has a price. */
function itemsWithoutPrice({ orders }: Pick<Plan, "orders">): Set<string> {
  const priced = new Set(orders.filter(isPriced).map(({ item }) => item));
  return new Set(orders.map(({ item }) => item).filter((item) => !priced.has(item)));
}

/** A currency named in the policy that no price is in. */
function otherCurrency({ policy, budget }: Plan): string[] {
  const wanted = policy.currency;
  const used = [...new Set(budget.map(({ currency }) => currency))].filter((currency) => currency !== NO_CURRENCY);
  if (!wanted || used.length === 0 || used.some((currency) => currency === wanted)) return [];
  return [`The policy's currency is ${wanted}, the prices are in ${listed(used)}: nothing is converted.`];
}

/** Of a year's spend, the part for orders up to the plan's last month from which the year hangs on it. */
const HANGS_ON_END = 0.1;

/**
 * Years that end within the plan, and to which a longer one may add: one that ends with it, by orders that leave ahead of
 * what is needed then, or one of whose spend much is for orders up to the plan's end, which would cover more.
 */
function beyondTheEnd({ policy, horizon, budget, orders }: Plan): string[] {
  const starts = Number(policy.fiscal_year_starts ?? 1);
  const monthOf = (date: string) => monthFromText(date.slice(0, 7)) ?? 0;
  const next = monthOf(horizon.to) + 1;
  const yearOf = (month: number) => fiscalYearOfMonth(month, starts);
  const leaveAhead = orders.some((line) => monthOf(line.orderBy) < monthOf(line.covers.from));
  const found = budget.filter(({ fiscalYear, currency, planned }) => {
    if (fiscalYear === yearOf(next)) return false;
    const last = orders.filter((line) => line.covers.to === horizon.to && line.currency === currency);
    const ofYear = last.filter((line) => yearOf(monthOf(line.orderBy)) === fiscalYear);
    const spend = ofYear.reduce((sum, line) => sum + line.lineCost + line.feeShare, 0);
    return (leaveAhead && fiscalYear === yearOf(next - 1)) || (spend > 0 && spend >= HANGS_ON_END * planned);
  });
  if (found.length === 0) return [];
  const years = [...new Set(found.map(({ fiscalYear }) => fiscalYear))];
  return [`Nothing is planned for what is needed after ${horizon.to}: a longer horizon may add to ${listed(years)}.`];
}

/** A budget is a whole year's, and the plan sees nothing of what a year that has begun has already cost. */
function spentBefore({ asOf, policy, horizon: { from } }: Plan): string[] {
  const month = monthFromText(from) ?? 0;
  const starts = Number(policy.fiscal_year_starts ?? 1);
  const firstDay = `${monthText(fiscalYearStart(month, starts))}-01`;
  if (!policy.budget_per_fiscal_year || asOf <= firstDay) return [];
  return [`What was spent in ${fiscalYearOfMonth(month, starts)} before ${asOf} is not held against its budget.`];
}

/** Fiscal years in which the schedule spends more than nineteen futures of twenty take. */
function yearsAboveSafe({ budget }: Plan): string[] {
  return [...new Set(budget.filter(({ planned, p95 }) => planned > p95).map(({ fiscalYear }) => fiscalYear))];
}

/** How many months of each fiscal year lie in the plan. */
export function monthsOfYears(plan: Plan): Map<string, number> {
  const starts = Number(plan.policy.fiscal_year_starts ?? 1);
  const first = monthFromText(plan.horizon.from) ?? 0;
  const months = new Map<string, number>();
  for (let at = 0; at < horizonLength(plan); at++) {
    const year = fiscalYearOfMonth(first + at, starts);
    months.set(year, (months.get(year) ?? 0) + 1);
  }
  return months;
}
