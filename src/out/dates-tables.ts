import { countText } from "./count-text.ts";
import type { Plan } from "./plan-schema.ts";
import { textTable } from "./text-table.ts";

/** Swap visits: what to take out where, in which month, and the life given up by going early. */
export function swapTable(visits: Plan["swapCalendar"], width: number): string {
  return textTable<Plan["swapCalendar"][number]>(
    [
      { head: "month", cell: (visit) => visit.month },
      { head: "place", cell: (visit) => visit.place, clipTo: 10 },
      { head: "item", cell: (visit) => visit.item, clipTo: 10 },
      { head: "lot", cell: (visit) => visit.lot ?? "-", dropRank: 2 },
      { head: "units", align: "right", cell: (visit) => countText(visit.quantity) },
      { head: "swap by", cell: (visit) => visit.swapBy },
      { head: "unit-days given up", align: "right", cell: (visit) => countText(visit.daysGivenUp), dropRank: 1 },
    ],
    visits,
    width,
  );
}

/** Units that change places so that more of them are used before they lapse. */
export function moveTable(moves: Plan["moves"], width: number): string {
  return textTable<Plan["moves"][number]>(
    [
      { head: "by", cell: (move) => move.by },
      { head: "from", cell: (move) => move.from, clipTo: 10 },
      { head: "to", cell: (move) => move.to, clipTo: 10 },
      { head: "item", cell: (move) => move.item, clipTo: 10 },
      { head: "lot", cell: (move) => move.lot ?? "-", dropRank: 2 },
      { head: "units", align: "right", cell: (move) => countText(move.quantity) },
      { head: "units saved", align: "right", cell: (move) => move.unitsSaved.toFixed(2), dropRank: 1 },
    ],
    moves,
    width,
  );
}
