import { monthOfDay, monthText } from "../calendar/month.ts";
import type { Policy } from "../fleet/policy.ts";
import type { StockTally } from "../supplies/stock-tally.ts";
import type { StockUnits } from "../supplies/stock-units.ts";
import { notHeld, type StockWithHeld } from "./held-stock.ts";
import { datedRows } from "./plan-dated.ts";
import type { Plan } from "./plan-schema.ts";

type DatedRows = Plan["datedStock"];

/** What a summary tells of dated stock: a large fleet's rows need not be made for it. */
export interface DatedCounts {
  rows: number;
  units: number;
  /** Rows past expiry, in the plan's order; a few others may be among them. */
  expired: DatedRows;
  /** Units that serve, by item and when they are to be swapped: a month, overdue, or later than the plan. */
  due: { item: string; when: string; units: number }[];
}

export const OVERDUE = "overdue";
export const LATER = "later";

/** The counts of a report's rows. */
export function countRows(report: Pick<Plan, "asOf" | "horizon"> & StockWithHeld): DatedCounts {
  const { asOf, horizon, datedStock } = report;
  const when = (swapBy: string) =>
    swapBy < asOf ? OVERDUE : swapBy.slice(0, 7) > horizon.to ? LATER : swapBy.slice(0, 7);
  return {
    rows: datedStock.length,
    units: datedStock.reduce((sum, { quantity }) => sum + quantity, 0),
    expired: datedStock,
    due: notHeld(report).map(({ item, swapBy, quantity }) => ({ item, when: when(swapBy), units: quantity })),
  };
}

/** The same counts of a forecast's stock, before rows are made of it. */
export function countUnits(
  stock: StockUnits,
  { units, due }: StockTally,
  { asOf, horizonMonths }: Policy,
): DatedCounts {
  const first = monthOfDay(asOf);
  const when = (at: number) => (at === 0 ? OVERDUE : at > horizonMonths ? LATER : monthText(first + at - 1));
  return {
    rows: stock.size,
    units,
    expired: datedRows(
      stock,
      stock.overdue.filter((at) => stock.expiry[at]! < asOf),
    ),
    due: stock.names.flatMap(({ name: item }, number) =>
      due[number]!.flatMap((count, at) => (count === 0 ? [] : [{ item, when: when(at), units: count }])),
    ),
  };
}
