import { type Cell, type Grid, isBlankCell, isBlankRow } from "../grid.ts";
import { nameIn } from "./header-rows.ts";
import type { Table } from "./table.ts";

/** Rows looked at for empty columns before the whole grid is. */
const LOOK = 40;
const MOST_PARTS = 8;

/**
 * The tables of a grid, those that stand side by side apart from each other.
 *
 * A register too may leave a column empty between its groups, so the grid is only parted where more of its
 * columns are read that way.
 */
export function tablesSideBySide(grid: Grid, find: (grid: Grid) => Table[]): Table[] {
  const whole = find(grid);
  const parts = partsOf(grid);
  if (parts.length < 2 || parts.length > MOST_PARTS) return whole;
  const apart = parts.map(([from, to]) => find(within(grid, from, to)));
  if (apart.some((tables) => tables.length === 0 || tables.some(({ outputs }) => outputs.length === 0))) return whole;
  const tables = apart.flat();
  if (columnsRead(tables) <= columnsRead(whole)) return whole;
  return tables.map((table, at) => ({ ...table, grid, number: at + 1 }));
}

/** The spans of columns between columns that are empty in every row, or below a header that says all its names again. */
function partsOf({ rows }: Grid): [number, number][] {
  for (const { cells } of rows.slice(0, LOOK)) {
    const width = saidAgain(cells.map(nameIn));
    if (width > 1)
      return Array.from({ length: cells.length / width }, (_, part) => [part * width, (part + 1) * width - 1]);
  }

  const filled: boolean[] = [];
  const note = (cells: readonly Cell[]) => {
    for (let column = 0; column < cells.length; column++) if (!isBlankCell(cells[column])) filled[column] = true;
  };
  for (const { cells } of rows.slice(0, LOOK)) note(cells);
  if (gaps(filled).length < 2) return [];
  for (const { cells } of rows.slice(LOOK)) note(cells);
  return gaps(filled);
}

/** How many names of a header stand before all of them stand there again ("Item, Qty, Exp, Item, Qty, Exp"); 0 where they do not. */
function saidAgain(names: readonly (string | null)[]): number {
  const width = names.indexOf(names[0] as string, 1);
  return width > 0 &&
    names.length % width === 0 &&
    names.every((name, at) => name !== null && name === names[at % width])
    ? width
    : 0;
}

function gaps(filled: readonly boolean[]): [number, number][] {
  const parts: [number, number][] = [];
  for (let column = 0; column < filled.length; column++) {
    if (!filled[column]) continue;
    const last = parts.at(-1);
    if (last && last[1] === column - 1) last[1] = column;
    else parts.push([column, column]);
  }
  return parts;
}

/** The grid with only some of its columns filled, each where it was. */
function within(grid: Grid, from: number, to: number): Grid {
  const rows = grid.rows.map(({ line, cells }) => ({
    line,
    cells: cells.slice(0, to + 1).map((cell, column) => (column < from ? null : cell)),
  }));
  return { ...grid, rows: rows.filter((row) => !isBlankRow(row)) };
}

/** How many columns are read, of those taken for copies of each other one. */
function columnsRead(tables: readonly Table[]): number {
  return tables.reduce(
    (sum, { outputs }) => sum + new Set(outputs.flatMap(({ fields }) => fields.map(({ columns }) => columns[0]))).size,
    0,
  );
}
