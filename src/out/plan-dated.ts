import { isoFromDay } from "../calendar/day.ts";
import { monthText } from "../calendar/month.ts";
import { remembered } from "../fleet/remembered.ts";
import { sortBy } from "../maths/sort-by.ts";
import type { StockUnits } from "../supplies/stock-units.ts";
import type { CrowdedMonth, Move, SwapVisit } from "../supplies/types.ts";
import type { Plan } from "./plan-schema.ts";
import { roundChance, roundUnits } from "./rounding.ts";

/**
 * Dated stock as plan rows: by item, expiry, place, lot and serial.
 *
 * @param numbers  of the rows wanted
 */
export function datedRows(
  { rows, swapBy, chanceUsed }: StockUnits,
  numbers: readonly number[] = [...rows.keys()],
): Plan["datedStock"] {
  // few days stand in many rows
  const iso = remembered(isoFromDay);
  const inOrder = sortBy(numbers, (at) => {
    const { item, expiry, place, lot, serial, quantity } = rows[at]!;
    return [item, expiry, place, lot, serial, quantity, swapBy[at]!];
  });
  return inOrder.map((at) => {
    const { item, lot, serial, expiry, quantity, place } = rows[at]!;
    return {
      item,
      lot,
      serial,
      expiry: iso(expiry),
      quantity,
      place,
      swapBy: iso(swapBy[at]!),
      chanceUsed: roundChance(chanceUsed[at]!),
    };
  });
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
