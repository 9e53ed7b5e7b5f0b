import type { FindingLog } from "../finding-log.ts";
import { type GridRow, isBlankCell } from "../grid.ts";
import { isFormLine } from "../tables/form-lines.ts";
import { openPlace } from "../tables/named-places.ts";
import type { Table } from "../tables/table.ts";
import { placeOfSection } from "../tables/titled-places.ts";
import { cellText } from "../values/cell-text.ts";
import { noteBlankUnits } from "./blank-units.ts";
import { type Entry, TableState } from "./entry.ts";
import { type FieldReader, fieldReader } from "./field-reader.ts";
import { rowPlan } from "./fill-row.ts";
import { holdByDevices } from "./held-by-device.ts";
import { type Checks, lastChecks } from "./last-checks.ts";
import { listedTable } from "./listed-rows.ts";
import { lotColumns, tableOfLots } from "./lots-in-a-cell.ts";
import { ODD_ROW_MESSAGES, oddRowTest } from "./odd-rows.ts";
import type { ReadOptions } from "./read-options.ts";
import { RecordEntries } from "./record-entries.ts";
import { SortedLines } from "./sorted-lines.ts";
import { noteChanges, noteCounted, notePresumed, unknownTable } from "./table-findings.ts";
import { noteUnread, unreadColumns } from "./unread-columns.ts";
import { noteUnreadFaults } from "./unread-faults.ts";

/** The entries of one table's records, with the readers that made them. */
export interface BuiltTable {
  state: TableState;
  entries: Entry[];
  /** The checks of places that it is a log of; null where it is none. */
  checks: Checks | null;
  /** What the table's lines say of their items besides. */
  beside: Entry[];
  readers: FieldReader[][];
  /** True where a quantity may be counted in boxes. */
  mayHoldBoxes: boolean;
}

/** Reads every record of a table into entries, noting findings and why a record gave none. */
export function buildEntries(table: Table, options: ReadOptions, log: FindingLog): BuiltTable {
  const state = new TableState(table);
  const inCells = table.outputs.map((output) => lotColumns(table, output));
  const readers = table.outputs.map((output, at) => {
    const lots = inCells[at];
    const told =
      output.lists !== undefined
        ? listedTable(table, output.lists, output.listsPads ?? "")
        : lots
          ? tableOfLots(table, lots)
          : table;
    return output.fields.map((field) => fieldReader(told, field, options, log));
  });
  const plans = table.outputs.map((output, at) => rowPlan(table, output, readers[at]!, options, log));
  const oddRow = oddRowTest(table);
  const unknown = unknownTable(table, log);
  noteChanges(table, log);
  const unread = unreadColumns(table, plans);
  noteUnread(table, unread, log);
  notePresumed(table, log);
  noteCounted(table, log);
  const lines = new SortedLines(table, state, log);
  const sorted = table.thingColumns.length > 0;
  const outputs = plans.map((plan, at) => ({ plan, lots: inCells[at] ?? null, where: openPlace(plan.output) }));
  const made = new RecordEntries(table, outputs, state, lines, log);
  for (let row = 0; row < table.rows.length; row++) {
    const record = table.rows[row] as GridRow;
    const odd = table.odd.get(row) ?? oddRow(record, row);
    if (odd !== null) {
      state.never(row, odd, ODD_ROW_MESSAGES[odd]);
      if (odd === "section-line")
        made.place =
          placeOfSection(cellText(record.cells.find((cell) => !isBlankCell(cell)) ?? null)) ??
          // "Checked: 2026-11-06" below "Vehicle: Medic 8" tells more of it
          (isFormLine(record) ? made.place : null);
      continue;
    }
    if (unknown) {
      state.never(row, unknown.code, unknown.message);
      continue;
    }
    const thing = sorted ? lines.thingOf(record, row) : undefined;
    if (thing !== null) made.add(record, row, thing);
  }
  const { beside } = made;
  // days of checks may all be readable in two orders: people write one list in one
  const orders = readers.flat().flatMap((reader) => reader.orders);
  const dateOrder = options.dateOrder ?? orders.find((order) => order !== null) ?? null;
  const { entries, checks } = lastChecks(table, readers, made.entries, { ...options, dateOrder }, log);
  lines.note();
  noteUnreadFaults(table, unread, entries, log);
  if (sorted) holdByDevices(table, entries, log);
  else noteBlankUnits(table, plans, state, log);
  return { state, entries, checks, beside, readers, mayHoldBoxes: plans.some((plan) => plan.mayHoldBoxes) };
}
