import type { Day } from "../../calendar/day.ts";
import type { SheetSpec } from "../../fleet/columns.ts";
import type { Source } from "../../fleet/rows.ts";
import type { FindingLog } from "../finding-log.ts";
import type { Cell } from "../grid.ts";
import { fillFromLabel } from "../labels/fill-from-label.ts";
import type { Output, Table } from "../tables/table.ts";
import { cellText, meansEmpty } from "../values/cell-text.ts";
import { readDateText } from "../values/date-text.ts";
import { Problem } from "../values/problem.ts";
import { columnName } from "./column-name.ts";
import { type Entry, TableState } from "./entry.ts";
import { type FieldReader, fieldReader, type ReadOptions } from "./field-reader.ts";
import { ODD_ROW_MESSAGES, oddRowTest } from "./odd-rows.ts";

/** The entries of one table's records, with the readers that made them. */
export interface BuiltTable {
  state: TableState;
  entries: Entry[];
  readers: FieldReader[][];
}

/** Reads every record of a table into entries, noting findings and why a record gave none. */
export function buildEntries(table: Table, options: ReadOptions, log: FindingLog): BuiltTable {
  const state = new TableState(table);
  const readers = table.outputs.map((output) => output.fields.map((field) => fieldReader(table, field, options, log)));
  const templates = table.outputs.map(blankRow);
  const entries: Entry[] = [];
  const oddRow = oddRowTest(table);
  const unknown = unknownTable(table, log);
  noteChanges(table, log);
  table.rows.forEach((record, row) => {
    const odd = table.odd.get(row) ?? oddRow(record.cells, row);
    if (odd !== null) {
      state.never(row, odd, ODD_ROW_MESSAGES[odd]);
      return;
    }
    if (unknown) {
      state.never(row, unknown.code, unknown.message);
      return;
    }
    table.outputs.forEach((output, at) => {
      if (table.outputs.length > 1 && !output.own.some((column) => !meansEmpty(cellText(record.cells[column] ?? null))))
        return;
      const source: Source = { file: table.grid.file, sheet: table.grid.sheet, line: record.line };
      const values = { ...templates[at]!, source };
      const filled = fillRow(values, output, readers[at]!, record.cells, record.line, table, options.asOf, log);
      if (filled.code !== null) state.never(row, filled.code, filled.message);
      else {
        state.live[row]!++;
        const { product } = filled;
        entries.push({ sheet: output.sheet, values, time: timeOf(output, record.cells), product, state, row });
      }
    });
    if (state.live[row] === 0) state.never(row, "missing-required", "No cell of a known column holds anything.");
  });
  return { state, entries, readers };
}

/** Why no record of the table can be read, with its finding; null where its columns are known. */
function unknownTable(table: Table, log: FindingLog): { code: "kind-tied" | "unknown-table"; message: string } | null {
  if (table.outputs.length > 0) return null;
  const { file, sheet } = table.grid;
  const place = { file, sheet, line: table.headerLines[0] ?? null, column: null, value: null };
  const names = table.header
    .filter((name) => name !== null)
    .join(", ")
    .slice(0, 120);
  const [code, message] = table.tied
    ? (["kind-tied", `The columns ${names} can be ${table.tied.join(" or ")}.`] as const)
    : (["unknown-table", `The columns ${names} make up no sheet that is known here.`] as const);
  log.add(code, place, () => ({ message }), String(table.number));
  return { code, message };
}

/** A finding where the sheet no longer fits the columns file that was made for it. */
function noteChanges({ grid, number, headerLines, changes }: Table, log: FindingLog): void {
  if (changes.length === 0) return;
  const place = { file: grid.file, sheet: grid.sheet, line: headerLines[0] ?? null, column: null, value: null };
  const message = `The columns are not those of the columns file: ${changes.join(", ")}.`;
  log.add("mapping-changed", place, () => ({ message }), String(number));
}

function blankRow({ sheet, implied }: Output): Record<string, unknown> {
  const row: Record<string, unknown> = {};
  for (const { field } of sheet.columns) row[field] = implied[field] ?? null;
  return row;
}

/** What came of filling a row: the product number its label gives, or why the row cannot be used. */
type Filled = { code: null; product: string | null } | { code: string; message: string };

function fillRow(
  values: Record<string, unknown> & { source: Source },
  { sheet }: Output,
  readers: readonly FieldReader[],
  cells: readonly Cell[],
  line: number,
  table: Table,
  asOf: Day,
  log: FindingLog,
): Filled {
  let refused: Filled | null = null;
  for (const { spec, columns, read } of readers) {
    const value = read(cells, line);
    if (value instanceof Problem) {
      const shown = cellText(cells[columns[0]!] ?? null).slice(0, 60);
      const name = columnName(table, columns[0]!);
      refused ??= { code: value.code, message: `"${shown}" in column ${name} ${value.because}.` };
    } else if (value !== null) values[spec.field] = value;
  }
  if (refused) return refused;
  const label = typeof values.label === "string" ? fillFromLabel(values, values.label, asOf, log) : null;
  if (label !== null && label.code !== null && missing(sheet, values)) return label;
  return (
    lacking(values, sheet, readers, table, line, log) ?? {
      code: null,
      product: label?.code === null ? label.product : null,
    }
  );
}

function missing(sheet: SheetSpec, values: Record<string, unknown>): boolean {
  return sheet.columns.some(({ required, field }) => required && values[field] === null);
}

/** What the row lacks to say anything, with its finding; null where it lacks nothing. */
function lacking(
  values: Record<string, unknown>,
  sheet: SheetSpec,
  readers: readonly FieldReader[],
  table: Table,
  line: number,
  log: FindingLog,
): Filled | null {
  const place = { file: table.grid.file, sheet: table.grid.sheet, line, value: null };
  for (const spec of sheet.columns) {
    if (!spec.required || values[spec.field] !== null) continue;
    const column = readers.find((reader) => reader.spec === spec)?.columns[0] ?? null;
    const named = column === null ? spec.name : `column ${columnName(table, column)}`;
    const words = () => ({
      message: `The row has nothing in ${named}, without which ${sheet.kind.replaceAll("_", " ")} cannot be used.`,
    });
    log.add("missing-required", { ...place, column: column === null ? null : column + 1 }, words, sheet.kind);
    return { code: "missing-required", message: `Nothing stands in ${named}.` };
  }
  if (sheet.oneOf.length > 0 && sheet.oneOf.every((field) => values[field] === null)) {
    const message = "The runtime test measures nothing that can be used.";
    log.add("no-measurement", { ...place, column: null }, () => ({ message }));
    return { code: "no-measurement", message };
  }
  return null;
}

function timeOf({ sheet, fields }: Output, cells: readonly Cell[]): string {
  if (sheet.kind !== "runtime_tests") return "";
  const column = fields.find(({ spec }) => spec.field === "date")?.columns[0];
  const cell = column === undefined ? null : cells[column];
  if (typeof cell !== "string" || !cell.includes(":") || cell.length > 80) return "";
  const written = readDateText(cellText(cell));
  return written && written.kind !== "bad" ? written.time : "";
}
