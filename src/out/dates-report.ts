import type { Policy } from "../fleet/policy.ts";
import type { Reading } from "../sheets/reading.ts";
import type { DatedStockForecast } from "../supplies/forecast-dated-stock.ts";
import type { StockUnit } from "../supplies/stock-units.ts";
import { goodUntil } from "../supplies/unit-life.ts";
import { type UseRateRow, useRateTable } from "../supplies/use-rate-table.ts";
import { STANDING_CAUTIONS } from "./cautions.ts";
import { type HeldRow, heldRows } from "./held-stock.ts";
import { crowdedRows, datedRows, moveRows, swapRows } from "./plan-dated.ts";
import { type PlanHead, planHead } from "./plan-head.ts";
import type { Plan } from "./plan-schema.ts";
import { roundUnits } from "./rounding.ts";
import { sortBy } from "./sort-by.ts";

/** The part of a plan that is about dated stock, with what stands behind it. */
export interface DatesReport
  extends PlanHead,
    Pick<Plan, "datedStock" | "crowdedMonths" | "swapCalendar" | "moves" | "cautions"> {
  /** Rows of datedStock that are held, with the reason: they serve nothing. */
  heldStock: HeldRow[];
  /** Rows of datedStock in date whose days after opening are over. */
  openedTooLong: Plan["datedStock"];
  /** The fewest visits a month that meet every expiry, and what more of them save. */
  swapCapacity: {
    perMonth: number | null;
    smallest: number;
    enough: boolean;
    tradeOff: { perMonth: number; unitMonthsGivenUp: number }[];
  };
  /** By item and place; low and high hold the rate with chance 0.9. */
  useRates: UseRateRow[];
}

/** What `dates` tells: the plan's own rows about dated stock, without forecasting a single pack. */
export function assembleDates(reading: Reading, policy: Policy, dated: DatedStockForecast): DatesReport {
  const { perMonth, smallest, enough, tradeOff } = dated.swapCapacity;
  return {
    ...planHead(reading, policy, dated.findings),
    datedStock: datedRows(dated.units),
    heldStock: heldRows(dated.units),
    openedTooLong: datedRows(dated.needing.stock.filter((unit) => openedTooLong(unit, policy))),
    crowdedMonths: crowdedRows(dated.crowdedMonths),
    swapCalendar: swapRows(dated.swapCalendar),
    swapCapacity: { perMonth, smallest, enough, tradeOff: tradeOff() },
    moves: moveRows(dated.moves),
    useRates: rateRows(dated),
    cautions: [...STANDING_CAUTIONS, ...dated.cautions],
  };
}

function openedTooLong({ row, item }: StockUnit, policy: Policy): boolean {
  return row.quantity > 0 && row.expiry >= policy.asOf && goodUntil(row, item) < policy.asOf;
}

function rateRows({ needing }: DatedStockForecast): UseRateRow[] {
  const rows = useRateTable(needing).map((row) => ({
    ...row,
    months: roundUnits(row.months),
    unitsPerYear: roundUnits(row.unitsPerYear),
    low: roundUnits(row.low),
    high: roundUnits(row.high),
  }));
  return sortBy(rows, (row) => [row.item, row.place]);
}
