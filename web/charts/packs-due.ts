import type { Plan } from "../../src/index.ts";
import { monthWords, numberWords } from "../format.ts";
import { monthsBetween } from "../months.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { bandEdges } from "./band.ts";
import { monthOptions } from "./chart-options.ts";
import { figure } from "./figure.ts";

/** Packs due by a month's end: expected, and counted by their late (P90) and early (P10) dates. */
export interface PacksDueMonth {
  month: string;
  expected: number;
  late: number;
  early: number;
  /** Expected in the quarter to which the month belongs. */
  quarter: number;
}

/** Counts packs due by each month of the plan; all counts are cumulative but `quarter`. */
export function packsDueByMonth(plan: Plan): PacksDueMonth[] {
  const months = monthsBetween(plan.horizon.from, plan.horizon.to);
  const countsBy = (date: "p10" | "p90") => {
    const fallDue = new Map<string, number>();
    for (const { replaceBy } of plan.packs) {
      // What was due before the plan starts counts from its first month on.
      const month = [replaceBy[date]?.slice(0, 7) ?? "9999", plan.horizon.from].sort()[1]!;
      fallDue.set(month, (fallDue.get(month) ?? 0) + 1);
    }
    let soFar = 0;
    return months.map((month) => {
      soFar += fallDue.get(month) ?? 0;
      return soFar;
    });
  };
  const [late, early] = [countsBy("p90"), countsBy("p10")];
  const expected = months.map((_, index) => plan.packs.reduce((sum, pack) => sum + (pack.dueBy.chance[index] ?? 0), 0));
  const quarters = new Map<string, number>();
  months.forEach((month, index) => {
    const step = (expected[index] ?? 0) - (expected[index - 1] ?? 0);
    quarters.set(quarterOf(month), (quarters.get(quarterOf(month)) ?? 0) + step);
  });
  return months.map((month, index) => ({
    month,
    expected: expected[index] ?? 0,
    late: late[index] ?? 0,
    early: early[index] ?? 0,
    quarter: quarters.get(quarterOf(month)) ?? 0,
  }));
}

/** When the packs run out: due so far with its uncertainty, and the quarter's own as bars. */
export function packsDue(plan: Plan, rows: readonly PacksDueMonth[]): HTMLElement | null {
  if (plan.packs.length === 0 || rows.length === 0) return null;
  const words = say.batteries.due;
  const months = rows.map((row) => row.month);
  const isMiddle = (index: number) => {
    const within = rows.flatMap((row, at) => (quarterOf(row.month) === quarterOf(months[index]!) ? [at] : []));
    return within[Math.floor((within.length - 1) / 2)] === index;
  };
  return figure({
    question: words.heading,
    unit: words.unit,
    key: [
      { mark: "line", label: words.soFar },
      { mark: "hatch", label: words.range },
      { mark: "bar", label: words.quarter },
    ],
    caption: words.caption,
    points: rows.map((row, at) => ({
      at,
      says: words.at(
        monthWords(row.month),
        numberWords(row.expected),
        numberWords(row.late),
        numberWords(row.early),
        numberWords(row.quarter, 1),
      ),
    })),
    firstPoint: Math.min(11, rows.length - 1),
    draw: (colours) => {
      const late = rows.map((row) => row.late);
      const early = rows.map((row) => row.early);
      return {
        type: "line",
        data: {
          labels: months,
          datasets: [
            {
              type: "line",
              data: rows.map((row) => row.expected),
              borderColor: colours.ink,
              borderWidth: 2.5,
              pointRadius: 0,
            },
            ...bandEdges(colours, late, early).map((edge) => ({ type: "line" as const, ...edge })),
            {
              type: "bar",
              data: rows.map((row, index) => (isMiddle(index) ? row.quarter : null)),
              backgroundColor: colours.soft,
              barPercentage: 1.8,
              categoryPercentage: 1,
            },
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
          { title: words.heads[1]!, value: (row) => numberWords(row.late), figures: true },
          { title: words.heads[2]!, value: (row) => numberWords(row.expected, 1), figures: true },
          { title: words.heads[3]!, value: (row) => numberWords(row.early), figures: true },
          { title: words.heads[4]!, value: (row) => numberWords(row.quarter, 1), figures: true },
        ],
      }),
  });
}

function quarterOf(month: string): string {
  return `${month.slice(0, 4)}-${Math.ceil(Number(month.slice(5)) / 3)}`;
}
