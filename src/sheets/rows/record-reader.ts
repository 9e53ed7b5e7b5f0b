import { type Cell, cellAt, type GridRow } from "../grid.ts";
import { TextRow } from "../text/text-row.ts";

/** Texts of a column whose readings are kept: in a column of more, most stand there once. */
const MOST_KEPT = 20_000;

/**
 * Reads one column of a table's records by what reads its cells; null beyond a record's end. Records of a text give
 * the number of the cell's text, and each number is read once.
 *
 * @param column  0-based
 */
export function recordReader(column: number, readCell: (cell: Cell) => unknown): (record: GridRow) => unknown {
  const byNumber: unknown[] = [];
  return (record) => {
    if (!(record instanceof TextRow)) return readCell(record.cells[column] ?? null);
    const number = record.numberAt(column);
    if (number === -1) return null;
    if (number >= MOST_KEPT) return readCell(cellAt(record, column)!);
    let value = byNumber[number];
    if (value === undefined) {
      value = readCell(cellAt(record, column)!);
      byNumber[number] = value;
    }
    return value;
  };
}
