import type { Plan, Reading } from "../src/index.ts";
import { monthsBetween } from "./months.ts";
import { nameKey } from "./name-key.ts";

export interface DueMonth {
  month: string;
  /** Units in devices. */
  fitted: number;
  /** Units in stores. */
  stored: number;
  /** Items that make this month crowded. */
  crowded: string[];
}

/**
 * Units that fall due (by their swap-by day) in each month of the plan, without those already overdue, and those that are
 * held, which serve nothing. A place is a device where the devices sheet knows it; else a store.
 *
 * @param held  which of the plan's rows are held
 * @param item  one item only, or null for all
 */
export function unitsDueByMonth(
  plan: Plan,
  reading: Reading,
  held: Plan["datedStock"],
  item: string | null,
): DueMonth[] {
  const devices = new Set(reading.fleet.devices.map((row) => nameKey(row.device)));
  const months = monthsBetween(plan.horizon.from, plan.horizon.to).map((month) => ({
    month,
    fitted: 0,
    stored: 0,
    crowded: [] as string[],
  }));
  const byMonth = new Map(months.map((row) => [row.month, row]));
  const count = (rows: Plan["datedStock"], sign: 1 | -1) => {
    for (const unit of rows) {
      const row = byMonth.get(unit.swapBy.slice(0, 7));
      if (!row || unit.swapBy < plan.asOf || (item !== null && unit.item !== item)) continue;
      row[unit.place !== null && devices.has(nameKey(unit.place)) ? "fitted" : "stored"] += sign * unit.quantity;
    }
  };
  count(plan.datedStock, 1);
  count(held, -1);
  for (const crowd of plan.crowdedMonths) {
    if (item === null || crowd.item === item) byMonth.get(crowd.month)?.crowded.push(crowd.item);
  }
  return months;
}
