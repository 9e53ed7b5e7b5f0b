import { isoFromDay, isoOrNull } from "../calendar/day.ts";
import { monthText } from "../calendar/month.ts";
import { sortBy } from "../maths/sort-by.ts";
import type { BudgetYear, OrderLine, OrderSchedule } from "../orders/types.ts";
import type { CappedSchedule, ShortMonth } from "../short/types.ts";
import type { Plan } from "./plan-schema.ts";
import { roundChance, roundUnits } from "./rounding.ts";

/** Order lines as plan rows, by the day on which they must leave, then supplier and item. */
export function orderRows(schedule: OrderSchedule): Plan["orders"] {
  return sortBy(schedule.orders.map(orderRow), (row) => [row.orderBy, row.supplier, row.item, row.id]);
}

/** The budget as plan rows, by fiscal year and currency. */
export function budgetRows(schedule: OrderSchedule): Plan["budget"] {
  return sortBy(schedule.budget.map(budgetRow), (row) => [row.fiscalYear, row.currency]);
}

/** What to defer as plan rows, in the order in which to defer. */
export function deferralRows(capped: CappedSchedule | null): Plan["deferrals"] {
  return (capped?.deferrals ?? []).map((one) => ({
    fiscalYear: one.fiscalYear,
    currency: one.currency,
    line: one.line,
    supplier: one.supplier,
    item: one.item,
    quantity: one.quantity,
    orderBy: isoFromDay(one.orderBy),
    deferredTo: isoFromDay(one.deferredTo),
    saves: one.saves,
    deviceMonthsShort: roundUnits(one.deviceMonthsShort),
  }));
}

/** Devices short as plan rows, by month. */
export function shortRows(short: readonly ShortMonth[], capped: CappedSchedule | null): Plan["short"] {
  const rows = short.map(({ month, devices, withoutBuying, withSchedule }, index) => ({
    month: monthText(month),
    devices,
    withoutBuying: shortage(withoutBuying),
    withSchedule: shortage(withSchedule),
    withinBudget: capped === null ? null : shortage(capped.short[index]!),
  }));
  return sortBy(rows, (row) => [row.month]);
}

function orderRow(line: OrderLine): Plan["orders"][number] {
  return {
    id: line.id,
    order: line.order,
    orderBy: isoFromDay(line.orderBy),
    arriveBy: isoFromDay(line.arriveBy),
    late: line.late,
    uncoveredUntil: isoOrNull(line.uncoveredUntil),
    supplier: line.supplier,
    item: line.item,
    gtin: line.gtin,
    quantity: line.quantity,
    boxes: line.boxes,
    unitPrice: line.unitPrice,
    lineCost: line.lineCost,
    feeShare: line.feeShare,
    currency: line.currency,
    covers: { from: monthText(line.covers.from), to: monthText(line.covers.to) },
    reason: line.reason,
    expectedWaste: roundUnits(line.expectedWaste),
  };
}

function budgetRow({ fiscalYear, currency, planned, p50, p80, p95, byItem }: BudgetYear): Plan["budget"][number] {
  return {
    fiscalYear,
    currency,
    planned,
    p50,
    p80,
    p95,
    byItem: sortBy(
      byItem.map((row) => ({ item: row.item, planned: row.planned, p50: row.p50, p80: row.p80, p95: row.p95 })),
      (row) => [row.item],
    ),
  };
}

function shortage({ expected, anyChance }: ShortMonth["withSchedule"]) {
  return { expected: roundUnits(expected), anyChance: roundChance(anyChance) };
}
