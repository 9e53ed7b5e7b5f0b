import { type Cell, cellAt, type GridRow, textsInColumn } from "../grid.ts";
import { columnsOf, type Output, type Table } from "../tables/table.ts";
import { cellText, MAX_TYPED_CHARACTERS } from "../values/cell-text.ts";
import { datesWithCounts } from "../values/listed-supplies.ts";

/** A record as one of its cells parts it, with how many there are of the part; left out where the cell does not say. */
export interface LotRow extends GridRow {
  count?: number;
}

/** Columns (0-based, -1 for none) whose cells may tell of several lots, or how many there are. */
export interface LotColumns {
  expiry: number;
  item: number;
  serial: number;
}

/** What parts the numbers of several batteries of a device: "B-01 / B-02", and not the stroke inside "12/345". */
const BETWEEN_SERIALS = /\s*[;&+\n]\s*|\s\/\s|,\s/;

/** "2 x adult pads", and "adult pads x2"; the size of "electrodes 5x4" is no count. */
const COUNT_FIRST = /^(\d{1,3})\s?[x×*]\s(.*\p{L}{2}.*)$/iu;
const COUNT_LAST = /^(.*\p{L}{2}.*)[\s(](?=\d*[x×*])[x×*]?\s?(\d{1,3})[x×*]?\)?$/iu;

/** The columns of dated stock, and of serials, whose cells hold more than their heads say; null where none does. */
export function lotColumns({ rows }: Table, output: Output): LotColumns | null {
  if (output.lists !== undefined || output.presumed !== undefined) return null;
  const only = (field: string) =>
    output.fields.find(({ spec, part }) => spec.field === field && part === null)?.columns[0] ?? -1;
  const ofStock = output.sheet.kind === "dated_stock";
  const columns = {
    expiry: ofStock ? only("expiry") : -1,
    item: !ofStock || columnsOf(output, "quantity").length > 0 ? -1 : only("item"),
    // what two batteries gave together is nobody's alone
    serial: ["minutes", "wh", "ah"].some((measure) => columnsOf(output, measure).length > 0) ? -1 : only("serial"),
  };
  const some = (column: number, holds: (cell: Cell) => boolean) =>
    column !== -1 &&
    (textsInColumn(rows, column)?.some(holds) ?? rows.some((row) => holds(cellAt(row, column) ?? null)));
  return some(columns.expiry, (cell) => lotsIn(cell).length > 0) ||
    some(columns.item, (cell) => countIn(cell) !== null) ||
    some(columns.serial, (cell) => serialsIn(cell) !== null)
    ? columns
    : null;
}

/** The table with a record for each lot that its records tell of. */
export function tableOfLots(table: Table, columns: LotColumns): Table {
  const rows = table.rows.flatMap((record, row) => (table.odd.has(row) ? [] : lotsOfRecord(record, columns)));
  return { ...table, rows, odd: new Map() };
}

/** A record once for each serial, or each lot that its expiry tells of, with its count taken out of its cells. */
export function lotsOfRecord(record: GridRow, { expiry, item, serial }: LotColumns): LotRow[] {
  const serials = serialsIn(cellAt(record, serial) ?? null);
  if (serials !== null)
    return serials.map((own) => ({
      line: record.line,
      cells: record.cells.map((cell, at) => (at === serial ? own : cell)),
    }));
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

/** The serials of a cell that holds several, which look alike and hold digits and no blanks; null for any other. */
function serialsIn(cell: Cell): string[] | null {
  if (typeof cell !== "string" || cell.length > MAX_TYPED_CHARACTERS || !BETWEEN_SERIALS.test(cell)) return null;
  const serials = cell.trim().split(BETWEEN_SERIALS);
  const shapes = new Set(
    serials.map((serial) => (/^(?=\D*\d)\S{2,}$/.test(serial) ? serial.replace(/\w+/g, "x") : "")),
  );
  return serials.length > 1 && shapes.size === 1 && !shapes.has("") ? serials : null;
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
