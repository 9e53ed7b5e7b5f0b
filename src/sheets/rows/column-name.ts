import { shortened } from "../../fleet/shortened.ts";
import type { Table } from "../tables/table.ts";

/** A column as its user knows it: its header in quotes, with the spreadsheet's letter. */
export function columnName(table: Table, column: number): string {
  const header = table.header[column] ?? null;
  const letter = columnLetters(column);
  return header === null ? letter : `"${shortened(header.replace(/\s+/g, " "))}" (${letter})`;
}

/** Letters of a 0-based column: A, B, … Z, AA. */
export function columnLetters(column: number): string {
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}
