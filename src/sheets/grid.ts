import { TextRow } from "./text/text-row.ts";

/** A cell as it stood: text as written, a number or yes/no where the file says so, null where empty. */
export type Cell = string | number | boolean | null;

/** One record: `line` is the physical line where it starts (text) or the worksheet row (workbooks), from 1. */
export interface GridRow {
  line: number;
  cells: Cell[];
}

/** A record's cell; undefined beyond its end. A record of a text need not list all its cells for it. */
export function cellAt(row: GridRow, column: number): Cell | undefined {
  return row instanceof TextRow ? row.at(column) : row.cells[column];
}

/** The texts that stand in a column of a text's records, far fewer than its cells; null where each record must be asked. */
export function textsInColumn(rows: readonly GridRow[], column: number): readonly string[] | null {
  const [first] = rows;
  return first instanceof TextRow ? (first.columns[column]?.texts ?? []) : null;
}

/** How many cells a record has. */
export function widthOf(row: GridRow): number {
  return row instanceof TextRow ? row.width : row.cells.length;
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
  /** Set for a list that a tab holds in another layout: the tab's own name, and where the list's lines stand in it. */
  toldFrom?: { tab: string | null; where: string };
}

/** The name that a person gave the tab; null for a text file. */
export function tabName({ sheet, toldFrom }: Grid): string | null {
  return toldFrom === undefined ? sheet : toldFrom.tab;
}

/** True where no cell of the row holds anything but blanks. */
export function isBlankRow(row: GridRow): boolean {
  const width = widthOf(row);
  for (let column = 0; column < width; column++) if (!isBlankCell(cellAt(row, column))) return false;
  return true;
}

/** True where some row of a file or tab holds nothing. */
export function holdsBlankRow(rows: readonly GridRow[]): boolean {
  // no row is blank where none starts with a blank
  return (textsInColumn(rows, 0)?.some(isBlankCell) ?? true) && rows.some(isBlankRow);
}

/** True for a cell that holds nothing but blanks. */
export function isBlankCell(cell: Cell | undefined): boolean {
  if (cell === null || cell === undefined || cell === "") return true;
  return typeof cell === "string" && cell.charCodeAt(0) <= 32 && cell.trim() === "";
}
