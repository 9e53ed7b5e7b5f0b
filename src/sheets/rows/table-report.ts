import type { SetAsideRow } from "../../fleet/finding.ts";
import type { ReadColumn, ReadTable } from "../reading.ts";
import type { DateOrder } from "../values/date-text.ts";
import type { BuiltTable } from "./build-entries.ts";
import type { TableState } from "./entry.ts";
import { namedBySort } from "./sorted-lines.ts";

/** How a table was read, for check and the page. */
export function describeTable({ state, readers }: BuiltTable): ReadTable {
  const { table } = state;
  const rows = table.rows.length;
  const setAside = state.unused().length;
  return {
    file: table.grid.file,
    sheet: table.grid.sheet,
    table: table.number,
    kinds: [...new Set(table.outputs.map(({ sheet }) => sheet.kind))],
    headerLines: table.headerLines,
    rows,
    used: rows - setAside,
    setAside,
    get sha256() {
      return table.grid.sha256;
    },
    columns: readColumns({ state, readers }),
  };
}

function readColumns({ state: { table }, readers }: Pick<BuiltTable, "state" | "readers">): ReadColumn[] {
  return table.header.flatMap((header, column): ReadColumn[] => {
    const as = (kind: string | null, field: string | null, by: ReadColumn["by"], dateOrder: DateOrder | null) => ({
      column: column + 1,
      header,
      group: table.groups[column] ?? null,
      kind,
      field,
      by,
      dateOrder,
    });
    const served = table.outputs.flatMap((output, at) =>
      output.fields.flatMap((field, f): ReadColumn[] => {
        const copy = field.columns.indexOf(column);
        if (copy === -1) return [];
        return [as(output.sheet.kind, field.spec.name, field.by, readers[at]?.[f]?.orders[copy] ?? null)];
      }),
    );
    if (served.length > 0) return served;
    if (table.thingColumns.includes(column))
      return table.outputs.map(({ sheet }) => as(sheet.kind, namedBySort(sheet), "contents", null));
    return header === null ? [] : [as(null, null, null, null)];
  });
}

/** The records of a table that are not used, as they stood. */
export function setAsideRows(state: TableState): SetAsideRow[] {
  const { table, reasons } = state;
  const { file, sheet } = table.grid;
  return state.unused().map((row) => {
    const { line, cells } = table.rows[row]!;
    const { code, message } = reasons.get(row) ?? { code: "missing-required", message: "The row could not be used." };
    const asItStood = cells.map((cell) => (cell === "" ? null : cell));
    return { file, sheet, line, reason: code, message, cells: asItStood };
  });
}
