import { guardText } from "../sheets/values/formula-guard.ts";

/** A cell of a file written for spreadsheets: text, a number as such, or blank. */
export type CsvCell = string | number | boolean | null;

/**
 * CSV text (RFC 4180: comma, CRLF, quotes where needed) of a header and rows. A text cell that a spreadsheet
 * could take for a formula gets an apostrophe, which reading strips again; negative numbers stay as they are.
 */
export function csvText(header: readonly string[], rows: readonly (readonly CsvCell[])[]): string {
  return [header, ...rows].map((row) => `${row.map(cellOf).join(",")}\r\n`).join("");
}

/** What must stand in quotes: separators and quotes, and blanks or byte order marks that readers would take away. */
const NEEDS_QUOTES = /[",\r\n\ufeff]|^ | $/;

function cellOf(cell: CsvCell): string {
  return quoted(typeof cell === "string" ? guardText(cell) : String(cell ?? ""));
}

/** A cell's text in quotes where it needs them (RFC 4180). */
export function quoted(text: string): string {
  return NEEDS_QUOTES.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** CSV text of rows, each column by its name and what stands in it. */
export function csvOf<Row>(rows: readonly Row[], columns: Record<string, (row: Row) => CsvCell>): string {
  const cells = Object.values(columns);
  return csvText(
    Object.keys(columns),
    rows.map((row) => cells.map((cell) => cell(row))),
  );
}
