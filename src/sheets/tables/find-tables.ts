import { type Cell, type Grid, type GridRow, isBlankRow } from "../grid.ts";
import { matchHeader } from "./match-header.ts";
import type { Table } from "./table.ts";

/** Above this share of cells with a digit a row is data, never a header. */
const MAX_DIGIT_SHARE = 0.5;

/** Every table of a text file or tab. Rows above the first header are titles and no rows. */
export function findTables(grid: Grid): Table[] {
  const tables: Table[] = [];
  let current: Table | null = null;
  for (const row of grid.rows) {
    if (isBlankRow(row.cells)) continue;
    const output = looksLikeData(row.cells) ? null : matchHeader(row.cells);
    if (output && current && sameHeader(current, row.cells)) {
      current.odd.set(current.rows.length, "repeated-header");
      current.rows.push(row);
    } else if (output) {
      current = {
        grid,
        number: tables.length + 1,
        headerLines: [row.line],
        header: row.cells.map((cell) => (cell === null || cell === "" ? null : String(cell).trim())),
        groups: row.cells.map(() => null),
        outputs: [output],
        rows: [],
        odd: new Map(),
      };
      tables.push(current);
    } else current?.rows.push(row);
  }
  return tables;
}

function looksLikeData(cells: readonly Cell[]): boolean {
  let filled = 0;
  let digits = 0;
  for (const cell of cells) {
    if (cell === null || cell === "") continue;
    filled++;
    if (typeof cell !== "string" || hasDigit(cell)) digits++;
  }
  return digits > filled * MAX_DIGIT_SHARE;
}

function hasDigit(text: string): boolean {
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (c >= 48 && c <= 57) return true;
  }
  return false;
}

function sameHeader(table: Table, cells: GridRow["cells"]): boolean {
  return table.header.every((header, at) => (header ?? "") === String(cells[at] ?? "").trim());
}
