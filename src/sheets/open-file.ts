import { sha256 } from "../maths/sha256.ts";
import type { Grid } from "./grid.ts";
import type { RefusedFile, SheetFile } from "./reading.ts";
import { findTables } from "./tables/find-tables.ts";
import type { Table } from "./tables/table.ts";
import { decodeText } from "./text/decode-text.ts";
import { refusedAsNoText } from "./text/not-text.ts";
import { textRecords } from "./text/records.ts";

/** What is in a file: its tabs with their tables, or why it cannot be read. */
export interface OpenedFile {
  tabs: { grid: Grid; tables: Table[] }[];
  refused: RefusedFile | null;
}

/** Opening is the dear part and two callers need it, so what was found is kept as long as the bytes are. */
const opened = new WeakMap<Uint8Array, OpenedFile>();

/** Opens a file: decodes it, parts it into records and finds its tables. The same bytes are opened once. */
export function openFile(file: SheetFile): OpenedFile {
  const before = opened.get(file.bytes);
  if (before?.tabs.every(({ grid }) => grid.file === file.name)) return before;
  const now = openText(file);
  opened.set(file.bytes, now);
  return now;
}

function openText(file: SheetFile): OpenedFile {
  const refused = refusedAsNoText(file);
  if (refused || file.bytes.length === 0) return { tabs: [], refused };
  const { text } = decodeText(file.bytes);
  const { rows, separator } = textRecords(text);
  const grid: Grid = { file: file.name, sheet: null, rows, sha256: sha256(file.bytes), semicolons: separator === ";" };
  return { tabs: [{ grid, tables: findTables(grid) }], refused: null };
}
