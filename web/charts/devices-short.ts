import { knowsNothing, type Plan } from "../../src/index.ts";
import { chanceColumn, countColumn, monthColumn } from "../columns.ts";
import { chanceWords, monthWords, numberWords } from "../format.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { devicesShortChart } from "./devices-short-chart.ts";
import { figure } from "./figure.ts";

const YEAR = 12;
// From here on a decimal says nothing that matters.
const MANY = 9.95;

type Rows = Plan["short"];

/** How many devices would be short, month by month, with and without the schedule. */
export function devicesShort(plan: Plan): HTMLElement | null {
  const rows = plan.short;
  if (rows.every(({ devices }) => devices === 0) || knowsNothing(plan)) return null;
  const words = say.ahead.short;
  const capped = rows.some((row) => row.withinBudget !== null);
  return figure({
    question: words.heading,
    unit: words.unit,
    key: [
      { mark: "dashed", label: words.without },
      { mark: "accent-line", label: words.with },
      ...(capped ? [{ mark: "dotted" as const, label: words.within }] : []),
    ],
    caption: captionOf(rows),
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
    draw: (colours) => devicesShortChart(colours, rows, capped),
    table: () => shortTable(rows, capped),
  });
}

/** How many are short after a year and at the end without buying, and at worst with the schedule. */
function captionOf(rows: Rows): string {
  const words = say.ahead.short;
  const last = rows.at(-1)!;
  const year = rows[YEAR - 1] ?? last;
  const worst = rows.reduce((most, row) => (row.withSchedule.expected > most.withSchedule.expected ? row : most));
  const byEnd = inWords(last.withoutBuying.expected);
  const without = words.caption(
    year.devices,
    inWords(year.withoutBuying.expected),
    monthWords(year.month),
    last.devices === year.devices ? byEnd : words.ofThen(byEnd, last.devices),
    monthWords(last.month),
  );
  const { expected } = worst.withSchedule;
  return without + (expected < 1 ? words.never : words.worst(inWords(expected), monthWords(worst.month)));
}

/** Tenths of a few, where there are any: of two devices two are short, not 2.0. */
function inWords(devices: number): string {
  const isWhole = devices > 1.5 && Math.round(devices * 10) % 10 === 0;
  return numberWords(devices, devices < MANY && !isWhole ? 1 : 0);
}

function shortTable(rows: Rows, capped: boolean): HTMLElement {
  const { heading, heads } = say.ahead.short;
  return table<Rows[number]>({
    caption: heading,
    rows,
    first: 60,
    sortable: false,
    columns: [
      monthColumn(heads[0]!, (row) => row.month),
      countColumn(heads[1]!, (row) => row.withoutBuying.expected, 1),
      chanceColumn(heads[2]!, (row) => row.withoutBuying.anyChance),
      countColumn(heads[3]!, (row) => row.withSchedule.expected, 1),
      chanceColumn(heads[4]!, (row) => row.withSchedule.anyChance),
      ...(capped
        ? [
            {
              title: heads[5]!,
              value: ({ withinBudget }: Rows[number]) => withinBudget && numberWords(withinBudget.expected, 1),
              figures: true,
            },
          ]
        : []),
    ],
  });
}
