import { type Cell, cellAt, type GridRow } from "../grid.ts";
import { parseHeader } from "../words/parse-header.ts";

/** Above this share of cells with a digit a row is data, never a header. */
const MAX_DIGIT_SHARE = 0.5;

/** Longest date or number that tells a record at a glance. */
const MAX_VALUE = 16;

/** True for a cell that holds digits and their signs only, as no name of a column does. */
export function holdsValue(cell: Cell | undefined): boolean {
  if (typeof cell !== "string" || cell === "" || cell.length > MAX_VALUE) return false;
  // digits, and the comma, dash, point and stroke between them
  for (let i = 0; i < cell.length; i++) {
    const c = cell.charCodeAt(i);
    if (c < 44 || c > 57) return false;
  }
  return true;
}

/** The first row from one on whose cell in a column holds no such value. */
export function endOfValues(rows: readonly GridRow[], from: number, column: number): number {
  let end = from;
  while (end < rows.length && holdsValue(cellAt(rows[end] as GridRow, column))) end++;
  return end;
}

/** True for a row most of whose cells hold values, not names. */
export function looksLikeData(cells: readonly Cell[]): boolean {
  let filled = 0;
  let digits = 0;
  for (const cell of cells) {
    if (cell === null || cell === "") continue;
    filled++;
    if (typeof cell !== "string" || startsLikeValue(cell)) digits++;
  }
  return digits > filled * MAX_DIGIT_SHARE;
}

/** True for a text that holds digits as values do: "000817", "14-Mar-27", but not "Pad 2 exp" or a year. */
function startsLikeValue(text: string): boolean {
  let digits = 0;
  let letters = 0;
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (c >= 48 && c <= 57) digits++;
    else if ((c >= 65 && c <= 90) || (c >= 97 && c <= 122)) letters++;
  }
  if (letters > 2 && /\b20\d\d\b/.test(text) && parseHeader(text).says !== "") digits -= 4;
  if (letters === 0 && /^\s*(19|20)\d\d\s*$/.test(text)) return false;
  return digits > 0 && (digits * 2 >= letters || /^\s*\d+ \p{L}{4}/u.test(text));
}
