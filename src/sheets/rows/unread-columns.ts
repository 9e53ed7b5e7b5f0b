import { listed } from "../../fleet/first-told.ts";
import { shortened } from "../../fleet/shortened.ts";
import type { FindingLog } from "../finding-log.ts";
import type { Table } from "../tables/table.ts";
import { fillsOne } from "../values/cell-text.ts";
import { isAside, parseHeader } from "../words/parse-header.ts";
import type { RowPlan } from "./fill-row.ts";

/** The named columns (0-based) from which nothing is read; none where the table itself is not known. */
export function unreadColumns(
  { header, outputs, thingColumns }: Table,
  plans: readonly Pick<RowPlan, "counting" | "settled">[],
): number[] {
  if (outputs.length === 0) return [];
  const read = new Set([...thingColumns, ...outputs.flatMap(({ fields }) => fields.flatMap(({ columns }) => columns))]);
  for (const { counting, settled } of plans)
    for (const column of [...Object.values(counting), ...Object.values(settled)]) read.add(column);
  return header.flatMap((name, column) => (name === null || read.has(column) ? [] : column));
}

/** A finding for each unread column, and one for the table where they are most of it. */
export function noteUnread(table: Table, unread: readonly number[], log: FindingLog): void {
  const { grid, number, header, headerLines } = table;
  noteLittleRead(table, unread, log);
  for (const column of unread) {
    const name = header[column] ?? "";
    const place = { file: grid.file, sheet: grid.sheet, line: headerLines[0] ?? null, column: column + 1, value: name };
    const message = `Nothing is read from the column "${shortened(name)}".`;
    log.add("column-unread", place, () => ({ message }), String(number));
  }
}

/** A finding where more columns are left over than read, not counting those that a fleet's sheets hold besides. */
function noteLittleRead(
  { grid: { file, sheet }, number, header, headerLines, rows, outputs }: Table,
  unread: readonly number[],
  log: FindingLog,
): void {
  const open = unread.filter(
    (column) => !isAside(parseHeader(header[column] ?? "")) && rows.some(({ cells }) => fillsOne([column], cells)),
  );
  const read = header.filter((name) => name !== null).length - unread.length;
  if (open.length <= read) return;
  const as = listed([...new Set(outputs.map(({ sheet: { kind } }) => kind))]);
  const place = { file, sheet, line: headerLines[0] ?? null, column: null, value: null };
  const message = `Of ${read + open.length} columns only ${read} ${read === 1 ? "was" : "were"} understood, as ${as}; the table may be something else.`;
  log.add("little-read", place, () => ({ message }), String(number));
}
