import { countText, tenthsText } from "../fleet/count-text.ts";
import type { DatesReport } from "./dates-report.ts";
import type { Lapse } from "./lapses.ts";
import { textTable } from "./text-table.ts";

/** What is expected to lapse if nothing is done, by item, as a table; null where nothing falls due. */
export function lapseTable({ lapses, moves }: DatesReport, width: number): string | null {
  if (lapses.length === 0) return null;
  return textTable<Lapse>(
    [
      { head: "item", cell: ({ item }) => item, clipTo: 10 },
      { head: "units due", align: "right", cell: ({ due }) => countText(due) },
      { head: "used before", align: "right", cell: ({ used }) => tenthsText(used) },
      { head: "lapse unused", align: "right", cell: ({ due, used }) => tenthsText(due - used) },
      ...(moves.length > 0
        ? [{ head: "moves save", align: "right" as const, cell: ({ saved }: Lapse) => tenthsText(saved) }]
        : []),
    ],
    lapses,
    width,
  );
}
