import { countColumn } from "../columns.ts";
import type { Behind } from "../engine/messages.ts";
import { numberWords } from "../format.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { commonOptions } from "./chart-options.ts";
import { figure } from "./figure.ts";

/** What a number of swap visits a month costs in life given up, from the fewest that meet every expiry on. */
export function visitsEnough({ smallest, tradeOff }: Behind["swapCapacity"]): HTMLElement | null {
  if (tradeOff.length < 2) return null;
  const words = say.dates.visits;
  return figure({
    question: words.question,
    unit: words.unit,
    key: [{ mark: "line", label: words.key }],
    caption: words.caption(smallest, numberWords(tradeOff[0]!.unitMonthsGivenUp), tradeOff.at(-1)!.perMonth),
    points: tradeOff.map(({ perMonth, unitMonthsGivenUp }, at) => ({
      at,
      says: words.at(perMonth, numberWords(unitMonthsGivenUp)),
    })),
    firstPoint: 0,
    draw: (colours) => ({
      type: "line",
      data: {
        labels: tradeOff.map(({ perMonth }) => numberWords(perMonth)),
        datasets: [
          {
            data: tradeOff.map(({ unitMonthsGivenUp }) => unitMonthsGivenUp),
            borderColor: colours.ink,
            backgroundColor: colours.ink,
            borderWidth: 2,
            pointRadius: 3.5,
          },
        ],
      },
      options: commonOptions(colours, words.unit),
    }),
    table: () =>
      table<(typeof tradeOff)[number]>({
        caption: words.question,
        rows: tradeOff,
        sortable: false,
        columns: [
          countColumn(words.heads[0]!, (row) => row.perMonth),
          countColumn(words.heads[1]!, (row) => row.unitMonthsGivenUp),
        ],
      }),
  });
}
