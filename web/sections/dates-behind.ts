import { visitsEnough } from "../charts/visits-enough.ts";
import { countColumn } from "../columns.ts";
import { make } from "../dom.ts";
import type { Behind } from "../engine/messages.ts";
import { filteredTable } from "../filtered-table.ts";
import { amountWords, numberWords } from "../format.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { answer } from "./section.ts";

type Lapse = Behind["lapses"][number];

/** What the dates rest on, and what comes of them: visits, places, lapses, uses and the routine. */
export function datesBehind(behind: Behind): (HTMLElement | null | false)[] {
  const { places, lapses, use, routine } = say.dates;
  return [
    visitsEnough(behind.swapCapacity),
    behind.places.length > 0 && answer(places.heading, placeTable(behind)),
    behind.lapses.length > 0 && answer(lapses.heading, make("p", {}, lapses.note), lapseTable(behind)),
    behind.useRates.length > 0 && answer(use.heading, make("p", {}, use.note), useTable(behind)),
    behind.routine.length > 0 && answer(routine.heading, routineTable(behind)),
  ];
}

/** What is expected to lapse if nothing is done, by item, and what the moves save of it. */
function lapseTable({ lapses }: Behind): HTMLElement {
  const words = say.dates.lapses;
  const saves = lapses.some(({ saved }) => saved > 0);
  return table<Lapse>({
    caption: words.heading,
    rows: lapses,
    columns: [
      { title: words.heads[0]!, value: (row) => row.item, wide: true },
      countColumn(words.heads[1]!, (row) => row.due),
      countColumn(words.heads[2]!, (row) => row.used, 1),
      countColumn(words.heads[3]!, (row) => row.due - row.used, 1),
      ...(saves ? [countColumn<Lapse>(words.heads[4]!, (row) => row.saved, 1)] : []),
    ],
  });
}

/** The places with units to swap in the plan's first year. */
function placeTable({ places }: Behind): HTMLElement {
  const words = say.dates.places;
  return table<Behind["places"][number]>({
    caption: words.heading,
    rows: places,
    first: 10,
    printed: 30,
    columns: [
      { title: words.heads[0]!, value: (row) => row.place, wide: true },
      countColumn(words.heads[1]!, (row) => row.overdue),
      countColumn(words.heads[2]!, (row) => row.soon),
      countColumn(words.heads[3]!, (row) => row.year),
    ],
  });
}

/** What each task of the routine uses, with what is taken from common practice marked. */
function routineTable({ routine }: Behind): HTMLElement {
  const words = say.dates.routine;
  const rolls = new Map(routine.map(({ item, minutesPerRoll }) => [item, minutesPerRoll]));
  const notes = [
    routine.some(({ assumed }) => assumed) && words.assumed,
    ...[...rolls].map(([item, minutes]) => minutes !== null && words.roll(item, numberWords(minutes))),
  ].filter((note) => note !== false);
  const rows = table<Behind["routine"][number]>({
    caption: words.heading,
    rows: routine,
    first: 10,
    printed: 30,
    columns: [
      { title: words.heads[0]!, value: (row) => row.item },
      { title: words.heads[1]!, value: (row) => row.task, wide: true },
      { title: words.heads[2]!, value: (row) => row.duty ?? words.all },
      countColumn(words.heads[3]!, (row) => row.devices),
      { title: words.heads[4]!, value: (row) => row.perYear, figures: true },
      {
        title: words.heads[5]!,
        value: (row) => row.quantity,
        show: (row) => `${amountWords(Number(row.quantity.toPrecision(2)))}${row.assumed ? " *" : ""}`,
        figures: true,
      },
      countColumn(words.heads[6]!, (row) => row.unitsPerYear, 1),
    ],
  });
  return make("div", {}, rows, notes.length > 0 && make("p", {}, notes.join(" ")));
}

/** How often each item is used at each place, with the interval that holds the rate. */
function useTable({ useRates }: Behind): HTMLElement {
  const words = say.dates.use;
  return filteredTable<Behind["useRates"][number]>(
    {
      caption: words.heading,
      rows: useRates,
      first: 10,
      printed: 30,
      columns: [
        { title: words.heads[0]!, value: (row) => row.item },
        { title: words.heads[1]!, value: (row) => row.place, wide: true },
        { title: words.heads[2]!, value: (row) => row.duty },
        countColumn(words.heads[3]!, (row) => row.events),
        countColumn(words.heads[4]!, (row) => row.months, 1),
        countColumn(words.heads[5]!, (row) => row.unitsPerYear, 1),
        countColumn(words.heads[6]!, (row) => row.low, 1),
        countColumn(words.heads[7]!, (row) => row.high, 1),
        { title: words.heads[8]!, value: (row) => words.basis[row.basis] },
      ],
    },
    [
      { id: "use-item", label: words.heads[0]!, of: (row) => row.item },
      { id: "use-duty", label: words.heads[2]!, of: (row) => row.duty },
    ],
  );
}
