import type { Policy } from "../fleet/policy.ts";
import type { Reading } from "../sheets/reading.ts";
import type { DatedStockForecast } from "../supplies/forecast-dated-stock.ts";
import type { StockUnits } from "../supplies/stock-units.ts";
import { goodUntil } from "../supplies/unit-life.ts";
import { STANDING_CAUTIONS } from "./cautions.ts";
import { countRows, countUnits, type DatedCounts } from "./dated-counts.ts";
import { type DatesBehind, datesBehind } from "./dates-behind.ts";
import { type HeldRow, heldRows } from "./held-stock.ts";
import { crowdedRows, datedRows, moveRows, swapRows } from "./plan-dated.ts";
import { type PlanHead, planHead } from "./plan-head.ts";
import type { Plan } from "./plan-schema.ts";

/** The part of a plan that is about dated stock, with what stands behind it. */
export interface DatesReport
  extends PlanHead,
    DatesBehind,
    Pick<Plan, "datedStock" | "crowdedMonths" | "swapCalendar" | "moves" | "cautions"> {
  /** Rows of datedStock that are held, with the reason: they serve nothing. */
  heldStock: HeldRow[];
  /** Rows of datedStock in date whose days after opening are over. */
  openedTooLong: Plan["datedStock"];
}

/** The counts of reports whose rows need not be made for them; any other report is counted row by row. */
const countsAhead = new WeakMap<DatesReport, () => DatedCounts>();

/** What a summary tells of a report's dated stock. */
export function countsOf(report: DatesReport): DatedCounts {
  return countsAhead.get(report)?.() ?? countRows(report);
}

/**
 * What `dates` tells: the plan's own rows about dated stock, without forecasting a single pack. A row for each row of
 * stock is made when `datedStock` is first asked for, since the text does without.
 */
export function assembleDates(reading: Reading, policy: Policy, dated: DatedStockForecast): DatesReport {
  const { stock } = dated.needing;
  const report: DatesReport = {
    ...planHead(reading, policy, dated.findings),
    datedStock: [],
    heldStock: heldRows(stock),
    openedTooLong: datedRows(stock, openedTooLong(stock, policy)),
    crowdedMonths: crowdedRows(dated.crowdedMonths),
    swapCalendar: swapRows(dated.swapCalendar),
    moves: moveRows(dated.moves),
    ...datesBehind(dated, reading.fleet.routine),
    cautions: [...STANDING_CAUTIONS, ...dated.cautions],
  };
  countsAhead.set(report, () => countUnits(stock, dated.tally, policy));
  const settle = (value: DatesReport["datedStock"]) => {
    countsAhead.delete(report);
    Object.defineProperty(report, "datedStock", { value, writable: true, enumerable: true, configurable: true });
    return value;
  };
  return Object.defineProperty(report, "datedStock", {
    get: () => settle(datedRows(stock)),
    set: settle,
    enumerable: true,
    configurable: true,
  });
}

/** Numbers of the rows in date whose days after opening are over. */
function openedTooLong(stock: StockUnits, { asOf }: Policy): number[] {
  const { quantity, expiry, rows } = stock;
  // nothing is swapped later than it is good
  return stock.overdue.filter(
    (at) => quantity[at]! > 0 && expiry[at]! >= asOf && goodUntil(rows[at]!, stock.itemOf(at)) < asOf,
  );
}
