import { monthText } from "../calendar/month.ts";
import { DEMAND_CAUSES, type DemandCause, type ItemDemand } from "../demand/types.ts";
import { sortBy } from "../maths/sort-by.ts";
import type { Plan } from "./plan-schema.ts";
import { roundUnits } from "./rounding.ts";

/** The demand of all items as plan rows, by item. */
export function demandRows(demand: readonly ItemDemand[]): Plan["demand"] {
  return sortBy(demand.map(demandRow), (row) => [row.item]);
}

function demandRow(demand: ItemDemand): Plan["demand"][number] {
  const months = Array.from({ length: demand.months }, (_, month) => month);
  const inMonth = (level: number) => months.map((month) => demand.needsQuantile(month - 1, month, level));
  const upTo = (level: number) => months.map((month) => demand.needsQuantile(-1, month, level));
  return {
    item: demand.item,
    from: monthText(demand.from),
    mean: Array.from(demand.mean, roundUnits),
    p50: inMonth(0.5),
    p90: inMonth(0.9),
    cumulative: { mean: runningSum(demand.mean), p50: upTo(0.5), p80: upTo(0.8), p95: upTo(0.95) },
    causes: Object.fromEntries(
      DEMAND_CAUSES.map((cause) => [cause, Array.from(demand.causes[cause], roundUnits)]),
    ) as Record<DemandCause, number[]>,
  };
}

/** Sums before rounding, so that the last month's figure carries one rounding and not one a month. */
function runningSum(mean: Float64Array): number[] {
  let sum = 0;
  return Array.from(mean, (units) => {
    sum += units;
    return roundUnits(sum);
  });
}
