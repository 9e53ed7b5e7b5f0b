import type { Policy } from "../fleet/policy.ts";
import type { Reading } from "../sheets/reading.ts";
import type { DatedStockForecast } from "../supplies/forecast-dated-stock.ts";
import type { StockUnit } from "../supplies/stock-units.ts";
import { goodUntil } from "../supplies/unit-life.ts";
import { STANDING_CAUTIONS } from "./cautions.ts";
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

/** What `dates` tells: the plan's own rows about dated stock, without forecasting a single pack. */
export function assembleDates(reading: Reading, policy: Policy, dated: DatedStockForecast): DatesReport {
  return {
    ...planHead(reading, policy, dated.findings),
    datedStock: datedRows(dated.units),
    heldStock: heldRows(dated.units),
    openedTooLong: datedRows(dated.needing.stock.filter((unit) => openedTooLong(unit, policy))),
    crowdedMonths: crowdedRows(dated.crowdedMonths),
    swapCalendar: swapRows(dated.swapCalendar),
    moves: moveRows(dated.moves),
    ...datesBehind(dated, policy, reading.fleet.routine),
    cautions: [...STANDING_CAUTIONS, ...dated.cautions],
  };
}

function openedTooLong({ row, item }: StockUnit, policy: Policy): boolean {
  return row.quantity > 0 && row.expiry >= policy.asOf && goodUntil(row, item) < policy.asOf;
}
