import type { ChartConfiguration } from "chart.js";
import type { Plan } from "../../src/index.ts";
import { say } from "../strings.ts";
import { monthOptions } from "./chart-options.ts";
import type { Palette } from "./palette.ts";

/** Devices short without buying as a dashed line, with the schedule as the accent's, within a budget as a dotted one. */
export function devicesShortChart(colours: Palette, rows: Plan["short"], capped: boolean): ChartConfiguration {
  const months = rows.map((row) => row.month);
  // a point each quarter and at the end, of its line's own shape
  const points = (radius: number) => rows.map((_, at) => (at % 3 === 0 || at === rows.length - 1 ? radius : 0));
  return {
    type: "line",
    data: {
      labels: months,
      datasets: [
        {
          data: rows.map((row) => row.withoutBuying.expected),
          borderColor: colours.ink,
          backgroundColor: colours.paper,
          borderWidth: 2,
          borderDash: [6, 4],
          pointRadius: points(3.5),
        },
        {
          data: rows.map((row) => row.withSchedule.expected),
          borderColor: colours.accent,
          backgroundColor: colours.accent,
          borderWidth: 2.5,
          pointStyle: "rect",
          pointRadius: points(4),
        },
        ...(capped
          ? [
              {
                data: rows.map((row) => row.withinBudget?.expected ?? null),
                borderColor: colours.ink,
                borderWidth: 2,
                borderDash: [2, 3],
                pointRadius: 0,
              },
            ]
          : []),
      ],
    },
    options: monthOptions(colours, say.ahead.short.unit, months),
  };
}
