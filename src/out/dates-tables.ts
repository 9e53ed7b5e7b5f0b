import { counted, countText } from "./count-text.ts";
import type { DatesReport } from "./dates-report.ts";
import type { Plan } from "./plan-schema.ts";
import { textTable } from "./text-table.ts";
import { wrapText } from "./text-width.ts";

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

/** What a number of swap visits a month costs in life given up, and the fewest that meet every expiry. */
export function swapCapacityLines({ swapCapacity }: DatesReport, width: number): string[] {
  const { perMonth, smallest, tradeOff } = swapCapacity;
  const last = tradeOff.at(-1);
  if (!last) return [];
  const fewest = `A visit swaps all that falls due at one place in one month. ${counted(smallest, "visit")} a month ${smallest === 1 ? "is" : "are"} the fewest that meet every expiry.`;
  const asked =
    perMonth === null
      ? ` For the calendar of the visits, set swaps_per_month (--policy swaps_per_month=${smallest}).`
      : "";
  if (tradeOff.length === 1) return [wrapText(fewest + asked, width)];
  const table = textTable<(typeof tradeOff)[number]>(
    [
      { head: "visits a month", align: "right", cell: (point) => countText(point.perMonth) },
      { head: "unit-months of life given up", align: "right", cell: (point) => countText(point.unitMonthsGivenUp) },
    ],
    tradeOff,
    width,
  );
  return [wrapText(fewest + asked, width), "", table];
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

/** How often each item is used: over all its places, and where least and most. */
export function useTable({ useRates }: DatesReport, width: number): string {
  const byItem = new Map<string, DatesReport["useRates"]>();
  for (const row of useRates) byItem.set(row.item, [...(byItem.get(row.item) ?? []), row]);
  const sum = (rows: DatesReport["useRates"], of: (row: DatesReport["useRates"][number]) => number) =>
    rows.reduce((total, row) => total + of(row), 0);
  const edge = (rows: DatesReport["useRates"], pick: (...values: number[]) => number) =>
    rows.reduce((found, row) => pick(found, row.unitsPerYear), rows[0]!.unitsPerYear).toFixed(1);
  return textTable<[string, DatesReport["useRates"]]>(
    [
      { head: "item", cell: ([item]) => item, clipTo: 10 },
      { head: "places", align: "right", cell: ([, rows]) => countText(rows.length) },
      {
        head: "uses logged",
        align: "right",
        cell: ([, rows]) => countText(sum(rows, ({ events }) => events)),
        dropRank: 1,
      },
      {
        head: "units a year",
        align: "right",
        cell: ([, rows]) => sum(rows, ({ unitsPerYear }) => unitsPerYear).toFixed(1),
      },
      { head: "least at a place", align: "right", cell: ([, rows]) => edge(rows, Math.min) },
      { head: "most", align: "right", cell: ([, rows]) => edge(rows, Math.max) },
    ],
    [...byItem],
    width,
  );
}
