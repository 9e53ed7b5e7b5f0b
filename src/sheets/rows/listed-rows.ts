import { shortened } from "../../fleet/shortened.ts";
import type { FindingLog } from "../finding-log.ts";
import type { Cell, GridRow } from "../grid.ts";
import type { Table } from "../tables/table.ts";
import { cellText, meansEmpty } from "../values/cell-text.ts";
import { listedDates, listedIn, listedPart } from "../values/listed-supplies.ts";
import { columnName } from "./column-name.ts";
import type { Entry, TableState } from "./entry.ts";
import { fillRow, type RowPlan } from "./fill-row.ts";

/** A table as a column of lists tells it: a record for each part of its cells, with that part alone in the cell. */
export function listedTable(table: Table, column: number, pads: string): Table {
  const rows = table.rows.flatMap((record, row) => (table.odd.has(row) ? [] : recordsListed(record, column, pads)));
  return { ...table, rows, odd: new Map() };
}

function recordsListed({ line, cells }: GridRow, column: number, pads: string): GridRow[] {
  return listedIn(cells[column], pads).map((part) => ({
    line,
    cells: cells.map((cell, at): Cell => (at === column ? part : cell)),
  }));
}

/** The entries of a record's list, noting each of its parts that cannot be used. */
export function listedEntries(
  values: Entry["values"],
  plan: RowPlan,
  record: GridRow,
  row: number,
  state: TableState,
  log: FindingLog,
): Entry[] {
  const { sheet, lists: column = -1, listsPads = "" } = plan.output;
  const { table } = state;
  const { file, sheet: tab } = table.grid;
  const records = recordsListed(record, column, listsPads);
  const cell = record.cells[column] ?? null;
  const tell = (code: "listed-undated" | "listed-unreadable", part: string, because: string) => {
    const message = `"${shortened(part)}" in column ${columnName(table, column)} ${because}, so it is not used.`;
    log.add(code, { file, sheet: tab, line: record.line, column: column + 1, value: cellText(cell) }, () => ({
      message,
    }));
    state.never(row, code, message);
  };
  if (records.length === 0 && !meansEmpty(cellText(cell)))
    tell("listed-unreadable", cellText(cell), "lists no supplies that can be told apart");
  return records.flatMap((listed): Entry[] => {
    const part = cellText(listed.cells[column] ?? null);
    if (listedPart(part, "listed item") === null) tell("listed-unreadable", part, "names no item");
    else if (listedDates(part) > 1) tell("listed-unreadable", part, "holds several dates");
    else if (sheet.kind === "dated_stock" && listedDates(part) === 0) tell("listed-undated", part, "gives no expiry");
    else {
      const own = { ...values };
      const filled = fillRow(own, plan, listed, table);
      if (filled.code === null) {
        state.live[row]!++;
        return [state.entryOf(sheet, own, "", row, filled.product)];
      }
      state.never(row, filled.code, filled.message);
    }
    return [];
  });
}
