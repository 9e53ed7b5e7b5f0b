import type { Policy } from "../fleet/policy.ts";
import type { Reading } from "../sheets/reading.ts";
import type { DatedStockForecast } from "../supplies/forecast-dated-stock.ts";
import type { StockUnits } from "../supplies/stock-units.ts";
import { goodUntil } from "../supplies/unit-life.ts";
import { eachUseRate } from "../supplies/use-rate-table.ts";
import { STANDING_CAUTIONS } from "./cautions.ts";
import { countRows, countUnits, type DatedCounts } from "./dated-counts.ts";
import { type DatesBehind, datesBehind, rounded } from "./dates-behind.ts";
import { isUnmade, madeLater } from "./made-later.ts";
import { crowdedRows, datedRows, moveRows, swapRows } from "./plan-dated.ts";
import { type PlanHead, planHead } from "./plan-head.ts";
import type { Plan } from "./plan-schema.ts";
import { type DutyUse, usesByDuty } from "./uses-by-duty.ts";

/** The part of a plan that is about dated stock, with what stands behind it. */
export interface DatesReport
  extends PlanHead,
    DatesBehind,
    Pick<Plan, "datedStock" | "crowdedMonths" | "swapCalendar" | "moves" | "cautions"> {
  /** Rows of datedStock in date whose days after opening are over. */
  openedTooLong: Plan["datedStock"];
}

/** The forecast behind a report, which tells what a summary needs of it before its rows are made. */
const behindReport = new WeakMap<DatesReport, { dated: DatedStockForecast; policy: Policy }>();

/** What a summary tells of a report's dated stock. */
export function countsOf(report: DatesReport): DatedCounts {
  const behind = behindReport.get(report);
  if (!behind || !isUnmade(report, "datedStock")) return countRows(report);
  return countUnits(behind.dated.needing.stock, behind.dated.tally, behind.policy);
}

/** What a summary tells of how a report's items are used. */
export function usesOf(report: DatesReport): DutyUse[] {
  const behind = behindReport.get(report);
  return usesByDuty((take) => {
    if (!behind || !isUnmade(report, "useRates")) report.useRates.forEach(take);
    else eachUseRate(behind.dated.needing, (row) => take(rounded(row)));
  });
}

/**
 * What `dates` tells: the plan's own rows about dated stock, without forecasting a single pack. A row for each row of
 * stock, and one for each place that uses an item, are made when they are first asked for, since the text does without.
 */
export function assembleDates(reading: Reading, policy: Policy, dated: DatedStockForecast): DatesReport {
  const { stock } = dated.needing;
  const behind = datesBehind(dated, reading.fleet.routine);
  const { lapses, places, swapCapacity, routine } = behind;
  const report: DatesReport = {
    ...planHead(reading, policy, dated.findings),
    datedStock: [],
    heldStock: behind.heldStock,
    openedTooLong: datedRows(stock, openedTooLong(stock, policy)),
    crowdedMonths: crowdedRows(dated.crowdedMonths),
    swapCalendar: swapRows(dated.swapCalendar),
    moves: moveRows(dated.moves),
    lapses,
    places,
    swapCapacity,
    useRates: [],
    routine,
    cautions: [...STANDING_CAUTIONS, ...dated.cautions],
  };
  madeLater(report, "datedStock", () => datedRows(stock));
  madeLater(report, "useRates", () => behind.useRates);
  behindReport.set(report, { dated, policy });
  return report;
}

/** Numbers of the rows in date whose days after opening are over. */
function openedTooLong(stock: StockUnits, { asOf }: Policy): number[] {
  const { quantity, expiry, rows } = stock;
  // nothing is swapped later than it is good
  return stock.overdue.filter(
    (at) => quantity[at]! > 0 && expiry[at]! >= asOf && goodUntil(rows[at]!, stock.itemOf(at)) < asOf,
  );
}
