import { type Cell, cellAt, type GridRow, textsInColumn } from "../grid.ts";
import { columnsOf, type Output, type Table } from "../tables/table.ts";
import { cellText, MAX_TYPED_CHARACTERS } from "../values/cell-text.ts";
import { datesWithCounts } from "../values/listed-supplies.ts";

/** A record as one of its cells parts it, with how many there are of the part; left out where the cell does not say. */
export interface LotRow extends GridRow {
  count?: number;
}

/** Columns (0-based, -1 for none) whose cells may tell of several lots, or how many there are. */
interface LotColumns {
  expiry: number;
  item: number;
}

/** "2 x adult pads", and "adult pads x2"; the size of "electrodes 5x4" is no count. */
const COUNT_FIRST = /^(\d{1,3})\s?[x×*]\s(.*\p{L}{2}.*)$/iu;
const COUNT_LAST = /^(.*\p{L}{2}.*)[\s(](?=\d*[x×*])[x×*]?\s?(\d{1,3})[x×*]?\)?$/iu;

/** The columns of dated stock whose cells hold more than their heads say; null where none does. */
export function lotColumns({ rows }: Table, output: Output): LotColumns | null {
  if (output.sheet.kind !== "dated_stock" || output.lists !== undefined) return null;
  const only = (field: string) =>
    output.fields.find(({ spec, part }) => spec.field === field && part === null)?.columns[0] ?? -1;
  const columns = { expiry: only("expiry"), item: columnsOf(output, "quantity").length > 0 ? -1 : only("item") };
  const some = (column: number, holds: (cell: Cell) => boolean) =>
    column !== -1 &&
    (textsInColumn(rows, column)?.some(holds) ?? rows.some((row) => holds(cellAt(row, column) ?? null)));
  return some(columns.expiry, (cell) => lotsIn(cell).length > 0) || some(columns.item, (cell) => countIn(cell) !== null)
    ? columns
    : null;
}

/** The table with a record for each lot that its records tell of. */
export function tableOfLots(table: Table, columns: LotColumns): Table {
  const rows = table.rows.flatMap((record, row) => (table.odd.has(row) ? [] : lotsOfRecord(record, columns)));
  return { ...table, rows, odd: new Map() };
}

/** A record once for each lot that its expiry tells of, with its count taken out of its cells. */
export function lotsOfRecord(record: GridRow, { expiry, item }: LotColumns): LotRow[] {
  const counted = countIn(cellAt(record, item) ?? null);
  const lots = lotsIn(cellAt(record, expiry) ?? null);
  if (counted === null && lots.length === 0) return [record];
  const { line, cells } = record;
  const told = lots.length > 0 ? lots : [{ date: cells[expiry] ?? null, count: null }];
  return told.map(({ date, count }) => ({
    line,
    cells: cells.map((cell, at) => (at === expiry ? date : at === item && counted ? counted.item : cell)),
    ...(count ? { count } : counted && lots.length < 2 && { count: counted.count }),
  }));
}

function lotsIn(cell: Cell): { date: Cell; count: number | null }[] {
  return typeof cell === "string" && cell.length > 7 && cell.length <= MAX_TYPED_CHARACTERS
    ? datesWithCounts(cellText(cell))
    : [];
}

function countIn(cell: Cell): { item: string; count: number } | null {
  if (typeof cell !== "string" || cell.length > MAX_TYPED_CHARACTERS) return null;
  const [, count, item] = COUNT_FIRST.exec(cell.trim()) ?? [];
  if (count !== undefined && item !== undefined) return { item, count: Number(count) };
  const [, name, last] = COUNT_LAST.exec(cell.trim()) ?? [];
  return name !== undefined && last !== undefined ? { item: name.trim(), count: Number(last) } : null;
}
