import { csvOf } from "./csv.ts";
import type { Plan } from "./plan-schema.ts";

/** dates.csv: one line a row of dated stock, with the day by which it is to be swapped. */
export function datesCsv(plan: Pick<Plan, "datedStock">): string {
  return csvOf(plan.datedStock, {
    item: (row) => row.item,
    lot: (row) => row.lot,
    serial: (row) => row.serial,
    expiry: (row) => row.expiry,
    swap_by: (row) => row.swapBy,
    quantity: (row) => row.quantity,
    place: (row) => row.place,
    chance_used: (row) => row.chanceUsed,
  });
}
