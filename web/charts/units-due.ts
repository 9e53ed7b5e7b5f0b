import type { ChartConfiguration } from "chart.js";
import { countColumn, monthColumn } from "../columns.ts";
import type { DueMonth } from "../due-months.ts";
import { listWords, monthWords, numberWords } from "../format.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { monthOptions } from "./chart-options.ts";
import { figure } from "./figure.ts";

// Crowded months that a sentence can still name.
const NAMED = 4;

/** Units falling due by month, in devices and in stores, with the crowded months marked. */
export function unitsDue(rows: DueMonth[], item: string | null, marginDays: number, choices: HTMLElement): HTMLElement {
  const words = say.dates;
  const months = rows.map((row) => row.month);
  const crowded = rows.filter((row) => row.crowded.length > 0);
  const together = (row: DueMonth) => row.fitted + row.stored;
  const first = rows.indexOf(crowded[0] ?? rows.find((row) => together(row) > 0)!);
  const crowdedInWords = () =>
    crowded.length > NAMED
      ? words.crowdedMany(crowded.length)
      : listWords(
          crowded.map((row) => words.crowdedWith(monthWords(row.month), row.crowded.join(", "))),
          say.and,
        );
  return figure({
    question: words.chart,
    unit: item === null ? words.unit : say.figure.unitOf(item, words.unit),
    choices,
    key: [
      { mark: "bar", label: words.fitted },
      { mark: "light-bar", label: words.stored },
      ...(crowded.length > 0 ? [{ mark: "accent-bar" as const, label: words.crowded }] : []),
    ],
    caption: words.caption(crowded.length, marginDays, crowdedInWords()),
    points: rows.map((row, at) => ({
      at,
      says: words.at(
        monthWords(row.month),
        numberWords(together(row)),
        numberWords(row.fitted),
        row.crowded.join(", "),
      ),
    })),
    firstPoint: Math.max(0, first),
    draw: (colours) => {
      // A bracket above the bar says "crowded" without colour.
      const brackets = crowded.map((row) => ({
        axis: "y" as const,
        at: together(row) * 1.02,
        from: rows.indexOf(row) - 0.5,
        to: rows.indexOf(row) + 0.5,
        colour: colours.accent,
        width: 3,
      }));
      const options = monthOptions(colours, words.unit, months, brackets);
      options.scales!.x!.stacked = true;
      options.scales!.y!.stacked = true;
      options.scales!.y!.suggestedMax = Math.max(0, ...brackets.map(({ at }) => at));
      const tone = (row: DueMonth) => (row.crowded.length > 0 ? colours.accent : colours.soft);
      const bar = { barPercentage: 0.85, categoryPercentage: 0.95, borderWidth: 1.25, borderSkipped: false as const };
      return {
        type: "bar",
        data: {
          labels: months,
          datasets: [
            {
              data: rows.map((row) => row.fitted),
              backgroundColor: rows.map(tone),
              borderColor: rows.map(tone),
              ...bar,
            },
            {
              data: rows.map((row) => row.stored),
              backgroundColor: colours.paper,
              borderColor: rows.map(tone),
              ...bar,
            },
          ],
        },
        options,
      } as ChartConfiguration;
    },
    table: () =>
      table<DueMonth>({
        caption: words.chart,
        rows,
        first: 60,
        sortable: false,
        columns: [
          monthColumn(words.heads[0]!, (row) => row.month),
          countColumn(words.heads[1]!, (row) => row.fitted),
          countColumn(words.heads[2]!, (row) => row.stored),
          countColumn(words.heads[3]!, (row) => together(row)),
          { title: words.heads[4]!, value: (row) => row.crowded.join(", "), wide: true },
        ],
      }),
  });
}
