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
 * Units that fall due (by their swap-by day) in each month of the plan, without those already overdue. A place is a
 * device where the devices sheet knows it; else a store.
 *
 * @param stock  the plan's dated stock that is not held
 * @param item   one item only, or null for all
 */
export function unitsDueByMonth(
  plan: Plan,
  reading: Reading,
  stock: Plan["datedStock"],
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
  for (const unit of stock) {
    const row = byMonth.get(unit.swapBy.slice(0, 7));
    if (!row || unit.swapBy < plan.asOf || (item !== null && unit.item !== item)) continue;
    if (unit.place !== null && devices.has(nameKey(unit.place))) row.fitted += unit.quantity;
    else row.stored += unit.quantity;
  }
  for (const crowd of plan.crowdedMonths) {
    if (item === null || crowd.item === item) byMonth.get(crowd.month)?.crowded.push(crowd.item);
  }
  return months;
}
