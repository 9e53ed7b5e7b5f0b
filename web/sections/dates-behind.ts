import { make } from "../dom.ts";
import type { Behind } from "../engine/messages.ts";
import { filteredTable } from "../filtered-table.ts";
import { numberWords } from "../format.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";

/** What is expected to lapse if nothing is done, by item, and what the moves save of it. */
export function lapseTable({ lapses }: Behind): HTMLElement {
  const words = say.dates.lapses;
  const saves = lapses.some(({ saved }) => saved > 0);
  return table({
    caption: words.heading,
    rows: lapses,
    columns: [
      { title: words.heads[0]!, value: (row) => row.item, wide: true },
      { title: words.heads[1]!, value: (row) => row.due, show: (row) => numberWords(row.due), figures: true },
      { title: words.heads[2]!, value: (row) => row.used, show: (row) => numberWords(row.used, 1), figures: true },
      {
        title: words.heads[3]!,
        value: (row) => row.due - row.used,
        show: (row) => numberWords(row.due - row.used, 1),
        figures: true,
      },
      ...(saves
        ? [
            {
              title: words.heads[4]!,
              value: (row: (typeof lapses)[number]) => row.saved,
              show: (row: (typeof lapses)[number]) => numberWords(row.saved, 1),
              figures: true,
            },
          ]
        : []),
    ],
  });
}

/** The places with units to swap in the plan's first year. */
export function placeTable({ places }: Behind): HTMLElement {
  const words = say.dates.places;
  return table({
    caption: words.heading,
    rows: places,
    first: 10,
    printed: 30,
    columns: [
      { title: words.heads[0]!, value: (row) => row.place, wide: true },
      { title: words.heads[1]!, value: (row) => row.overdue, figures: true },
      { title: words.heads[2]!, value: (row) => row.soon, figures: true },
      { title: words.heads[3]!, value: (row) => row.year, figures: true },
    ],
  });
}

/** What each task of the routine uses, with what is taken from common practice marked. */
export function routineTable({ routine }: Behind): HTMLElement {
  const words = say.dates.routine;
  const rolls = new Map(routine.map(({ item, minutesPerRoll }) => [item, minutesPerRoll]));
  const notes = [
    routine.some(({ assumed }) => assumed) && words.assumed,
    ...[...rolls].map(([item, minutes]) => minutes !== null && words.roll(item, numberWords(minutes))),
  ].filter((note) => note !== false);
  const rows = table({
    caption: words.heading,
    rows: routine,
    first: 10,
    printed: 30,
    columns: [
      { title: words.heads[0]!, value: (row) => row.item },
      { title: words.heads[1]!, value: (row) => row.task, wide: true },
      { title: words.heads[2]!, value: (row) => row.duty ?? words.all },
      { title: words.heads[3]!, value: (row) => row.devices, figures: true },
      { title: words.heads[4]!, value: (row) => row.perYear, figures: true },
      {
        title: words.heads[5]!,
        value: (row) => row.quantity,
        show: (row) => `${Number(row.quantity.toPrecision(2))}${row.assumed ? " *" : ""}`,
        figures: true,
      },
      {
        title: words.heads[6]!,
        value: (row) => row.unitsPerYear,
        show: (row) => numberWords(row.unitsPerYear, 1),
        figures: true,
      },
    ],
  });
  return make("div", {}, rows, notes.length > 0 && make("p", {}, notes.join(" ")));
}

/** How often each item is used at each place, with the interval that holds the rate. */
export function useTable({ useRates }: Behind): HTMLElement {
  const words = say.dates.use;
  const rate = (title: string, of: (row: (typeof useRates)[number]) => number) => ({
    title,
    value: of,
    show: (row: (typeof useRates)[number]) => numberWords(of(row), 1),
    figures: true,
  });
  return filteredTable(
    {
      caption: words.heading,
      rows: useRates,
      first: 10,
      printed: 30,
      columns: [
        { title: words.heads[0]!, value: (row) => row.item },
        { title: words.heads[1]!, value: (row) => row.place, wide: true },
        { title: words.heads[2]!, value: (row) => row.duty },
        { title: words.heads[3]!, value: (row) => row.events, figures: true },
        rate(words.heads[4]!, (row) => row.months),
        rate(words.heads[5]!, (row) => row.unitsPerYear),
        rate(words.heads[6]!, (row) => row.low),
        rate(words.heads[7]!, (row) => row.high),
        { title: words.heads[8]!, value: (row) => words.basis[row.basis] },
      ],
    },
    [
      { id: "use-item", label: words.heads[0]!, of: (row) => row.item },
      { id: "use-duty", label: words.heads[2]!, of: (row) => row.duty },
    ],
  );
}
