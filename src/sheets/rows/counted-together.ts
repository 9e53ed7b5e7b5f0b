import type { FindingLog } from "../finding-log.ts";
import type { Output, Table } from "../tables/table.ts";
import { columnName } from "./column-name.ts";
import type { Entry } from "./entry.ts";

/** The column (0-based) that counts all of a line's lots of an item together; -1 where there is none. */
export function countsTogether(outputs: readonly Output[]): number {
  const lots = outputs.filter(({ sheet }) => sheet.kind === "dated_stock");
  const counts = lots.map(({ fields }) => fields.find(({ spec }) => spec.field === "quantity")?.columns[0] ?? -1);
  const [count = -1] = counts;
  return lots.length > 1 && counts.every((column) => column === count) ? count : -1;
}

/**
 * Parts a count of several lots, of which nobody says how many there are of each: one of each lot, and the rest of the
 * lot that expires first.
 */
export function partCount(lots: readonly Entry[], table: Table, column: number, log: FindingLog): void {
  const [first, ...later] = [...lots].sort((a, b) => Number(a.values.expiry) - Number(b.values.expiry));
  const count = first?.values.quantity;
  if (!first || later.length === 0 || typeof count !== "number") return;
  for (const { values } of later) values.quantity = Math.min(1, count);
  first.values.quantity = Math.max(Math.min(1, count), count - later.length);
  if (count === lots.length) return;
  const { file, sheet, line } = first.values.source;
  const message = `Column ${columnName(table, column)} counts several lots together: one was taken for each, and the rest for the lot that expires first.`;
  log.add("lots-counted-together", { file, sheet, line, column: column + 1, value: String(count) }, () => ({
    message,
  }));
}
