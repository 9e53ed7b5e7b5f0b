import { knowsNothing, type Plan } from "../../src/index.ts";
import { chanceWords, monthWords, numberWords } from "../format.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { monthOptions } from "./chart-options.ts";
import { figure } from "./figure.ts";

const YEAR = 12;
// From here on a decimal says nothing that matters.
const MANY = 9.95;

function inWords(devices: number): string {
  return numberWords(devices, devices < MANY ? 1 : 0);
}

/** How many devices would be short, month by month, with and without the schedule. */
export function devicesShort(plan: Plan): HTMLElement | null {
  const rows = plan.short;
  const last = rows.at(-1);
  if (!last || last.devices === 0 || knowsNothing(plan)) return null;
  const words = say.ahead.short;
  const capped = rows.some((row) => row.withinBudget !== null);
  const months = rows.map((row) => row.month);
  const year = rows[Math.min(YEAR, rows.length) - 1]!;
  const worst = rows.reduce((most, row) => (row.withSchedule.expected > most.withSchedule.expected ? row : most));
  return figure({
    question: words.heading,
    unit: words.unit,
    key: [
      { mark: "dashed", label: words.without },
      { mark: "accent-line", label: words.with },
      ...(capped ? [{ mark: "dotted" as const, label: words.within }] : []),
    ],
    caption:
      words.caption(
        last.devices,
        monthWords(year.month),
        inWords(year.withoutBuying.expected),
        monthWords(last.month),
        inWords(last.withoutBuying.expected),
      ) +
      (worst.withSchedule.expected < 1
        ? words.never
        : words.worst(inWords(worst.withSchedule.expected), monthWords(worst.month))),
    points: rows.map((row, at) => ({
      at,
      says: words.at(
        monthWords(row.month),
        numberWords(row.withoutBuying.expected, 1),
        numberWords(row.withSchedule.expected, 1),
        chanceWords(row.withSchedule.anyChance),
        row.withinBudget && numberWords(row.withinBudget.expected, 1),
      ),
    })),
    firstPoint: Math.min(11, rows.length - 1),
    draw: (colours) => {
      const every = (index: number) => index % 3 === 0 || index === rows.length - 1;
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
              pointRadius: rows.map((_, index) => (every(index) ? 3.5 : 0)),
            },
            {
              data: rows.map((row) => row.withSchedule.expected),
              borderColor: colours.accent,
              backgroundColor: colours.accent,
              borderWidth: 2.5,
              pointStyle: "rect",
              pointRadius: rows.map((_, index) => (every(index) ? 4 : 0)),
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
        options: monthOptions(colours, words.unit, months),
      };
    },
    table: () =>
      table({
        caption: words.heading,
        rows,
        first: 60,
        sortable: false,
        columns: [
          { title: words.heads[0]!, value: (row) => row.month, show: (row) => monthWords(row.month) },
          { title: words.heads[1]!, value: (row) => numberWords(row.withoutBuying.expected, 1), figures: true },
          { title: words.heads[2]!, value: (row) => chanceWords(row.withoutBuying.anyChance), figures: true },
          { title: words.heads[3]!, value: (row) => numberWords(row.withSchedule.expected, 1), figures: true },
          { title: words.heads[4]!, value: (row) => chanceWords(row.withSchedule.anyChance), figures: true },
          ...(capped
            ? [
                {
                  title: words.heads[5]!,
                  value: (row: (typeof rows)[number]) =>
                    row.withinBudget === null ? null : numberWords(row.withinBudget.expected, 1),
                  figures: true,
                },
              ]
            : []),
        ],
      }),
  });
}
