import type { FindingLog } from "../finding-log.ts";
import { type GridRow, isBlankCell } from "../grid.ts";
import { openPlace } from "../tables/named-places.ts";
import { columnsOf, type Table } from "../tables/table.ts";
import { placeOfSection } from "../tables/titled-places.ts";
import { TextRow } from "../text/text-row.ts";
import { cellText } from "../values/cell-text.ts";
import { noteBlankUnits } from "./blank-units.ts";
import { countsTogether, partCount } from "./counted-together.ts";
import { type Entry, TableState } from "./entry.ts";
import { type FieldReader, fieldReader, type ReadOptions } from "./field-reader.ts";
import { fillRow, type RowPlan, rowPlan, speaksOf, timeOf } from "./fill-row.ts";
import { holdByDevices } from "./held-by-device.ts";
import { listedEntries, listedTable } from "./listed-rows.ts";
import { type LotRow, lotColumns, lotsOfRecord, tableOfLots } from "./lots-in-a-cell.ts";
import { ODD_ROW_MESSAGES, oddRowTest } from "./odd-rows.ts";
import { rateTests } from "./rated-tests.ts";
import { SortedLines } from "./sorted-lines.ts";
import { noteChanges, noteCounted, notePresumed, unknownTable } from "./table-findings.ts";
import { noteUnread, unreadColumns } from "./unread-columns.ts";
import { noteUnreadFaults } from "./unread-faults.ts";

/** The entries of one table's records, with the readers that made them. */
export interface BuiltTable {
  state: TableState;
  entries: Entry[];
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
  const entries: Entry[] = [];
  const beside: Entry[] = [];
  const oddRow = oddRowTest(table);
  const unknown = unknownTable(table, log);
  noteChanges(table, log);
  const unread = unreadColumns(table, plans);
  noteUnread(table, unread, log);
  notePresumed(table, log);
  noteCounted(table, log);
  const { file, sheet } = table.grid;
  const open = table.outputs.map(openPlace);
  const lines = new SortedLines(table, state, log);
  const together = countsTogether(table.outputs);
  const sorted = table.thingColumns.length > 0;
  let place: string | null = null;
  for (let row = 0; row < table.rows.length; row++) {
    const record = table.rows[row] as GridRow;
    const odd = table.odd.get(row) ?? oddRow(record, row);
    if (odd !== null) {
      state.never(row, odd, ODD_ROW_MESSAGES[odd]);
      if (odd === "section-line")
        place = placeOfSection(cellText(record.cells.find((cell) => !isBlankCell(cell)) ?? null));
      continue;
    }
    if (unknown) {
      state.never(row, unknown.code, unknown.message);
      continue;
    }
    const thing = sorted ? lines.thingOf(record, row) : undefined;
    if (thing === null) continue;
    const before = entries.length;
    for (let at = 0; at < plans.length; at++) {
      const plan = plans[at] as RowPlan;
      if ((plan.output.thing ?? thing) !== thing || !speaksOf(plan, record)) continue;
      const lots = inCells[at];
      const first = entries.length;
      const parts = lots ? lotsOfRecord(record, lots) : [record as LotRow];
      for (const lot of parts) {
        const values = { ...plan.template } as Entry["values"];
        if (thing !== undefined) lines.nameBy(values, plan.output, record);
        const where = open[at];
        if (place !== null && where) values[where] = place;
        values.source = record instanceof TextRow ? record : { file, sheet, line: record.line };
        if (plan.output.lists !== undefined) {
          entries.push(...listedEntries(values, plan, record, row, state, log));
          continue;
        }
        if (plan.output.rates) {
          rateTests(entries, before, plan, record, log);
          continue;
        }
        const isBeside = plan.output.beside === true;
        // what a line says of its item counts only where the line itself does
        if (isBeside && state.live[row] === 0) continue;
        const filled = fillRow(values, plan, lot, table);
        if (filled.code !== null) {
          if (!isBeside) state.never(row, filled.code, filled.message);
          continue;
        }
        if (!isBeside) state.live[row]!++;
        if (lot.count !== undefined) values.quantity = lot.count;
        const { product } = filled;
        const entry = state.entryOf(plan.output.sheet, values, timeOf(plan, record), row, product);
        (isBeside ? beside : entries).push(entry);
      }
      if (parts.length === 1 || parts.some((part) => part.count !== undefined)) continue;
      const [count] = columnsOf(plan.output, "quantity");
      if (count !== undefined) partCount(entries.slice(first), table, count, log);
    }
    if (together !== -1 && entries.length > before + 1) partCount(entries.slice(before), table, together, log);
    if (state.live[row] === 0) state.never(row, "missing-required", "No cell of a known column holds anything.");
  }
  lines.note();
  noteUnreadFaults(table, unread, entries, log);
  if (table.thingColumns.length > 0) holdByDevices(table, entries, log);
  else noteBlankUnits(table, plans, state, log);
  return { state, entries, beside, readers, mayHoldBoxes: plans.some((plan) => plan.mayHoldBoxes) };
}
