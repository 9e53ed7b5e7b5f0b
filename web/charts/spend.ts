import { isPriced, type Plan } from "../../src/index.ts";
import { moneyWords, monthWords } from "../format.ts";
import { spendByMonth } from "../spend-by-month.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { figure } from "./figure.ts";
import { spendChart } from "./spend-chart.ts";

type Year = Plan["budget"][number];

/** Planned spend adding up over each fiscal year, against what the year is likely to take and what is safe. */
export function spend(plan: Plan, currency: string): HTMLElement | null {
  const budget = plan.budget.filter((year) => year.currency === currency);
  const rows = spendByMonth(plan, currency);
  // The caption speaks of the first whole year, since a year that the plan only begins or ends in misleads.
  const isWhole = (name: string) => rows.filter((row) => row.fiscalYear === name).length === 12;
  const shownYear = budget.find((year) => isWhole(year.fiscalYear)) ?? budget[0];
  if (!shownYear) return null;
  const words = say.orders.spend;
  const money = (minor: number) => moneyWords(minor, currency, 0);
  const years = new Map(budget.map((year) => [year.fiscalYear, year]));
  const { budget_per_fiscal_year: limit = null, currency: named } = plan.policy;
  // as the engine takes it: the currency of what is ordered first, where none is named
  const isCapped = limit !== null && currency === (named ?? plan.orders.find(isPriced)?.currency);
  const cap = isCapped ? Number(limit) : null;
  return figure({
    question: words.heading,
    unit: words.unit(currency),
    key: [
      { mark: "accent-line", label: words.planned },
      { mark: "hatch", label: words.band },
      ...(cap === null ? [] : [{ mark: "dotted" as const, label: words.cap }]),
    ],
    caption: words.caption(
      words.fiscal(shownYear.fiscalYear),
      money(shownYear.planned),
      money(shownYear.p50),
      money(shownYear.p95),
    ),
    points: rows.map((row, at) => {
      const year = years.get(row.fiscalYear);
      return {
        at,
        says: words.at(
          monthWords(row.month),
          money(row.soFar),
          words.fiscal(row.fiscalYear),
          money(year?.p50 ?? 0),
          money(year?.p95 ?? 0),
        ),
      };
    }),
    firstPoint: Math.min(11, rows.length - 1),
    draw: (colours) => spendChart(colours, { currency, rows, years, cap }),
    table: () => spendTable(budget, currency),
  });
}

/** Each item's spend in each fiscal year. */
function spendTable(budget: readonly Year[], currency: string): HTMLElement {
  const { heading, itemHeads } = say.orders.spend;
  const rows = budget.flatMap(({ fiscalYear, byItem }) => byItem.map((item) => ({ ...item, fiscalYear })));
  return table({
    caption: heading,
    rows,
    first: 40,
    columns: [
      { title: itemHeads[0]!, value: (row) => row.fiscalYear },
      { title: itemHeads[1]!, value: (row) => row.item, wide: true },
      ...(["planned", "p50", "p80", "p95"] as const).map((key, index) => ({
        title: itemHeads[index + 2]!,
        value: (row: (typeof rows)[number]) => row[key],
        show: (row: (typeof rows)[number]) => moneyWords(row[key], currency),
        figures: true,
      })),
    ],
  });
}
