import { fiscalYearOfMonth } from "../calendar/fiscal-year.ts";
import { monthFromText } from "../calendar/month.ts";
import { counted, tenthsText } from "../fleet/count-text.ts";
import { NO_CURRENCY } from "../fleet/currency.ts";
import { groupedMoney } from "../fleet/money-text.ts";
import { sortBy } from "../maths/sort-by.ts";
import { horizonText } from "./horizon-text.ts";
import type { Plan } from "./plan-schema.ts";
import { hasPrices } from "./spend-known.ts";
import { budgetWords, deferralsTable, spendBlocks } from "./summary-tables.ts";
import { bullets, joinLines, section, type TextSetting, titleLine } from "./text-section.ts";
import { textTable } from "./text-table.ts";
import { wrapText } from "./text-width.ts";

/** Fiscal years told item by item; more would not fit a page. */
const YEARS_BY_ITEM = 2;

/** One page for the budget meeting: what each fiscal year takes, for what, what that buys, and what to put off. */
export function budgetText(plan: Plan, setting: TextSetting): string {
  const { width } = setting;
  const first = new Set([...new Set(plan.budget.map(({ fiscalYear }) => fiscalYear))].slice(0, YEARS_BY_ITEM));
  const years = plan.budget.filter((year) => first.has(year.fiscalYear) && hasPrices(year));
  return joinLines([
    titleLine(`Budget ${horizonText(plan)}`, setting),
    "",
    wrapText(
      "Likely is the middle of what a year may cost (P50); safe is enough in 19 years of 20 (P95). Amounts fall in the year in which the order leaves.",
      width,
    ),
    ...section("By fiscal year", plan.orders.length > 0 ? spendBlocks(plan, width) : ["No order is planned."], setting),
    ...years.flatMap((year) =>
      section(
        `${year.fiscalYear} by item${year.currency === NO_CURRENCY ? "" : `, ${year.currency}`}`,
        [itemTable(year, width)],
        setting,
      ),
    ),
    ...section("What it buys", bullets(readiness(plan), setting), setting),
    ...section(`Over the ${budgetWords(plan)}: what to defer, in this order`, deferred(plan, first, width), setting),
    ...section("Cautions", bullets(plan.cautions, setting), setting),
  ]);
}

/** What to defer in some fiscal years, and how much more there is in later ones. */
function deferred({ deferrals }: Plan, years: ReadonlySet<string>, width: number): string[] {
  const told = deferrals.filter((one) => years.has(one.fiscalYear));
  const later = deferrals.length - told.length;
  return [
    ...(told.length > 0 ? [deferralsTable(told, width)] : []),
    ...(later > 0 ? [`${counted(later, "more line", "more lines")} of later years in \`wanecast orders\`.`] : []),
  ];
}

function itemTable(year: Plan["budget"][number], width: number): string {
  type Item = (typeof year.byItem)[number];
  const money = (of: "planned" | "p50" | "p80" | "p95") => (item: Item) =>
    hasPrices(item) ? groupedMoney(item[of], year.currency) : "-";
  return textTable<Item>(
    [
      { head: "item", cell: (item) => item.item, clipTo: 20 },
      { head: "planned", align: "right", cell: money("planned") },
      { head: "likely (P50)", align: "right", cell: money("p50") },
      { head: "P80", align: "right", cell: money("p80"), dropRank: 1 },
      { head: "safe (P95)", align: "right", cell: money("p95") },
    ],
    sortBy(year.byItem, (item) => [-item.planned, item.item]),
    width,
  );
}

/** The worst month end of each fiscal year, with nothing bought, with the schedule, and within the budget. */
function readiness(plan: Plan): string[] {
  if (plan.short.every(({ devices }) => devices === 0)) return [];
  const starts = Number(plan.policy.fiscal_year_starts ?? 1);
  const years = new Map<string, Plan["short"]>();
  for (const row of plan.short) {
    const year = fiscalYearOfMonth(monthFromText(row.month)!, starts);
    years.set(year, [...(years.get(year) ?? []), row]);
  }
  return [...years].map(([year, rows]) => {
    const most = (of: (row: Plan["short"][number]) => number) => tenthsText(Math.max(...rows.map(of)));
    const devices = counted(Math.max(...rows.map((row) => row.devices)), "device is", "devices are");
    const within = rows.some((row) => row.withinBudget !== null)
      ? `, within the budget ${most((row) => row.withinBudget?.expected ?? 0)}`
      : "";
    return `${year}: at its worst month end ${most((row) => row.withoutBuying.expected)} of ${devices} expected to be short if nothing is bought, with the schedule ${most((row) => row.withSchedule.expected)}${within}.`;
  });
}
