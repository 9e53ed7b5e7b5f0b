import { sha256 } from "../maths/sha256.ts";
import type { Grid } from "./grid.ts";
import { LIMITS } from "./limits.ts";
import type { RefusedFile, SheetFile } from "./reading.ts";
import { findTables } from "./tables/find-tables.ts";
import type { Table } from "./tables/table.ts";
import { decodeText } from "./text/decode-text.ts";
import { textRecords } from "./text/records.ts";
import { openWorkbook } from "./workbook/open-workbook.ts";
import { judgeFile, type RefusalCode, refusal } from "./workbook/refusals.ts";

/** What is in a file: its tabs with their tables, or why it cannot be read. */
export interface OpenedFile {
  tabs: { grid: Grid; tables: Table[] }[];
  refused: RefusedFile | null;
  /** Why a folder's other file was passed over; null for a sheet. */
  passedOver: RefusalCode | null;
}

/** Opening is the dear part and two callers need it, so what was found is kept as long as the bytes are. */
const opened = new WeakMap<Uint8Array, { name: string; found: OpenedFile }>();

/**
 * Opens a file: judges its bytes, decodes it, parts it into records and finds its tables. The same bytes are
 * opened once; a workbook must have been
 * opened by `openWorkbooks` before, since unpacking it takes waiting, and is refused otherwise.
 */
export function openFile(file: SheetFile): OpenedFile {
  const before = opened.get(file.bytes);
  if (before?.name === file.name) return before.found;
  const verdict = judgeFile(file);
  if (verdict.kind === "workbook") return { tabs: [], refused: refusal(file.name, "unopened"), passedOver: null };
  const found = verdict.kind === "text" ? openText(file) : notOpened(verdict);
  opened.set(file.bytes, { name: file.name, found });
  return found;
}

/** Opens every workbook among the files, so that reading them needs no waiting. To be awaited before `readSheets`. */
export async function openWorkbooks(files: readonly SheetFile[]): Promise<void> {
  for (const file of files) {
    if (opened.get(file.bytes)?.name === file.name || judgeFile(file).kind !== "workbook") continue;
    const { grids, refused } = await openWorkbook(file, sha256(file.bytes));
    const tabs = grids.map((grid) => ({ grid, tables: findTables(grid) }));
    opened.set(file.bytes, { name: file.name, found: { tabs, refused, passedOver: null } });
  }
}

function notOpened(verdict: Exclude<ReturnType<typeof judgeFile>, { kind: "text" | "workbook" }>): OpenedFile {
  return verdict.kind === "refused"
    ? { tabs: [], refused: verdict.refused, passedOver: null }
    : { tabs: [], refused: null, passedOver: verdict.why };
}

function openText({ name, bytes }: SheetFile): OpenedFile {
  const { text } = decodeText(bytes);
  const { rows, separator } = textRecords(text, LIMITS.rows + 1);
  const code =
    rows.length > LIMITS.rows
      ? "too-many-rows"
      : rows.some(({ cells }) => cells.length > LIMITS.columns)
        ? "too-many-columns"
        : null;
  if (code !== null) return { tabs: [], refused: refusal(name, code), passedOver: null };
  const grid: Grid = {
    file: name,
    sheet: null,
    rows,
    sha256: sha256(bytes),
    semicolons: separator === ";",
    hidden: { tab: false, rows: 0, columns: 0 },
    spans: [],
  };
  return { tabs: [{ grid, tables: findTables(grid) }], refused: null, passedOver: null };
}
