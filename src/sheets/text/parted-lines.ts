import { type Grid, type GridRow, isBlankCell, widthOf } from "../grid.ts";
import { guessSeparator, quotedRecords } from "./records.ts";

/**
 * A tab or text with its lines parted into cells, where each stands whole in its first cell: so a program leaves a text
 * that it opened with another separator than the text has. Lines without a separator, such as a title, may stand between;
 * the others must all have as many parts. Else it is as it was.
 */
export function withPartedLines(grid: Grid): Grid {
  const isLine = (row: GridRow) => widthOf(row) < 2 || row.cells.slice(1).every(isBlankCell);
  if (!grid.rows.every(isLine)) return grid;
  const text = ({ cells: [first] }: GridRow) => String(first ?? "");
  const separator = guessSeparator(grid.rows.map(text).join("\n"));
  const rows = grid.rows.map((row) => ({
    line: row.line,
    cells: quotedRecords(text(row), separator, 1).data[0] ?? [],
  }));
  const parted = rows.map(widthOf).filter((width) => width > 1);
  return parted.length > 1 && new Set(parted).size === 1 ? { ...grid, rows, semicolons: separator === ";" } : grid;
}
