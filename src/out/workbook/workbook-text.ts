import { guardText } from "../../sheets/values/formula-guard.ts";

/** Characters that a cell of a workbook may hold; with more of them spreadsheets call the file damaged. Common practice, no source. */
const LONGEST_CELL = 32_767;

/** Text as a workbook's cell takes it: no formula, and no longer than a cell may be. */
export function workbookText(text: string): string {
  const guarded = guardText(text);
  return guarded.length > LONGEST_CELL ? `${guarded.slice(0, LONGEST_CELL - 1)}\u2026` : guarded;
}
