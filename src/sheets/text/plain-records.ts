import { mixed } from "../../maths/mixed.ts";
import { LIMITS } from "../limits.ts";
import type { CodedText } from "./coded-text.ts";
import { ColumnTexts } from "./column-texts.ts";
import { TextRow } from "./text-row.ts";

const LINE_FEED = 10;

/**
 * The records of a text without quotes: its lines. A line end at the end of all closes the last record and begins none
 * (RFC 4180, section 2, rules 1 and 2).
 *
 * @param start  where the first record starts
 * @param firstLine  the physical line on which it does
 * @param most  how many records are read at most
 */
export function plainRecords(
  file: string,
  text: CodedText,
  start: number,
  firstLine: number,
  separator: string,
  most: number,
): TextRow[] {
  const { codes } = text;
  const end = codes[codes.length - 1] === LINE_FEED ? codes.length - 1 : codes.length;
  if (start >= codes.length) return [];
  const parting = separator.charCodeAt(0);
  // counted first: a list that grows is moved again and again, and large ones never stay where they are made
  const size = countCells(codes, start, end, parting, most);
  const numbers = new Int32Array(size.cells);
  const starts = new Int32Array(size.records + 1);
  const columns: ColumnTexts[] = [];
  const cells = { firstLine, columns, numbers, starts };
  const rows = new Array<TextRow>(size.records);
  let cell = 0;
  let hash = 0;
  for (let record = 0, at = start, from = start, column = 0; record < size.records; at++) {
    const code = at === end ? LINE_FEED : codes[at]!;
    if (code !== parting && code !== LINE_FEED) {
      hash = mixed(hash, code);
      continue;
    }
    if (column === columns.length && column <= LIMITS.columns) columns.push(new ColumnTexts(text));
    // beyond the columns that a sheet may have the file is refused anyway
    if (column <= LIMITS.columns) numbers[cell] = columns[column]!.numberOf(from, at, hash);
    hash = 0;
    cell++;
    column++;
    from = at + 1;
    if (code === parting) continue;
    rows[record] = new TextRow(file, firstLine + record, cells);
    record++;
    starts[record] = cell;
    column = 0;
  }
  return rows;
}

/** How many records a text has, and cells in them, as far as they are read. */
function countCells(
  codes: CodedText["codes"],
  start: number,
  end: number,
  parting: number,
  most: number,
): { records: number; cells: number } {
  let records = 0;
  let cells = 0;
  for (let at = start; at <= end && records < most; at++) {
    const code = at === end ? LINE_FEED : codes[at]!;
    if (code !== parting && code !== LINE_FEED) continue;
    cells++;
    if (code === LINE_FEED) records++;
  }
  return { records, cells };
}
