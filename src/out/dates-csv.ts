import { csvText } from "./csv.ts";
import type { Plan } from "./plan-schema.ts";

const HEADER = ["item", "lot", "serial", "expiry", "swap_by", "quantity", "place", "chance_used"];

/** dates.csv: one line a row of dated stock, with the day by which it is to be swapped. */
export function datesCsv(plan: Pick<Plan, "datedStock">): string {
  return csvText(
    HEADER,
    plan.datedStock.map((row) => [
      row.item,
      row.lot,
      row.serial,
      row.expiry,
      row.swapBy,
      row.quantity,
      row.place,
      row.chanceUsed,
    ]),
  );
}
