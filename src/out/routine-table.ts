import { counted, countText, tenthsText } from "../fleet/count-text.ts";
import type { DatesReport } from "./dates-report.ts";
import { textTable } from "./text-table.ts";
import { wrapText } from "./text-width.ts";

/** Parts of a unit to two digits, and more than ten to the tenth. */
function quantityText(quantity: number): string {
  return countText(Number(quantity < 10 ? quantity.toPrecision(2) : quantity.toFixed(1)));
}

/** What each task of the routine uses, with what is taken from common practice marked; no lines where there is no task. */
export function routineLines({ routine }: DatesReport, width: number): string[] {
  if (routine.length === 0) return [];
  const table = textTable<DatesReport["routine"][number]>(
    [
      { head: "item", cell: ({ item }) => item, clipTo: 10 },
      { head: "task", cell: ({ task }) => task, clipTo: 12 },
      { head: "duty", cell: ({ duty }) => duty ?? "all", clipTo: 7, dropRank: 2 },
      { head: "devices", align: "right", cell: ({ devices }) => countText(devices) },
      { head: "times a year", align: "right", cell: ({ perYear }) => String(perYear), dropRank: 1 },
      {
        head: "units a time",
        align: "right",
        cell: ({ quantity, assumed }) => `${quantityText(quantity)}${assumed ? " *" : ""}`,
      },
      { head: "units a year", align: "right", cell: ({ unitsPerYear }) => tenthsText(unitsPerYear) },
    ],
    routine,
    width,
  );
  const notes: string[] = [];
  if (routine.some(({ assumed }) => assumed))
    notes.push("* Common practice, as the sheet gives no quantity: one unit, or a strip of 10 seconds of paper.");
  const rolls = new Map(routine.map(({ item, minutesPerRoll }) => [item, minutesPerRoll]));
  for (const [item, minutes] of rolls)
    if (minutes !== null)
      notes.push(`A roll of ${item} lasts ${counted(Math.round(minutes), "minute")} of trace at 25 mm/s.`);
  return notes.length === 0 ? [table] : [table, "", ...notes.map((note) => wrapText(note, width))];
}
