import { isoFromDay } from "../calendar/day.ts";
import { monthText } from "../calendar/month.ts";
import { remembered } from "../fleet/remembered.ts";
import type { CrowdedMonth, DatedUnit, Move, SwapVisit } from "../supplies/types.ts";
import type { Plan } from "./plan-schema.ts";
import { roundChance, roundUnits } from "./rounding.ts";
import { sortBy } from "./sort-by.ts";

/** Dated stock as plan rows: by item, expiry, place, lot and serial. */
export function datedRows(units: readonly DatedUnit[]): Plan["datedStock"] {
  // few days stand in many rows
  const iso = remembered(isoFromDay);
  const inOrder = sortBy(units, ({ row, swapBy }) => [
    row.item,
    row.expiry,
    row.place,
    row.lot,
    row.serial,
    row.quantity,
    swapBy,
  ]);
  return inOrder.map(({ row, swapBy, chanceUsed }) => ({
    item: row.item,
    lot: row.lot,
    serial: row.serial,
    expiry: iso(row.expiry),
    quantity: row.quantity,
    place: row.place,
    swapBy: iso(swapBy),
    chanceUsed: roundChance(chanceUsed),
  }));
}

/** Crowded months as plan rows, by month and item. */
export function crowdedRows(crowded: readonly CrowdedMonth[]): Plan["crowdedMonths"] {
  const rows = crowded.map(({ item, month, units, evenShare, pValue, span, lots, places, says }) => ({
    item,
    month: monthText(month),
    units,
    evenShare: roundUnits(evenShare),
    pValue: roundChance(pValue),
    span: { from: monthText(span.from), to: monthText(span.to) },
    lots: sortBy(lots, (lot) => [lot]),
    places,
    says,
  }));
  return sortBy(rows, (row) => [row.month, row.item]);
}

/** Swap visits as plan rows, by month, place and item. */
export function swapRows(visits: readonly SwapVisit[]): Plan["swapCalendar"] {
  const rows = visits.map(({ month, place, item, lot, quantity, swapBy, daysGivenUp }) => ({
    month: monthText(month),
    place,
    item,
    lot,
    quantity,
    swapBy: isoFromDay(swapBy),
    daysGivenUp,
  }));
  return sortBy(rows, (row) => [row.month, row.place, row.item, row.lot, row.swapBy, row.quantity]);
}

/** Moves as plan rows, by day, places and item. */
export function moveRows(moves: readonly Move[]): Plan["moves"] {
  const rows = moves.map(({ from, to, item, lot, quantity, by, unitsSaved }) => ({
    from,
    to,
    item,
    lot,
    quantity,
    by: isoFromDay(by),
    unitsSaved: roundUnits(unitsSaved),
  }));
  return sortBy(rows, (row) => [row.by, row.from, row.to, row.item, row.lot, row.quantity]);
}
