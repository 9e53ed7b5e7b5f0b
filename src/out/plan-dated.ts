import { isoFromDay } from "../calendar/day.ts";
import { monthText } from "../calendar/month.ts";
import type { CrowdedMonth, DatedUnit } from "../supplies/types.ts";
import type { Plan } from "./plan-schema.ts";
import { roundChance, roundUnits } from "./rounding.ts";
import { sortBy } from "./sort-by.ts";

/** Dated stock as plan rows: by item, expiry, place, lot and serial. */
export function datedRows(units: readonly DatedUnit[]): Plan["datedStock"] {
  const rows = units.map(({ row, swapBy, chanceUsed }) => ({
    item: row.item,
    lot: row.lot,
    serial: row.serial,
    expiry: isoFromDay(row.expiry),
    quantity: row.quantity,
    place: row.place,
    swapBy: isoFromDay(swapBy),
    chanceUsed: roundChance(chanceUsed),
  }));
  return sortBy(rows, (row) => [row.item, row.expiry, row.place, row.lot, row.serial, row.quantity, row.swapBy]);
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
