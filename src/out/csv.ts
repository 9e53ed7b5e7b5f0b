import Papa from "papaparse";

/** A cell of a file written for spreadsheets: text, a number as such, or blank. */
type CsvCell = string | number | boolean | null;

/** What a spreadsheet may take for the start of a formula. */
const FORMULA_START = /^('*[=+\-@]|[\t\r])/;
/** A negative number as a text file holds it: a value, no formula. */
const NEGATIVE_NUMBER = /^-\d+(\.\d+)?$/;

/**
 * CSV text (RFC 4180: comma, CRLF, quotes where needed) of a header and rows. A text cell that a spreadsheet
 * could take for a formula gets a leading apostrophe, which reading strips again; negative numbers stay as they are.
 */
export function csvText(header: readonly string[], rows: readonly (readonly CsvCell[])[]): string {
  const guarded = [header, ...rows].map((row) => row.map(guardCell));
  return `${Papa.unparse(guarded, { newline: "\r\n" })}\r\n`;
}

function guardCell(cell: CsvCell): CsvCell {
  return typeof cell === "string" ? guardText(cell) : cell;
}

/** Text with an apostrophe before it where a spreadsheet could take it for a formula. */
export function guardText(text: string): string {
  return FORMULA_START.test(text) && !NEGATIVE_NUMBER.test(text) ? `'${text}` : text;
}
