import type { ChartConfiguration } from "chart.js";
import type { Plan } from "../../src/index.ts";
import { majorUnits } from "../format.ts";
import type { SpendMonth } from "../spend-by-month.ts";
import { say } from "../strings.ts";
import { bandEdges } from "./band.ts";
import { monthOptions } from "./chart-options.ts";
import type { Palette } from "./palette.ts";
import type { Rule } from "./rules.ts";

/** What is drawn of the spend in one currency. */
export interface DrawnSpend {
  currency: string;
  rows: readonly SpendMonth[];
  /** Of each fiscal year, in minor units: what it is likely to take, and what is safe. */
  years: ReadonlyMap<string, Plan["budget"][number]>;
  /** What a year may cost, in major units; null where nothing says so. */
  cap: number | null;
}

/** Spend adding up over each fiscal year as a line, the year's band behind it, the years and the cap as rules. */
export function spendChart(colours: Palette, { currency, rows, years, cap }: DrawnSpend): ChartConfiguration {
  const words = say.orders.spend;
  const names = [...new Set(rows.map((row) => row.fiscalYear))];
  const of = (name: string, value: (row: SpendMonth) => number) =>
    rows.map((row) => (row.fiscalYear === name ? majorUnits(value(row), currency) : null));
  const months = rows.map((row) => row.month);
  const list = [...names.map((name) => yearRule(colours, name, rows)), ...capRule(colours, cap)];
  const options = monthOptions(colours, words.unit(currency), months, list);
  options.scales!.x!.offset = true;
  return {
    type: "line",
    data: {
      labels: months,
      datasets: names.flatMap((name) => {
        const [likely, safe] = bandEdges(
          colours,
          of(name, () => years.get(name)?.p50 ?? 0),
          of(name, () => years.get(name)?.p95 ?? 0),
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
}

/** The upright rule where a fiscal year begins, with its name. */
function yearRule(colours: Palette, name: string, rows: readonly SpendMonth[]): Rule {
  const inYear = rows.flatMap((row, at) => (row.fiscalYear === name ? [at] : []));
  const label = say.orders.spend.fiscal(name);
  return { axis: "x", at: inYear[0]! - 0.5, to: inYear.at(-1)! + 0.5, label, colour: colours.soft, width: 1 };
}

function capRule(colours: Palette, cap: number | null): Rule[] {
  const label = say.orders.spend.cap;
  return cap === null ? [] : [{ axis: "y", at: cap, label, colour: colours.ink, dash: [2, 3], atEnd: true }];
}
