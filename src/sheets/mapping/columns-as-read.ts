import { openFiles } from "../open-file.ts";
import type { SheetFile } from "../reading.ts";
import type { Table } from "../tables/table.ts";
import { columnKeys } from "./column-keys.ts";
import type { ColumnsFile, MappedTable } from "./columns-file.ts";

/** The columns file that says how the files' tables are read now, for people to correct and use again. */
export function columnsFileOf(files: readonly SheetFile[], columns: ColumnsFile | null = null): ColumnsFile {
  const tables = openFiles(files, columns)
    .flatMap(({ tabs }) => tabs)
    .flatMap((tab) => tab.tables)
    .map(describe);
  return { format: "wanecast.columns/1", tables };
}

function describe({ grid, number, header, groups, outputs }: Table): MappedTable {
  const keys = columnKeys(header, groups);
  const used = new Set<number>();
  const rows = outputs.map(({ sheet, fields, implied, thing }): MappedTable["rows"][number] => {
    const columns: Record<string, string> = {};
    for (const field of fields) {
      columns[field.spec.name] = keys[field.columns[0]!]!;
      for (const column of field.columns) used.add(column);
    }
    return {
      kind: sheet.kind,
      ...(implied.item === undefined ? {} : { item: implied.item }),
      columns,
      ...(thing === undefined ? {} : { thing }),
    };
  });
  const unread = keys.flatMap((key, column) => (key === null || used.has(column) ? [] : [key]));
  return { file: grid.file, sheet: grid.sheet, table: number, rows, unread };
}
