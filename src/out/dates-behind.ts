import type { RoutineRow } from "../fleet/rows.ts";
import { sortBy } from "../maths/sort-by.ts";
import type { DatedStockForecast } from "../supplies/forecast-dated-stock.ts";
import type { Needing } from "../supplies/item-places.ts";
import { type RoutineUse, routineUses } from "../supplies/routine-use.ts";
import { type UseRateRow, useRateTable } from "../supplies/use-rate-table.ts";
import { type HeldRow, heldRows } from "./held-stock.ts";
import { type Lapse, lapsesByItem } from "./lapses.ts";
import { madeLater } from "./made-later.ts";
import { type PlaceToSwap, placesToSwap } from "./places-to-swap.ts";
import { roundTo, roundUnits } from "./rounding.ts";

/** What stands behind a plan's dated stock, and what follows from it, beyond what plan.json holds. */
export interface DatesBehind {
  /** What is expected to lapse if nothing is done, by item. */
  lapses: Lapse[];
  /** Places with units to swap in the first year, the busiest first. */
  places: PlaceToSwap[];
  /** The fewest visits a month that meet every expiry, and what more of them save. */
  swapCapacity: {
    perMonth: number | null;
    smallest: number;
    enough: boolean;
    tradeOff: { perMonth: number; unitMonthsGivenUp: number }[];
  };
  /** Rows of the plan's dated stock that are held, with the reason: they serve nothing. */
  heldStock: HeldRow[];
  /** By item and place; low and high hold the rate with chance 0.9. */
  useRates: UseRateRow[];
  /** What each task of the routine uses. */
  routine: RoutineUse[];
}

/** What lapses, where most is to be swapped, what more visits save, and how much is used: the rates when asked for. */
export function datesBehind(
  { swapCapacity, needing, tally, moves }: DatedStockForecast,
  routine: readonly RoutineRow[],
): DatesBehind {
  const { perMonth, smallest, enough, tradeOff } = swapCapacity;
  const behind: DatesBehind = {
    lapses: lapsesByItem(needing.stock, tally, moves),
    places: placesToSwap(needing.stock, tally),
    swapCapacity: { perMonth, smallest, enough, tradeOff: tradeOff() },
    heldStock: heldRows(needing.stock),
    useRates: [],
    routine: routineRows(routine, needing),
  };
  madeLater(behind, "useRates", () => sortBy(useRateTable(needing).map(rounded), (row) => [row.item, row.place]));
  return behind;
}

/** A use rate as the report has it. */
export function rounded(row: UseRateRow): UseRateRow {
  for (const figure of ["months", "unitsPerYear", "low", "high"] as const) row[figure] = roundUnits(row[figure]);
  return row;
}

function routineRows(routine: readonly RoutineRow[], needing: Needing): RoutineUse[] {
  const rows = routineUses(routine, needing).map((row) => ({
    ...row,
    quantity: roundTo(row.quantity, 4),
    unitsPerYear: roundUnits(row.unitsPerYear),
    minutesPerRoll: row.minutesPerRoll === null ? null : roundUnits(row.minutesPerRoll),
  }));
  return sortBy(rows, ({ item, task, duty }) => [item, task, duty]);
}
