import type { Cell, GridRow } from "../grid.ts";

/** Marks and words for "as above"; the word alone for a mark that is also a sign of nothing. */
const DITTO = /^(?:["”„″〃]|''|,,|[-–]\s?["”]\s?[-–]|ditto|dito|dto\.?|idem|id\.|do\.)$/i;
/** Their first letters, since nearly no cell is one. */
const FIRST = new Set("\"”„″〃',-–dDiI");
const LONGEST = 5;

/** The rows with each mark for "as above" replaced by what stands above it; the same rows where none holds one. */
export function withoutDittos(rows: readonly GridRow[]): GridRow[] {
  let above: GridRow | null = null;
  return rows.map((row) => {
    const before = above;
    above = before !== null && row.cells.some(isDitto) ? filled(row, before) : row;
    return above;
  });
}

function isDitto(cell: Cell): boolean {
  return typeof cell === "string" && cell.length <= LONGEST && FIRST.has(cell[0] ?? "") && DITTO.test(cell.trim());
}

function filled({ line, cells }: GridRow, { cells: above }: GridRow): GridRow {
  return { line, cells: cells.map((cell, column) => (isDitto(cell) ? (above[column] ?? null) : cell)) };
}
