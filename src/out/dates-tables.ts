import { counted, countText, tenthsText } from "../fleet/count-text.ts";
import type { DatesReport } from "./dates-report.ts";
import type { Exchange } from "./pair-moves.ts";
import type { Plan } from "./plan-schema.ts";
import { textTable } from "./text-table.ts";
import { wrapText } from "./text-width.ts";
import type { DutyUse } from "./uses-by-duty.ts";

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
  const fewest = `A visit swaps all that falls due at one place in one month. ${counted(smallest, "visit")} a month ${smallest === 1 ? "is the fewest that meets" : "are the fewest that meet"} every expiry.`;
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

/** Exchanges for a driver: what goes out to the second place, what comes back to the first, and what both save. */
export function exchangeTable(exchanges: readonly Exchange[], width: number): string {
  return textTable<Exchange>(
    [
      { head: "by", cell: ({ by }) => by },
      { head: "from", cell: ({ from }) => from, clipTo: 8 },
      { head: "to", cell: ({ to }) => to, clipTo: 8 },
      { head: "item", cell: ({ item }) => item, clipTo: 8 },
      { head: "out", cell: ({ out }) => lotsText(out), clipTo: 7 },
      { head: "back", cell: ({ back }) => lotsText(back), clipTo: 7 },
      { head: "saved", align: "right", cell: ({ unitsSaved }) => unitsSaved.toFixed(2), dropRank: 1 },
    ],
    exchanges,
    width,
  );
}

/** Units by lot: `2 A2705, 1 A2811`; a lot that is not known is `1 of no lot`. */
function lotsText(lots: Exchange["out"]): string {
  if (lots.length === 0) return "-";
  return lots.map(({ lot, quantity }) => `${countText(quantity)} ${lot ?? "of no lot"}`).join(", ");
}

/** How often each item is used, by duty: over all its places, at the one that uses least and most, and how sure that is. */
export function useTable(uses: readonly DutyUse[], width: number): string {
  const range = (least: number, most: number) => {
    const [from, to] = [least.toFixed(1), most.toFixed(1)];
    return from === to ? from : `${from} to ${to}`;
  };
  return textTable<DutyUse>(
    [
      { head: "item", cell: ({ item }) => item, clipTo: 10 },
      { head: "duty", cell: ({ duty }) => duty ?? "-", clipTo: 7 },
      { head: "places", align: "right", cell: ({ places }) => countText(places) },
      { head: "uses logged", align: "right", cell: ({ events }) => eventsText(events), dropRank: 2 },
      { head: "units a year", align: "right", cell: ({ unitsPerYear }) => tenthsText(unitsPerYear), dropRank: 1 },
      { head: "at a place", align: "right", cell: ({ least, most }) => range(least, most) },
      { head: "9 in 10 within", align: "right", cell: ({ low, high }) => range(low, high) },
    ],
    uses,
    width,
  );
}

/** Uses logged; those of a site, shared among its devices, may leave a place with a part of one. */
function eventsText(events: number): string {
  return Number.isInteger(events) ? countText(events) : tenthsText(events);
}
