import type { SetAsideRow } from "../fleet/finding.ts";
import { sortBy } from "../maths/sort-by.ts";
import { columnKeys } from "../sheets/mapping/column-keys.ts";
import type { ReadTable } from "../sheets/reading.ts";
import { SET_ASIDE_HEAD } from "../sheets/tables/set-aside-tables.ts";
import { csvText } from "./csv.ts";

/**
 * set-aside.csv: every row that was not used, as it stood, with where it was and why. Its cells stand under the
 * headers they had, so that rows corrected here can be read again; headers of several tables bear their table's
 * name in brackets.
 *
 * @param inputs  how the tables were read; without it cells stand under their numbers
 */
export function setAsideCsv(setAside: readonly SetAsideRow[], inputs: readonly ReadTable[] = []): string {
  const rows = setAsideInOrder(setAside);
  const tables = new Map<string, { row: SetAsideRow; table: ReadTable | null; width: number }>();
  for (const row of rows) {
    const table = tableOf(row, inputs);
    const key = keyOf(row, table);
    const before = tables.get(key);
    if (before) before.width = Math.max(before.width, row.cells.length);
    else tables.set(key, { row, table, width: Math.max(row.cells.length, table?.columns.at(-1)?.column ?? 0) });
  }
  const starts = new Map<string, number>();
  const header: string[] = [];
  for (const [key, { row, table, width }] of tables) {
    const shared = inputs.length === 0;
    starts.set(key, shared ? 0 : header.length);
    const names = namesOf(table, width);
    // a name that begins with a bracket of its own needs its table's before it
    const isPlain = shared || (tables.size === 1 && names.every((name) => !name.startsWith("[")));
    const named = isPlain ? names : names.map((name) => `[${title(row, table)}] ${name}`);
    if (!shared) header.push(...named);
    else if (named.length > header.length) header.splice(0, header.length, ...named);
  }
  return csvText(
    [...SET_ASIDE_HEAD, ...header],
    rows.map((row) => {
      const cells = Array<SetAsideRow["cells"][number]>(header.length).fill(null);
      const start = starts.get(keyOf(row, tableOf(row, inputs))) ?? 0;
      row.cells.forEach((cell, at) => {
        cells[start + at] = cell;
      });
      return [row.file, row.sheet, row.line, row.reason, row.message, ...cells];
    }),
  );
}

/** Set-aside rows by file, tab and line. */
export function setAsideInOrder(setAside: readonly SetAsideRow[]): SetAsideRow[] {
  return sortBy(setAside, (row) => [row.file, row.sheet, row.line]);
}

/** The table in which a row stood: the last of its tab whose header is above it. */
function tableOf({ file, sheet, line }: SetAsideRow, inputs: readonly ReadTable[]): ReadTable | null {
  const above = inputs.filter(
    (table) => table.file === file && table.sheet === sheet && (table.headerLines[0] ?? 0) < line,
  );
  return above.reduce<ReadTable | null>(
    (last, table) => (last === null || table.table > last.table ? table : last),
    null,
  );
}

function keyOf({ file, sheet }: SetAsideRow, table: ReadTable | null): string {
  return JSON.stringify([file, sheet, table?.table ?? null]);
}

function title({ file, sheet }: SetAsideRow, table: ReadTable | null): string {
  return [file, sheet, table && table.table > 1 ? String(table.table) : null]
    .filter((part) => part !== null)
    .join(", ")
    .replace(/[[\]]/g, "");
}

function namesOf(table: ReadTable | null, width: number): string[] {
  const header = Array<string | null>(width).fill(null);
  const groups = Array<string | null>(width).fill(null);
  for (const { column, header: name, group } of table?.columns ?? []) {
    header[column - 1] = name;
    groups[column - 1] = group;
  }
  return columnKeys(header, groups).map((name, at) => name ?? `cell_${at + 1}`);
}
