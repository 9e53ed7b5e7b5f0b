import { type Cell, isBlankCell } from "../grid.ts";

/** The columns (0-based) of a row that hold something. */
export function filledIn(cells: readonly Cell[]): number[] {
  return cells.flatMap((cell, column) => (isBlankCell(cell) ? [] : [column]));
}
