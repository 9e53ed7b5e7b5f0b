import type { FindingLog } from "../finding-log.ts";
import type { Table } from "../tables/table.ts";
import { columnName } from "./column-name.ts";
import type { TableState } from "./entry.ts";
import { type RowPlan, speaksOf } from "./fill-row.ts";

/** The share of lines without a unit from which most simply do not carry it. */
const MOST = 0.5;

/**
 * Findings for lines of a register in which a unit's columns are blank while most lines fill them: it may be missing, or
 * nobody wrote its expiry down, and the plan knows of none.
 */
export function noteBlankUnits(table: Table, plans: readonly RowPlan[], state: TableState, log: FindingLog): void {
  const { file, sheet } = table.grid;
  const registered = plans.filter(
    ({ own, output: { sheet: of, beside } }) => of.kind === "dated_stock" && !beside && own !== null,
  );
  // most sheets are no registers, and need no list of their lines
  const lines = registered.length === 0 ? [] : table.rows.filter((_, row) => state.live[row]! > 0);
  for (const plan of registered) {
    const column = plan.output.fields.find(({ spec }) => spec.field === "expiry")?.columns[0];
    if (column === undefined) continue;
    const blank = lines.filter((row) => !speaksOf(plan, row));
    if (blank.length >= MOST * lines.length) continue;
    for (const { line } of blank)
      log.add("unit-blank", { file, sheet, line, column: column + 1, value: null }, () => ({
        message: `Nothing stands in column ${columnName(table, column)}: the plan knows of no such unit there.`,
      }));
  }
}
