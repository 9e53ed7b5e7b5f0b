import { countColumn, monthColumn } from "../columns.ts";
import { monthWords, numberWords } from "../format.ts";
import { type PacksDueMonth, quarterOf } from "../packs-due-by-month.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { bandEdges } from "./band.ts";
import { monthOptions } from "./chart-options.ts";
import { figure } from "./figure.ts";

/** When the packs run out: due so far with its uncertainty, and the quarter's own as bars. */
export function packsDue(rows: readonly PacksDueMonth[]): HTMLElement {
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
      table<PacksDueMonth>({
        caption: words.heading,
        rows,
        first: 60,
        sortable: false,
        columns: [
          monthColumn(words.heads[0]!, (row) => row.month),
          countColumn(words.heads[1]!, (row) => row.late),
          countColumn(words.heads[2]!, (row) => row.expected, 1),
          countColumn(words.heads[3]!, (row) => row.early),
          countColumn(words.heads[4]!, (row) => row.quarter, 1),
        ],
      }),
  });
}
