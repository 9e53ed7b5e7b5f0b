import type { ColumnSpec } from "../../fleet/columns.ts";
import type { FindingLog } from "../finding-log.ts";
import type { Cell } from "../grid.ts";
import type { Table } from "../tables/table.ts";
import { cellText } from "../values/cell-text.ts";
import { saysPastUse } from "../values/fault-words.ts";
import type { Problem } from "../values/problem.ts";
import { wrongCell } from "./wrong-cell.ts";

/** What an item's name may tell where its own column does not. */
const TOLD_BY_NAMES: ReadonlySet<string> = new Set(["kind"]);

/** Problems with a measuring cell that make its whole record absurd. */
const ABSURD = new Set(["number-out-of-range", "number-not-whole"]);

/** Notes what is wrong with a cell; gives the problem back where the record cannot stand with it. */
export type Complain = (problem: Problem, cell: Cell, column: number, line: number) => Problem | null;

/** What complains of the cells of one field. */
export function complainer(table: Table, spec: ColumnSpec, log: FindingLog): Complain {
  const { file, sheet } = table.grid;
  return (problem, cell, column, line) => {
    const fatal = (spec.required && !TOLD_BY_NAMES.has(spec.name)) || (spec.measures && ABSURD.has(problem.code));
    if (!problem.code.startsWith("date-order-")) {
      const value = cellText(cell);
      const code = spec.field === "expiry" && saysPastUse(value) ? "fault-unread" : problem.code;
      log.add(code, { file, sheet, line, column: column + 1, value }, () => ({
        message: wrongCell(problem, spec, table, column, cell),
        severity: fatal ? "error" : "warning",
      }));
    }
    return fatal ? problem : null;
  };
}
