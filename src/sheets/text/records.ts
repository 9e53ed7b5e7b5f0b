import Papa from "papaparse";
import type { GridRow } from "../grid.ts";
import { CodedText, plainAscii } from "./coded-text.ts";
import { decodeText } from "./decode-text.ts";
import { plainRecords } from "./plain-records.ts";

/** Separators that are tried, in order of preference. */
const SEPARATORS = [",", ";", "\t", "|"] as const;

/** Records and characters that are enough to tell the separator by. */
const PREVIEW_RECORDS = 60;
const PREVIEW_CHARACTERS = 65_536;

/** Lines with a quote that never closes that are mended one by one; in a file of more, quotes mean nothing. */
const MOST_REPAIRS = 20;

/**
 * The records of a separated text, each with the physical line on which it starts, and its separator.
 *
 * @param most  how many records are read at most
 */
export function textRecords(text: string, most: number): TextRecords {
  const { rows, separator, openQuotes } = recordsOfText("", text, most);
  return { rows: rows.map(({ line, cells }) => ({ line, cells })), separator, openQuotes };
}

/** Records, the separator of their cells, and the lines with a quote that never closes. */
interface TextRecords {
  rows: GridRow[];
  separator: string;
  openQuotes: number[];
}

/** The same of a file's bytes. Its records may be sources of what is read from them. */
export function recordsOfFile(file: string, bytes: Uint8Array, most: number): TextRecords {
  const ascii = plainAscii(bytes);
  if (ascii === null) return recordsOfText(file, decodeText(bytes).text, most);
  const text = CodedText.ofAscii(ascii);
  const head = headOf(text.slice(0, PREVIEW_CHARACTERS));
  const rows = plainRecords(file, text, head.start, head.firstLine, head.separator, most);
  return { rows, separator: head.separator, openQuotes: [] };
}

function recordsOfText(file: string, whole: string, most: number): TextRecords {
  const text = withPlainLineEnds(whole);
  const { separator, start, firstLine } = headOf(text.slice(0, PREVIEW_CHARACTERS));
  const openQuotes: number[] = [];
  if (!text.includes('"'))
    return { rows: plainRecords(file, CodedText.of(text), start, firstLine, separator, most), separator, openQuotes };
  const rows: GridRow[] = [];
  let line = firstLine;
  let rest = text.slice(start, endOfRecords(text));
  while (rest !== "") {
    const { data, errors } = quotedRecords(rest, separator, most - rows.length);
    const open = errors.find(({ code }) => code === "MissingQuotes")?.row;
    const restLine = line;
    for (const cells of open === undefined ? data : data.slice(0, open)) {
      rows.push({ line, cells });
      line += 1 + linesWithin(cells);
    }
    if (open === undefined || rows.length >= most) break;
    // A quote that never closes would swallow all that follows: its line is read as it stands, the rest anew.
    const from = startOfLine(rest, line - restLine);
    const end = rest.indexOf("\n", from);
    rows.push({ line, cells: rest.slice(from, end === -1 ? undefined : end).split(separator) });
    openQuotes.push(line);
    line++;
    rest = end === -1 ? "" : rest.slice(end + 1);
    if (openQuotes.length >= MOST_REPAIRS) rest = rest.replaceAll('"', "");
  }
  return { rows, separator, openQuotes };
}

/** Where a text's last record ends: a line end there closes it and begins none. */
function endOfRecords(text: string): number {
  return text.endsWith("\n") ? text.length - 1 : text.length;
}

/** The records of a text that may hold quotes, and where one of them never closes. */
export function quotedRecords(
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

/** What a text's first characters tell: its separator, where its records start and on which physical line. */
function headOf(preview: string): { separator: string; start: number; firstLine: number } {
  // a first line `sep=;` names the separator and is no record
  const match = /^"?sep=(.)"?[^\S\n]*(\n|$)/i.exec(preview.slice(0, 20));
  return match
    ? { separator: match[1] as string, start: match[0].length, firstLine: 2 }
    : { separator: guessSeparator(preview), start: 0, firstLine: 1 };
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
