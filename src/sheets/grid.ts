/** A cell as it stood: text as written, a number or yes/no where the file says so, null where empty. */
export type Cell = string | number | boolean | null;

/** One record: `line` is the physical line where it starts (text) or the worksheet row (workbooks), from 1. */
export interface GridRow {
  line: number;
  cells: Cell[];
}

/** One text file, or one tab of a workbook, as rows of cells. */
export interface Grid {
  file: string;
  /** The tab's name; null for a text file. */
  sheet: string | null;
  rows: GridRow[];
  readonly sha256: string;
  /** True where the file parts its cells by semicolons, as places with a decimal comma do. */
  semicolons: boolean;
  /** Lines on which a quote opens that never closes. */
  openQuotes: number[];
  /** What a workbook hides of it; it is read all the same. */
  hidden: { tab: boolean; rows: number; columns: number };
  /** Cells merged over several columns (0-based, inclusive), by line. */
  spans: { line: number; from: number; to: number }[];
}

/** True where no cell of the row holds anything but blanks. */
export function isBlankRow(cells: readonly Cell[]): boolean {
  for (const cell of cells) {
    if (cell === null || cell === "") continue;
    if (typeof cell !== "string" || cell.charCodeAt(0) > 32 || cell.trim() !== "") return false;
  }
  return true;
}
