import Papa from "papaparse";
import { guardText } from "../sheets/values/formula-guard.ts";

/** A cell of a file written for spreadsheets: text, a number as such, or blank. */
type CsvCell = string | number | boolean | null;

/**
 * CSV text (RFC 4180: comma, CRLF, quotes where needed) of a header and rows. A text cell that a spreadsheet
 * could take for a formula gets an apostrophe, which reading strips again; negative numbers stay as they are.
 */
export function csvText(header: readonly string[], rows: readonly (readonly CsvCell[])[]): string {
  const guarded = [header, ...rows].map((row) => row.map(guardCell));
  return `${Papa.unparse(guarded, { newline: "\r\n" })}\r\n`;
}

function guardCell(cell: CsvCell): CsvCell {
  return typeof cell === "string" ? guardText(cell) : cell;
}
