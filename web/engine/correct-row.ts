import { decodeText, type SheetFile, textRecords } from "../../src/index.ts";
import { csvRow } from "../csv-row.ts";

const EVERY_RECORD = 0;

/**
 * A text sheet with one of its records replaced, and everything else as it stood. The result is UTF-8.
 *
 * @param line  the physical line on which the record starts
 * @throws RangeError where no record starts there
 */
export function correctRow(file: SheetFile, line: number, cells: readonly string[]): SheetFile {
  const { text } = decodeText(file.bytes);
  const lines = text.replace(/\r\n?/g, "\n").split("\n");
  const { rows, separator } = textRecords(text, EVERY_RECORD);
  const record = rows.find((row) => row.line === line);
  if (!record) throw new RangeError(`correctRow: no record starts on line ${line} of ${file.name}`);
  // A quoted cell may run over several lines.
  const height = record.cells.map((cell) => String(cell ?? "").split("\n").length - 1).reduce((a, b) => a + b, 1);
  lines.splice(line - 1, height, csvRow(cells, separator));
  return { ...file, bytes: new TextEncoder().encode(lines.join("\n")) };
}
