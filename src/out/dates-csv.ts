import { csvOf } from "./csv.ts";
import { heldReasons, type StockWithHeld } from "./held-stock.ts";

/**
 * dates.csv: one line a row of dated stock, with the day by which it is to be swapped, and why it may not be used where it
 * is held. New columns go to the end.
 */
export function datesCsv(report: StockWithHeld): string {
  const reasons = heldReasons(report);
  const rows = report.datedStock.map((row, at) => ({ row, held: reasons[at] ?? null }));
  return csvOf(rows, {
    item: ({ row }) => row.item,
    lot: ({ row }) => row.lot,
    serial: ({ row }) => row.serial,
    expiry: ({ row }) => row.expiry,
    swap_by: ({ row }) => row.swapBy,
    quantity: ({ row }) => row.quantity,
    place: ({ row }) => row.place,
    chance_used: ({ row }) => row.chanceUsed,
    held: ({ held }) => held,
  });
}
