import type { Day } from "../calendar/day.ts";
import type { DeviceRow } from "../fleet/rows.ts";
import type { StockUnits } from "./stock-units.ts";
import type { PlaceUse } from "./use-rates.ts";

/** A place where an item is installed or consumed, with everything that will take units from it. */
export interface ItemPlace {
  key: string;
  /** null where the place is a store from which uses are logged. */
  device: DeviceRow | null;
  /** First day of the plan on which the place needs its units: as-of, or the device's in_service. */
  from: Day;
  /** Day from which it needs none any more; Infinity = open. */
  until: Day;
  /** Numbers of the rows of the units installed, in the order of their swap days. */
  stock: Int32Array;
  /** Units lacking on `from`. */
  lacking: number;
  use: PlaceUse | null;
  /** Units a year consumed on schedule, and the share of a unit already consumed at `from`. */
  routinePerYear: number;
  routineStarted: number;
}

/** Swap days of the units installed, ascending; as-of for what is overdue or held. */
export function swapDaysOf({ stock }: ItemPlace, units: StockUnits, asOf: Day): Day[] {
  const days: Day[] = [];
  for (const at of stock) {
    const day = units.rows[at]!.held === null ? Math.max(asOf, units.swapBy[at]!) : asOf;
    for (let left = units.quantity[at]!; left > 0; left--) days.push(day);
  }
  return days.sort((a, b) => a - b);
}
