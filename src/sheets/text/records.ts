import Papa from "papaparse";
import type { GridRow } from "../grid.ts";

/** Separators that are tried, in order of preference. */
const SEPARATORS = [",", ";", "\t", "|"] as const;

/** Records and characters that are enough to tell the separator by. */
const PREVIEW_RECORDS = 60;
const PREVIEW_CHARACTERS = 65_536;

/**
 * The records of a separated text, each with the physical line on which it starts, and its separator.
 *
 * @param most  how many records are read at most
 */
export function textRecords(text: string, most: number): { rows: GridRow[]; separator: string } {
  const { body, separator: said, skippedLines } = withoutSepLine(withPlainLineEnds(text));
  const separator = said ?? guessSeparator(body);
  const records = Papa.parse<string[]>(body, { delimiter: separator, newline: "\n", preview: most }).data;
  const rows: GridRow[] = [];
  let line = 1 + skippedLines;
  const mayHoldLines = body.includes('"');
  for (const cells of records) {
    rows.push({ line, cells });
    line += 1 + (mayHoldLines ? linesWithin(cells) : 0);
  }
  return { rows, separator };
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
    const records = Papa.parse<string[]>(sample, { delimiter: separator, preview: PREVIEW_RECORDS }).data;
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
