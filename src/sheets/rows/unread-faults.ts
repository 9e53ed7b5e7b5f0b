import type { SheetKind } from "../../fleet/columns.ts";
import { shortened } from "../../fleet/shortened.ts";
import type { FindingLog } from "../finding-log.ts";
import type { Cell, GridRow } from "../grid.ts";
import type { Table } from "../tables/table.ts";
import { cellText, MAX_TYPED_CHARACTERS } from "../values/cell-text.ts";
import { speaksOfFault } from "../values/fault-words.ts";
import { columnName } from "./column-name.ts";
import type { Entry } from "./entry.ts";

/** Sheets that list what the fleet relies on; a log's remarks tell of what was. */
const OF_THINGS: ReadonlySet<SheetKind> = new Set(["devices", "packs", "dated_stock"]);

/**
 * Findings for remarks that speak of a fault, in columns that are not read, of things that have not left the fleet: the
 * plan would count on them as on any other.
 *
 * @param unread  columns from which nothing is read
 */
export function noteUnreadFaults(table: Table, unread: readonly number[], entries: readonly Entry[], log: FindingLog) {
  const { file, sheet } = table.grid;
  for (const column of unread) {
    const faults = new Set<Cell>();
    for (const { cells } of table.rows) {
      const cell = cells[column];
      if (
        typeof cell === "string" &&
        cell.length <= MAX_TYPED_CHARACTERS * 4 &&
        !faults.has(cell) &&
        speaksOfFault(cell)
      )
        faults.add(cell);
    }
    if (faults.size === 0) continue;
    for (const { row, values, sheet: of } of entries) {
      if (!OF_THINGS.has(of.kind) || (values.retired ?? null) !== null) continue;
      const { cells, line } = table.rows[row] as GridRow;
      const cell = cells[column] ?? null;
      if (!faults.has(cell)) continue;
      const value = cellText(cell);
      log.add("fault-unread", { file, sheet, line, column: column + 1, value }, () => ({
        message: `"${shortened(value)}" in column ${columnName(table, column)} speaks of a fault, and the column is not read.`,
      }));
    }
  }
}
