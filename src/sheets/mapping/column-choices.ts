import { openFile } from "../open-file.ts";
import type { SheetFile } from "../reading.ts";
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
  }[];
}

/** Every table's columns with examples of what they hold, for choosing them by hand. */
export function columnChoices(files: readonly SheetFile[], columns: ColumnsFile | null): ColumnChoices[] {
  return files
    .flatMap((file) => openFile(file, columns).tabs)
    .flatMap(({ tables }) => tables)
    .map(({ grid, number, header, groups, rows }) => ({
      file: grid.file,
      sheet: grid.sheet,
      table: number,
      columns: columnKeys(header, groups).map((key, at) => ({
        column: at + 1,
        key,
        examples: examplesOf(rows.map(({ cells }) => cells[at] ?? null)),
      })),
    }));
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
