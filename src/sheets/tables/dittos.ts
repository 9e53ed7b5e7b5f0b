import { type Cell, cellAt, type GridRow, widthOf } from "../grid.ts";
import { TextRow } from "../text/text-row.ts";

/** Marks and words for "as above"; the word alone for a mark that is also a sign of nothing. */
const DITTO = /^(?:["”„″〃]|''|,,|[-–]\s?["”]\s?[-–]|ditto|dito|dto\.?|idem|id\.|do\.|as above|wie oben)$/i;
/** The codes of their first letters, since nearly no cell is one. */
const FIRST = new Set([..."\"”„″〃',-–dDiIaAwW"].map((letter) => letter.charCodeAt(0)));
const LONGEST = 8;

/** The rows with each mark for "as above" replaced by what stands above it; the same rows where none holds one. */
export function withoutDittos(rows: GridRow[]): GridRow[] {
  if (!mayHoldDitto(rows)) return rows;
  const first = rows.findIndex((row, at) => at > 0 && holdsDitto(row));
  if (first === -1) return rows;
  let above = rows[first - 1] as GridRow;
  return rows.map((row, at) => {
    if (at >= first) above = holdsDitto(row) ? filled(row, above) : row;
    return at >= first ? above : row;
  });
}

/** False where none of the texts in a text's columns is one: then no cell need be asked. */
function mayHoldDitto(rows: readonly GridRow[]): boolean {
  const [first] = rows;
  return !(first instanceof TextRow) || first.columns.some(({ texts }) => texts.some(isDitto));
}

function holdsDitto(row: GridRow): boolean {
  const width = widthOf(row);
  for (let column = 0; column < width; column++) if (isDitto(cellAt(row, column))) return true;
  return false;
}

function isDitto(cell: Cell | undefined): boolean {
  if (typeof cell !== "string" || cell.length > LONGEST || cell === "") return false;
  return FIRST.has(cell.charCodeAt(0)) && DITTO.test(cell.trim());
}

function filled({ line, cells }: GridRow, { cells: above }: GridRow): GridRow {
  return { line, cells: cells.map((cell, column) => (isDitto(cell) ? (above[column] ?? null) : cell)) };
}
