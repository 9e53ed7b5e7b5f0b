import { shortened } from "../../fleet/shortened.ts";
import type { FindingLog } from "../finding-log.ts";
import type { Cell, GridRow } from "../grid.ts";
import { namesPlace, openPlace } from "../tables/named-places.ts";
import type { Table } from "../tables/table.ts";
import { TextRow } from "../text/text-row.ts";
import { cellText, meansEmpty } from "../values/cell-text.ts";
import { isAside, parseHeader } from "../words/parse-header.ts";
import { noteBlankUnits } from "./blank-units.ts";
import { type Entry, TableState } from "./entry.ts";
import { type FieldReader, fieldReader, type ReadOptions } from "./field-reader.ts";
import { fillRow, type RowPlan, rowPlan, speaksOf, timeOf } from "./fill-row.ts";
import { holdByDevices } from "./held-by-device.ts";
import { listedEntries, listedTable } from "./listed-rows.ts";
import { ODD_ROW_MESSAGES, oddRowTest } from "./odd-rows.ts";
import { SortedLines } from "./sorted-lines.ts";
import { noteUnreadFaults } from "./unread-faults.ts";

/** The entries of one table's records, with the readers that made them. */
export interface BuiltTable {
  state: TableState;
  entries: Entry[];
  /** What the table's lines say of their items besides. */
  beside: Entry[];
  readers: FieldReader[][];
}

/** Reads every record of a table into entries, noting findings and why a record gave none. */
export function buildEntries(table: Table, options: ReadOptions, log: FindingLog): BuiltTable {
  const state = new TableState(table);
  const readers = table.outputs.map((output) => {
    const told = output.lists === undefined ? table : listedTable(table, output.lists);
    return output.fields.map((field) => fieldReader(told, field, options, log));
  });
  const plans = table.outputs.map((output, at) => rowPlan(table, output, readers[at]!, options, log));
  const entries: Entry[] = [];
  const beside: Entry[] = [];
  const oddRow = oddRowTest(table);
  const unknown = unknownTable(table, log);
  noteChanges(table, log);
  const unread = noteUnread(table, plans, log);
  notePresumed(table, log);
  noteCounted(table, log);
  const { file, sheet } = table.grid;
  const open = table.outputs.map(openPlace);
  const lines = new SortedLines(table, state, log);
  let place: string | null = null;
  for (let row = 0; row < table.rows.length; row++) {
    const told = table.rows[row] as GridRow;
    const record = { line: told.line, cells: told.cells };
    const odd = table.odd.get(row) ?? oddRow(record.cells, row);
    if (odd !== null) {
      state.never(row, odd, ODD_ROW_MESSAGES[odd]);
      if (odd === "section-line") place = placeIn(record.cells);
      continue;
    }
    if (unknown) {
      state.never(row, unknown.code, unknown.message);
      continue;
    }
    const thing = lines.thingOf(record, row);
    if (thing === null) continue;
    for (let at = 0; at < plans.length; at++) {
      const plan = plans[at] as RowPlan;
      if ((plan.output.thing ?? thing) !== thing || !speaksOf(plan, record.cells)) continue;
      const values = { ...plan.template } as Entry["values"];
      if (thing !== undefined) lines.nameBy(values, plan.output, record.cells);
      const where = open[at];
      if (place !== null && where) values[where] = place;
      values.source = told instanceof TextRow ? told : { file, sheet, line: record.line };
      if (plan.output.lists !== undefined) {
        entries.push(...listedEntries(values, plan, record, row, state, log));
        continue;
      }
      const isBeside = plan.output.beside === true;
      // what a line says of its item counts only where the line itself does
      if (isBeside && state.live[row] === 0) continue;
      const filled = fillRow(values, plan, record, table);
      if (filled.code !== null) {
        if (!isBeside) state.never(row, filled.code, filled.message);
        continue;
      }
      if (!isBeside) state.live[row]!++;
      const { product } = filled;
      const entry = { sheet: plan.output.sheet, values, time: timeOf(plan, record.cells), product, state, row };
      (isBeside ? beside : entries).push(entry);
    }
    if (state.live[row] === 0) state.never(row, "missing-required", "No cell of a known column holds anything.");
  }
  lines.note();
  noteUnreadFaults(table, unread, entries, log);
  if (table.thingColumns.length > 0) holdByDevices(table, entries, log);
  else noteBlankUnits(table, plans, state, log);
  return { state, entries, beside, readers };
}

/** The place that a line above a group of rows names; null where it names something else. */
function placeIn(cells: readonly Cell[]): string | null {
  const text = cellText(cells.find((cell) => cell !== null && cell !== "") ?? null);
  return namesPlace(text) ? text : null;
}

/** A finding for each named column from which nothing is read, where the table itself is known; gives those columns. */
function noteUnread(table: Table, plans: readonly RowPlan[], log: FindingLog): number[] {
  const { grid, number, header, headerLines, outputs } = table;
  if (outputs.length === 0) return [];
  const read = new Set([
    ...table.thingColumns,
    ...outputs.flatMap(({ fields }) => fields.flatMap(({ columns }) => columns)),
  ]);
  for (const { counting, settled } of plans)
    for (const column of [...Object.values(counting), ...Object.values(settled)]) read.add(column);
  const unread = header.flatMap((name, column) => (name === null || read.has(column) ? [] : [[name, column] as const]));
  noteLittleRead(table, unread, header.filter((_, column) => read.has(column)).length, log);
  unread.forEach(([name, column]) => {
    const place = { file: grid.file, sheet: grid.sheet, line: headerLines[0] ?? null, column: column + 1, value: name };
    log.add(
      "column-unread",
      place,
      () => ({ message: `Nothing is read from the column "${shortened(name)}".` }),
      String(number),
    );
  });
  return unread.map(([, column]) => column);
}

/** A finding where a date that its header only calls one was taken for the first day in service. */
function notePresumed({ grid: { file, sheet }, number, header, headerLines, outputs }: Table, log: FindingLog): void {
  for (const { spec, columns, by } of outputs.flatMap(({ fields }) => fields)) {
    const [column] = columns;
    const name = header[column!] ?? "";
    if (spec.field !== "inService" || by !== "contents" || parseHeader(name).says !== "date") continue;
    const place = { file, sheet, line: headerLines[0] ?? null, column: column! + 1, value: name };
    const message = `"${shortened(name)}" does not say which day it gives; it was taken for the first day in service.`;
    log.add("date-presumed", place, () => ({ message }), String(number));
  }
}

/** A finding for each column that counts devices, which are then not in the fleet. */
function noteCounted({ grid: { file, sheet }, number, header, headerLines, counted }: Table, log: FindingLog): void {
  for (const name of counted) {
    const place = { file, sheet, line: headerLines[0] ?? null, column: header.indexOf(name) + 1, value: name };
    const message = `The column "${shortened(name)}" counts devices and names none, so none was added to the fleet.`;
    log.add("devices-counted", place, () => ({ message }), String(number));
  }
}

/** A finding where more columns are left over than read, not counting those that a fleet's sheets hold besides. */
function noteLittleRead(
  { grid: { file, sheet }, number, headerLines, rows, outputs }: Table,
  unread: readonly (readonly [name: string, column: number])[],
  read: number,
  log: FindingLog,
): void {
  const open = unread.filter(
    ([name, column]) =>
      !isAside(parseHeader(name)) && rows.some(({ cells }) => !meansEmpty(cellText(cells[column] ?? null))),
  );
  if (open.length <= read) return;
  const as = [...new Set(outputs.map(({ sheet: { kind } }) => kind))].join(" and ");
  const place = { file, sheet, line: headerLines[0] ?? null, column: null, value: null };
  const message = `Of ${read + open.length} columns only ${read} ${read === 1 ? "was" : "were"} understood, as ${as}; the table may be something else.`;
  log.add("little-read", place, () => ({ message }), String(number));
}

/** Why no record of the table can be read, with its finding; null where its columns are known. */
function unknownTable(
  table: Table,
  log: FindingLog,
): { code: "kind-tied" | "unknown-table" | "own-output"; message: string } | null {
  if (table.outputs.length > 0) return null;
  const { file, sheet } = table.grid;
  const place = { file, sheet, line: table.headerLines[0] ?? null, column: null, value: null };
  const names = table.header
    .filter((name) => name !== null)
    .join(", ")
    .slice(0, 120);
  const [code, message] =
    table.ownOutput !== null
      ? (["own-output", `This program wrote the table itself: it is ${table.ownOutput}.`] as const)
      : table.tied
        ? (["kind-tied", `The columns ${names} can be ${table.tied.join(" or ")}.`] as const)
        : table.unclear !== null
          ? (["unknown-table", table.unclear.message] as const)
          : (["unknown-table", `The columns ${names} make up no sheet that is known here.`] as const);
  const fix = table.unclear?.fix;
  log.add(code, place, () => (fix === undefined ? { message } : { message, fix }), String(table.number));
  return { code, message };
}

/** A finding where the sheet no longer fits the columns file that was made for it. */
function noteChanges({ grid, number, headerLines, changes }: Table, log: FindingLog): void {
  if (changes.length === 0) return;
  const place = { file: grid.file, sheet: grid.sheet, line: headerLines[0] ?? null, column: null, value: null };
  const message = `The columns are not those of the columns file: ${changes.join(", ")}.`;
  log.add("mapping-changed", place, () => ({ message }), String(number));
}
