import Papa from "papaparse";
import { guardText } from "../sheets/values/formula-guard.ts";

/** A cell of a file written for spreadsheets: text, a number as such, or blank. */
export type CsvCell = string | number | boolean | null;

/**
 * CSV text (RFC 4180: comma, CRLF, quotes where needed) of a header and rows. A text cell that a spreadsheet
 * could take for a formula gets an apostrophe, which reading strips again; negative numbers stay as they are.
 */
export function csvText(header: readonly string[], rows: readonly (readonly CsvCell[])[]): string {
  const guarded = [header, ...rows].map((row) => row.map(guardCell));
  return `${Papa.unparse(guarded, { newline: "\r\n" })}\r\n`;
}

/** CSV text of rows, each column by its name and what stands in it. */
export function csvOf<Row>(rows: readonly Row[], columns: Record<string, (row: Row) => CsvCell>): string {
  const cells = Object.values(columns);
  return csvText(
    Object.keys(columns),
    rows.map((row) => cells.map((cell) => cell(row))),
  );
}

function guardCell(cell: CsvCell): CsvCell {
  return typeof cell === "string" ? guardText(cell) : cell;
}
