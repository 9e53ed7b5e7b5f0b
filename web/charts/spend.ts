import type { ChartConfiguration } from "chart.js";
import type { Plan } from "../../src/index.ts";
import { majorUnits, moneyWords, monthWords } from "../format.ts";
import { spendByMonth } from "../spend-by-month.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { bandEdges } from "./band.ts";
import { monthOptions } from "./chart-options.ts";
import { figure } from "./figure.ts";
import type { Rule } from "./rules.ts";

/** Planned spend adding up over each fiscal year, against what the year is likely to take and what is safe. */
export function spend(plan: Plan, currency: string): HTMLElement | null {
  const years = plan.budget.filter((year) => year.currency === currency);
  const rows = spendByMonth(plan, currency);
  // The caption speaks of the first whole year, since a year that the plan only begins or ends in misleads.
  const isWhole = (name: string) => rows.filter((row) => row.fiscalYear === name).length === 12;
  const shownYear = years.find((year) => isWhole(year.fiscalYear)) ?? years[0];
  if (!shownYear) return null;
  const words = say.orders.spend;
  const months = rows.map((row) => row.month);
  const money = (minor: number) => moneyWords(minor, currency, false);
  const major = (minor: number) => majorUnits(minor, currency);
  const yearOf = (name: string) => years.find((year) => year.fiscalYear === name);
  const cap = plan.policy.budget_per_fiscal_year;
  return figure({
    question: words.heading,
    unit: words.unit(currency),
    key: [
      { mark: "accent-line", label: words.planned },
      { mark: "hatch", label: words.band },
      ...(cap === null || cap === undefined ? [] : [{ mark: "dotted" as const, label: words.cap }]),
    ],
    caption: words.caption(
      words.fiscal(shownYear.fiscalYear),
      money(shownYear.planned),
      money(shownYear.p50),
      money(shownYear.p95),
    ),
    points: rows.map((row, at) => {
      const year = yearOf(row.fiscalYear);
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
    draw: (colours) => {
      const names = [...new Set(rows.map((row) => row.fiscalYear))];
      const of = (name: string, value: (row: (typeof rows)[number]) => number) =>
        rows.map((row) => (row.fiscalYear === name ? major(value(row)) : null));
      const list: Rule[] = names.flatMap((name) => {
        const inYear = rows.flatMap((row, at) => (row.fiscalYear === name ? [at] : []));
        const [from, to] = [inYear[0]! - 0.5, inYear.at(-1)! + 0.5];
        return [{ axis: "x" as const, at: from, to, label: words.fiscal(name), colour: colours.soft, width: 1 }];
      });
      if (cap !== null && cap !== undefined) {
        list.push({ axis: "y", at: Number(cap), label: words.cap, colour: colours.ink, dash: [2, 3], atEnd: true });
      }
      const options = monthOptions(colours, words.unit(currency), months, list);
      options.scales!.x!.offset = true;
      return {
        type: "line",
        data: {
          labels: months,
          datasets: names.flatMap((name) => {
            const [likely, safe] = bandEdges(
              colours,
              of(name, (row) => yearOf(row.fiscalYear)?.p50 ?? 0),
              of(name, (row) => yearOf(row.fiscalYear)?.p95 ?? 0),
            );
            return [
              {
                data: of(name, (row) => row.soFar),
                borderColor: colours.accent,
                backgroundColor: colours.accent,
                borderWidth: 2.5,
                stepped: "middle" as const,
                pointStyle: "rect" as const,
                pointRadius: rows.map((row, at) => (rows[at + 1]?.fiscalYear !== row.fiscalYear ? 4 : 0)),
              },
              // The lower edge is the likely spend, a figure of its own: it is drawn stronger.
              { ...likely, borderWidth: 1.25 },
              safe,
            ];
          }),
        },
        options,
      } as ChartConfiguration;
    },
    table: () =>
      table({
        caption: words.heading,
        rows: years.flatMap((year) => year.byItem.map((item) => ({ ...item, fiscalYear: year.fiscalYear }))),
        first: 40,
        columns: [
          { title: words.itemHeads[0]!, value: (row) => row.fiscalYear },
          { title: words.itemHeads[1]!, value: (row) => row.item, wide: true },
          ...(["planned", "p50", "p80", "p95"] as const).map((key, index) => ({
            title: words.itemHeads[index + 2]!,
            value: (row: { planned: number; p50: number; p80: number; p95: number }) => row[key],
            show: (row: { planned: number; p50: number; p80: number; p95: number }) => moneyWords(row[key], currency),
            figures: true,
          })),
        ],
      }),
  });
}
