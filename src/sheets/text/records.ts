import Papa from "papaparse";
import { mixed } from "../../maths/mixed.ts";
import type { GridRow } from "../grid.ts";
import { LIMITS } from "../limits.ts";
import { ColumnTexts } from "./column-texts.ts";
import { TextRow } from "./text-row.ts";

/** Separators that are tried, in order of preference. */
const SEPARATORS = [",", ";", "\t", "|"] as const;

/** Records and characters that are enough to tell the separator by. */
const PREVIEW_RECORDS = 60;
const PREVIEW_CHARACTERS = 65_536;

const LINE_FEED = 10;

/** Lines with a quote that never closes that are mended one by one; in a file of more, quotes mean nothing. */
const MOST_REPAIRS = 20;

/**
 * The records of a separated text, each with the physical line on which it starts, and its separator.
 *
 * @param most  how many records are read at most
 */
export function textRecords(text: string, most: number): TextRecords {
  const { rows, separator, openQuotes } = recordsOfFile("", text, most);
  return { rows: rows.map(({ line, cells }) => ({ line, cells })), separator, openQuotes };
}

/** Records, the separator of their cells, and the lines with a quote that never closes. */
interface TextRecords {
  rows: GridRow[];
  separator: string;
  openQuotes: number[];
}

/** The same of a file, whose records may be sources of what is read from them. */
export function recordsOfFile(file: string, text: string, most: number): TextRecords {
  const { body, separator: said, skippedLines } = withoutSepLine(withPlainLineEnds(text));
  const separator = said ?? guessSeparator(body);
  const rows: GridRow[] = [];
  const openQuotes: number[] = [];
  if (!body.includes('"'))
    return { rows: plainRecords(file, body, separator, most, 1 + skippedLines), separator, openQuotes };
  let line = 1 + skippedLines;
  let rest = body.slice(0, endOfRecords(body));
  while (rest !== "") {
    const { data, errors } = quotedRecords(rest, separator, most - rows.length);
    const open = errors.find(({ code }) => code === "MissingQuotes")?.row;
    const firstLine = line;
    for (const cells of open === undefined ? data : data.slice(0, open)) {
      rows.push({ line, cells });
      line += 1 + linesWithin(cells);
    }
    if (open === undefined || rows.length >= most) break;
    // A quote that never closes would swallow all that follows: its line is read as it stands, the rest anew.
    const from = startOfLine(rest, line - firstLine);
    const end = rest.indexOf("\n", from);
    rows.push({ line, cells: rest.slice(from, end === -1 ? undefined : end).split(separator) });
    openQuotes.push(line);
    line++;
    rest = end === -1 ? "" : rest.slice(end + 1);
    if (openQuotes.length >= MOST_REPAIRS) rest = rest.replaceAll('"', "");
  }
  return { rows, separator, openQuotes };
}

/** The records of a text without quotes: its lines. */
function plainRecords(file: string, body: string, separator: string, most: number, firstLine: number): TextRow[] {
  if (body === "") return [];
  const end = endOfRecords(body);
  const parting = separator.charCodeAt(0);
  // counted first: a list that grows is moved again and again, and large ones never stay where they are made
  const size = countCells(body, end, parting, most);
  const numbers = new Int32Array(size.cells);
  const starts = new Int32Array(size.records + 1);
  const columns: ColumnTexts[] = [];
  const text = { firstLine, columns, numbers, starts };
  const rows = new Array<TextRow>(size.records);
  let cell = 0;
  let hash = 0;
  for (let record = 0, at = 0, from = 0, column = 0; record < size.records; at++) {
    const code = at === end ? LINE_FEED : body.charCodeAt(at);
    if (code !== parting && code !== LINE_FEED) {
      hash = mixed(hash, code);
      continue;
    }
    if (column === columns.length && column <= LIMITS.columns) columns.push(new ColumnTexts());
    // beyond the columns that a sheet may have the file is refused anyway
    if (column <= LIMITS.columns) numbers[cell] = columns[column]!.numberOf(body, from, at, hash);
    hash = 0;
    cell++;
    column++;
    from = at + 1;
    if (code === parting) continue;
    rows[record] = new TextRow(file, firstLine + record, text);
    record++;
    starts[record] = cell;
    column = 0;
  }
  return rows;
}

/** Where a text's last record ends: a line end there closes it and begins none. Source: RFC 4180, section 2, rules 1 and 2. */
function endOfRecords(body: string): number {
  return body.endsWith("\n") ? body.length - 1 : body.length;
}

/** How many records a text has, and cells in them, as far as they are read. */
function countCells(body: string, end: number, parting: number, most: number): { records: number; cells: number } {
  let records = 0;
  let cells = 0;
  for (let at = 0; at <= end && records < most; at++) {
    const code = at === end ? LINE_FEED : body.charCodeAt(at);
    if (code !== parting && code !== LINE_FEED) continue;
    cells++;
    if (code === LINE_FEED) records++;
  }
  return { records, cells };
}

/** The records of a text that may hold quotes, and where one of them never closes. */
function quotedRecords(
  text: string,
  delimiter: string,
  preview: number,
): { data: string[][]; errors: { code: string; row: number }[] } {
  // the parser alone: nothing is streamed, guessed or named by its header
  return new Papa.Parser({ delimiter, newline: "\n", preview }).parse(text, 0, false);
}

/** Where a line starts, counted from 0, in a text. */
function startOfLine(text: string, line: number): number {
  let at = 0;
  for (let i = 0; i < line; i++) at = text.indexOf("\n", at) + 1;
  return at;
}

/** Line ends inside a record's quoted cells. */
function linesWithin(cells: readonly string[]): number {
  let lines = 0;
  for (const cell of cells) for (let at = cell.indexOf("\n"); at !== -1; at = cell.indexOf("\n", at + 1)) lines++;
  return lines;
}

/** Line ends of every kind as one line feed: files pasted together mix them. */
function withPlainLineEnds(text: string): string {
  return text.includes("\r") ? text.replace(/\r\n?/g, "\n") : text;
}

/** A first line `sep=;` names the separator and is no record. */
function withoutSepLine(text: string): { body: string; separator: string | null; skippedLines: number } {
  const match = /^"?sep=(.)"?[^\S\n]*(\n|$)/i.exec(text.slice(0, 20));
  return match
    ? { body: text.slice(match[0].length), separator: match[1] as string, skippedLines: 1 }
    : { body: text, separator: null, skippedLines: 0 };
}

/**
 * The separator whose records agree best on a number of cells above one: most records with the
 * commonest width, then the greater width.
 */
export function guessSeparator(text: string): string {
  const sample = text.slice(0, PREVIEW_CHARACTERS);
  let best = { separator: ",", score: 0 };
  for (const separator of SEPARATORS) {
    const records = quotedRecords(sample, separator, PREVIEW_RECORDS).data;
    const widths = new Map<number, number>();
    let filled = 0;
    for (const cells of records) {
      if (cells.every((cell) => cell.trim() === "")) continue;
      filled++;
      if (cells.length > 1) widths.set(cells.length, (widths.get(cells.length) ?? 0) + 1);
    }
    let score = 0;
    for (const [width, count] of widths) score = Math.max(score, count / filled + Math.min(width, 50) / 1000);
    if (score > best.score + 1e-9) best = { separator, score };
  }
  return best.separator;
}
