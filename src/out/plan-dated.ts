import { isoFromDay } from "../calendar/day.ts";
import { monthText } from "../calendar/month.ts";
import { groupBy } from "../fleet/group-by.ts";
import type { CrowdedMonth, DatedUnit, Move, SwapVisit } from "../supplies/types.ts";
import type { Plan } from "./plan-schema.ts";
import { roundChance, roundUnits } from "./rounding.ts";
import { compareParts, sortBy } from "./sort-by.ts";

/** Dated stock as plan rows: by item, expiry, place, lot and serial. */
export function datedRows(units: readonly DatedUnit[]): Plan["datedStock"] {
  // few days stand in many rows
  const known = new Map<number, string>();
  const iso = (day: number) => {
    const text = known.get(day) ?? isoFromDay(day);
    known.set(day, text);
    return text;
  };
  return inPlanOrder(units).map(({ row, swapBy, chanceUsed }) => ({
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

/** By item and expiry, parted by both before any two are compared: an item has many units and few days. */
function inPlanOrder(units: readonly DatedUnit[]): DatedUnit[] {
  const inOrder: DatedUnit[] = [];
  for (const ofItem of groupsInOrder(units, ({ row }) => row.item))
    for (const ofDay of groupsInOrder(ofItem, ({ row }) => row.expiry))
      for (const unit of ofDay.sort(compareUnits)) inOrder.push(unit);
  return inOrder;
}

function groupsInOrder<Key extends string | number>(
  units: readonly DatedUnit[],
  keyOf: (unit: DatedUnit) => Key,
): DatedUnit[][] {
  const groups = groupBy(units, keyOf);
  return [...groups.keys()].sort(compareParts).map((key) => groups.get(key)!);
}

/** Units of one item and expiry by place, lot, serial, quantity and swap day. */
function compareUnits(a: DatedUnit, b: DatedUnit): number {
  return (
    compareParts(a.row.place, b.row.place) ||
    compareParts(a.row.lot, b.row.lot) ||
    compareParts(a.row.serial, b.row.serial) ||
    a.row.quantity - b.row.quantity ||
    a.swapBy - b.swapBy
  );
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
