import { decodeText, type SheetFile, textRecords } from "../../src/index.ts";
import { csvRow } from "../csv-row.ts";

const EVERY_RECORD = Infinity;

/** Where a row stands. */
export interface RowPlace {
  file: string;
  /** The tab's name; null in a text sheet. */
  sheet: string | null;
  /** The physical line on which the record starts, or the worksheet row. */
  line: number;
}

/** What a cell of a row is to hold; columns are 1-based. */
export interface CellChange {
  column: number;
  text: string;
}

/**
 * A sheet with some cells of one of its rows replaced, and everything else as it stood. A text sheet becomes UTF-8; a
 * workbook's file stays as it is and carries the corrections beside it.
 *
 * @throws RangeError where no record of a text sheet starts on the line
 */
export function correctRow(file: SheetFile, { sheet, line }: RowPlace, changes: readonly CellChange[]): SheetFile {
  if (sheet === null) return { ...file, bytes: correctedText(file, line, changes) };
  const more = changes.map((change) => ({ sheet, line, ...change }));
  // The engine knows a workbook by its bytes and would not open the same ones again.
  return { ...file, bytes: file.bytes.slice(), corrections: [...(file.corrections ?? []), ...more] };
}

function correctedText({ name, bytes }: SheetFile, line: number, changes: readonly CellChange[]): Uint8Array {
  const { text } = decodeText(bytes);
  const lines = text.replace(/\r\n?/g, "\n").split("\n");
  const { rows, separator } = textRecords(text, EVERY_RECORD);
  const record = rows.find((row) => row.line === line);
  if (!record) throw new RangeError(`correctRow: no record starts on line ${line} of ${name}`);
  const cells = record.cells.map((cell) => String(cell ?? ""));
  // A quoted cell may run over several lines.
  const height = cells.reduce((all, cell) => all + cell.split("\n").length - 1, 1);
  for (const { column, text: now } of changes) {
    while (cells.length < column) cells.push("");
    cells[column - 1] = now;
  }
  lines.splice(line - 1, height, csvRow(cells, separator));
  return new TextEncoder().encode(lines.join("\n"));
}
