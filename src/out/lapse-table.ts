import { countText } from "./count-text.ts";
import type { DatedRun } from "./dated-runs.ts";
import type { DatesReport } from "./dates-report.ts";
import { sortBy } from "./sort-by.ts";
import { textTable } from "./text-table.ts";

/** Units of an item that reach their swap date inside the horizon, and what is expected to become of them. */
interface Lapse {
  item: string;
  due: number;
  used: number;
  saved: number;
}

/** What is expected to lapse if nothing is done, by item, and how much of it the moves save. */
export function lapseTable(
  { asOf, horizon, moves }: DatesReport,
  runs: readonly DatedRun[],
  width: number,
): string | null {
  const items = new Map<string, Lapse>();
  for (const { item, swapBy, units, used } of runs) {
    if (swapBy < asOf || swapBy.slice(0, 7) > horizon.to) continue;
    const found = items.get(item) ?? { item, due: 0, used: 0, saved: 0 };
    found.due += units;
    found.used += used;
    items.set(item, found);
  }
  for (const { item, unitsSaved } of moves) {
    const found = items.get(item);
    if (found) found.saved += unitsSaved;
  }
  if (items.size === 0) return null;
  return textTable<Lapse>(
    [
      { head: "item", cell: ({ item }) => item, clipTo: 10 },
      { head: "units due", align: "right", cell: ({ due }) => countText(due) },
      { head: "used before", align: "right", cell: ({ used }) => used.toFixed(1) },
      { head: "lapse unused", align: "right", cell: ({ due, used }) => (due - used).toFixed(1) },
      ...(moves.length > 0
        ? [{ head: "moves save", align: "right" as const, cell: ({ saved }: Lapse) => saved.toFixed(1) }]
        : []),
    ],
    sortBy([...items.values()], ({ item }) => [item]),
    width,
  );
}
