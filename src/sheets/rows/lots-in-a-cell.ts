import { type Cell, cellAt, type GridRow, textsInColumn } from "../grid.ts";
import { columnsOf, type Output, type Table } from "../tables/table.ts";
import { cellText, MAX_TYPED_CHARACTERS, textAt } from "../values/cell-text.ts";
import { BETWEEN_SEVERAL, datesWithCounts } from "../values/listed-supplies.ts";
import type { CellPart } from "../values/lot-and-date.ts";
import { parseHeader } from "../words/parse-header.ts";

/** A record as one of its cells parts it, with how many there are of the part; left out where the cell does not say. */
export interface LotRow extends GridRow {
  count?: number;
}

/** Columns (0-based, -1 for none) whose cells may tell of several lots, or how many there are. */
export interface LotColumns {
  expiry: number;
  /** True where the cells of that column name lots beside their dates. */
  parted: boolean;
  lot: number;
  item: number;
  serial: number;
  /** Where how many batteries a line tells of stands beside their serials. */
  many: number;
}

/** What parts the numbers of several batteries of a device: "B-01 / B-02", and not the stroke inside "12/345". */
const BETWEEN_SERIALS = /\s*[;&+\n]\s*|\s\/\s|,\s/;

/** The first and the last of several serials: "B1001 - B1004", "SN 1001-1010", "LP-07 bis LP-09". */
const RANGE = /^(.*?)(\d{1,9})( ?(?:[-–…]|\.{2,3}) ?| (?:to|thru|bis|à|au?|al|tot|t\/m) )(.*?)(\d{1,9})$/i;
const MOST_IN_RANGE = 500;

/** "2 x adult pads", and "adult pads x2"; the size of "electrodes 5x4" is no count. */
const COUNT_FIRST = /^(\d{1,3})\s?[x×*]\s(.*\p{L}{2}.*)$/iu;
const COUNT_LAST = /^(.*\p{L}{2}.*)[\s(](?=\d*[x×*])[x×*]?\s?(\d{1,3})[x×*]?\)?$/iu;

/** The columns of dated stock, and of serials, whose cells hold more than their heads say; null where none does. */
export function lotColumns({ rows, header }: Table, output: Output): LotColumns | null {
  if (output.lists !== undefined || output.presumed !== undefined) return null;
  const only = (field: string, whole: CellPart | null = null) =>
    output.fields.find(({ spec, part }) => spec.field === field && part === whole)?.columns[0] ?? -1;
  const ofStock = output.sheet.kind === "dated_stock";
  const inPart = ofStock ? only("expiry", "date") : -1;
  const parted = inPart !== -1;
  const columns = {
    expiry: parted || !ofStock ? inPart : only("expiry"),
    parted,
    lot: only("lot"),
    item: !ofStock || columnsOf(output, "quantity").length > 0 ? -1 : only("item"),
    // what two batteries gave together is nobody's alone
    serial: ["minutes", "wh", "ah"].some((measure) => columnsOf(output, measure).length > 0) ? -1 : only("serial"),
    many: header.findIndex((name) => parseHeader(name ?? "").says === "quantity"),
  };
  const some = (column: number, holds: (cell: Cell) => boolean) =>
    column !== -1 &&
    (textsInColumn(rows, column)?.some(holds) ?? rows.some((row) => holds(cellAt(row, column) ?? null)));
  return some(columns.expiry, (cell) => lotsIn(cell, parted).length > 0) ||
    some(columns.item, (cell) => countIn(cell) !== null) ||
    some(columns.serial, (cell) => (serialsIn(cell) ?? rangeIn(cell)) !== null)
    ? columns
    : null;
}

/** The table with a record for each lot that its records tell of. */
export function tableOfLots(table: Table, columns: LotColumns): Table {
  const rows = table.rows.flatMap((record, row) => (table.odd.has(row) ? [] : lotsOfRecord(record, columns)));
  return { ...table, rows, odd: new Map() };
}

/** A record once for each serial, or each lot that its expiry tells of, with its count taken out of its cells. */
export function lotsOfRecord(record: GridRow, { expiry, parted, lot, item, serial, many }: LotColumns): LotRow[] {
  const named = cellAt(record, serial) ?? null;
  const serials = serialsIn(named) ?? rangeIn(named, textAt(record, many));
  if (serials !== null)
    return serials.map((own) => ({
      line: record.line,
      cells: record.cells.map((cell, at) => (at === serial ? own : cell)),
    }));
  const counted = countIn(cellAt(record, item) ?? null);
  const lots = lotsIn(cellAt(record, expiry) ?? null, parted);
  if (counted === null && lots.length === 0) return [record];
  const { line, cells } = record;
  const told = lots.length > 0 ? lots : [{ date: cells[expiry] ?? null, count: null }];
  const names = textAt(record, lot).split(BETWEEN_SEVERAL);
  return told.map(({ date, count }, of) => ({
    line,
    cells: cells.map((cell, at) =>
      at === expiry
        ? date
        : at === item && counted
          ? counted.item
          : at === lot && names.length === told.length
            ? (names[of] as string)
            : cell,
    ),
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

/** All serials from the first to the last that a cell names, where its words or the count beside it say that it does. */
function rangeIn(cell: Cell, counted?: string): string[] | null {
  if (typeof cell !== "string" || cell.length > MAX_TYPED_CHARACTERS) return null;
  const [, before = "", first = "", by = "", again = "", last = ""] = RANGE.exec(cell.trim()) ?? [];
  const many = Number(last) - Number(first) + 1;
  if (!(many > 1 && many <= MOST_IN_RANGE) || (again !== "" && again !== before)) return null;
  // "2021-2044" may be one serial
  if (counted ? Number(counted) !== many : counted === "" && again === "" && /[-–]/.test(by)) return null;
  return Array.from({ length: many }, (_, at) => before + String(Number(first) + at).padStart(first.length, "0"));
}

function lotsIn(cell: Cell, parted: boolean): { date: Cell; count: number | null }[] {
  return typeof cell === "string" && cell.length > 7 && cell.length <= MAX_TYPED_CHARACTERS
    ? datesWithCounts(cellText(cell), parted)
    : [];
}

function countIn(cell: Cell): { item: string; count: number } | null {
  if (typeof cell !== "string" || cell.length > MAX_TYPED_CHARACTERS) return null;
  const [, count, item] = COUNT_FIRST.exec(cell.trim()) ?? [];
  if (count !== undefined && item !== undefined) return { item, count: Number(count) };
  const [, name, last] = COUNT_LAST.exec(cell.trim()) ?? [];
  return name !== undefined && last !== undefined ? { item: name.trim(), count: Number(last) } : null;
}
