import { openFile, openFiles } from "../open-file.ts";
import type { ReadColumn, SheetFile } from "../reading.ts";
import type { Table } from "../tables/table.ts";
import { columnKeys } from "./column-keys.ts";
import type { ColumnsFile } from "./columns-file.ts";

const EXAMPLES = 3;

/** A table's columns as a person chooses what they hold. */
export interface ColumnChoices {
  file: string;
  sheet: string | null;
  /** 1-based within the file's tab. */
  table: number;
  columns: {
    /** 1-based. */
    column: number;
    /** The column's name in a columns file; null where it has no header and cannot be named there. */
    key: string | null;
    /** The first few different values. */
    examples: string[];
    /** What it is recognised as where no columns file says, and by what. */
    recognised: Pick<ReadColumn, "kind" | "field" | "by">[];
  }[];
}

/** Every table's columns with examples of what they hold, for choosing them by hand. */
export function columnChoices(files: readonly SheetFile[], columns: ColumnsFile | null): ColumnChoices[] {
  const recognised = openFiles(files, null).flatMap(({ tabs }) => tabs.flatMap(({ tables }) => tables));
  return files
    .flatMap((file) => openFile(file, columns).tabs)
    .flatMap(({ tables }) => tables)
    .map(({ grid, number, header, groups, rows }) => {
      const same = recognised.filter((table) => table.grid === grid && table.number === number);
      return {
        file: grid.file,
        sheet: grid.sheet,
        table: number,
        columns: columnKeys(header, groups).map((key, at) => ({
          column: at + 1,
          key,
          examples: examplesOf(rows.map(({ cells }) => cells[at] ?? null)),
          recognised: same.flatMap((table) => fieldsAt(table, at)),
        })),
      };
    });
}

function fieldsAt({ outputs }: Table, at: number): ColumnChoices["columns"][number]["recognised"] {
  return outputs.flatMap(({ sheet, fields }) =>
    fields
      .filter(({ columns }) => columns.includes(at))
      .map(({ spec, by }) => ({ kind: sheet.kind, field: spec.name, by })),
  );
}

function examplesOf(cells: readonly unknown[]): string[] {
  const found = new Set<string>();
  for (const cell of cells) {
    if (cell === null || String(cell).trim() === "") continue;
    found.add(String(cell).trim());
    if (found.size === EXAMPLES) break;
  }
  return [...found];
}
