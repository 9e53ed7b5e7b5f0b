import type { ColumnSpec } from "../../fleet/columns.ts";
import type { FindingLog } from "../finding-log.ts";
import type { GridRow } from "../grid.ts";
import type { Table } from "../tables/table.ts";
import { textAt } from "../values/cell-text.ts";
import { Problem } from "../values/problem.ts";
import { columnName } from "./column-name.ts";
import { differ } from "./differ.ts";

/** What heads the count that settles what others found. */
const SETTLES = /^(recount|final)/i;

/**
 * Reads a field from several columns that hold copies of it: the first value, and null where another differs; of counts the one
 * that settles them.
 *
 * @param read  the value of the column at a place among them, null or a Problem
 */
export function copiesReader(
  table: Table,
  spec: ColumnSpec,
  columns: readonly number[],
  read: (record: GridRow, at: number) => unknown,
  log: FindingLog,
): (record: GridRow) => unknown {
  const { file, sheet } = table.grid;
  const settling = columns.findIndex((column) => SETTLES.test(table.header[column] ?? ""));
  return (record) => {
    const settled = settling === -1 ? null : read(record, settling);
    if (settled !== null) return settled;
    let kept: unknown = null;
    let from = -1;
    for (const [at, column] of columns.entries()) {
      const value = read(record, at);
      if (value === null || value instanceof Problem) continue;
      if (from === -1) {
        kept = value;
        from = column;
      } else if (differ(kept, value)) {
        const [one, two] = [from, column];
        const place = { file, sheet, line: record.line, column: two + 1, value: textAt(record, two) };
        log.add("copies-disagree", place, () => ({
          message: `Columns ${columnName(table, one)} and ${columnName(table, two)} both mean ${spec.name} and hold different values.`,
        }));
        return null;
      }
    }
    return kept;
  };
}
