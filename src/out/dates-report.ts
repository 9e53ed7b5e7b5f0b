import type { Policy } from "../fleet/policy.ts";
import type { Reading } from "../sheets/reading.ts";
import type { DatedStockForecast } from "../supplies/forecast-dated-stock.ts";
import type { StockUnit } from "../supplies/stock-units.ts";
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
  const report: DatesReport = {
    ...planHead(reading, policy, dated.findings),
    datedStock: [],
    heldStock: heldRows(dated.units),
    openedTooLong: datedRows(dated.needing.stock.filter((unit) => openedTooLong(unit, policy))),
    crowdedMonths: crowdedRows(dated.crowdedMonths),
    swapCalendar: swapRows(dated.swapCalendar),
    moves: moveRows(dated.moves),
    ...datesBehind(dated, policy, reading.fleet.routine),
    cautions: [...STANDING_CAUTIONS, ...dated.cautions],
  };
  countsAhead.set(report, () => countUnits(dated.needing.stock, policy));
  const settle = (value: DatesReport["datedStock"]) => {
    countsAhead.delete(report);
    Object.defineProperty(report, "datedStock", { value, writable: true, enumerable: true, configurable: true });
    return value;
  };
  return Object.defineProperty(report, "datedStock", {
    get: () => settle(datedRows(dated.units)),
    set: settle,
    enumerable: true,
    configurable: true,
  });
}

function openedTooLong({ row, item }: StockUnit, policy: Policy): boolean {
  return row.quantity > 0 && row.expiry >= policy.asOf && goodUntil(row, item) < policy.asOf;
}
