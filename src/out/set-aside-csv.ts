import type { SetAsideRow } from "../fleet/finding.ts";
import { csvText } from "./csv.ts";
import { sortBy } from "./sort-by.ts";

/** set-aside.csv: every row that was not used, as it stood, with where it was and why. */
export function setAsideCsv(setAside: readonly SetAsideRow[]): string {
  const width = setAside.reduce((most, row) => Math.max(most, row.cells.length), 0);
  const cells = Array.from({ length: width }, (_, index) => `cell_${index + 1}`);
  return csvText(
    ["file", "sheet", "line", "reason", "message", ...cells],
    setAsideInOrder(setAside).map((row) => [
      row.file,
      row.sheet,
      row.line,
      row.reason,
      row.message,
      ...row.cells,
      ...Array<null>(width - row.cells.length).fill(null),
    ]),
  );
}

/** Set-aside rows by file, tab and line. */
export function setAsideInOrder(setAside: readonly SetAsideRow[]): SetAsideRow[] {
  return sortBy(setAside, (row) => [row.file, row.sheet, row.line]);
}
