import Papa from "papaparse";

/** One row of a sheet; a cell that is absent or null is blank. */
export type SheetRow = Record<string, string | number | null>;

/** A sheet to be written. */
export interface Sheet {
  name: string;
  columns: readonly string[];
  rows: readonly SheetRow[];
}

/** The sheet as CSV text. */
export function sheetText({ columns, rows }: Sheet): string {
  const cells = rows.map((row) => columns.map((column) => row[column] ?? ""));
  return `${Papa.unparse([[...columns], ...cells], { newline: "\n" })}\n`;
}
