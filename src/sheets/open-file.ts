import { sha256 } from "../maths/sha256.ts";
import { type Grid, widthOf } from "./grid.ts";
import { LIMITS } from "./limits.ts";
import type { ColumnsFile } from "./mapping/columns-file.ts";
import type { RefusedFile, SheetFile } from "./reading.ts";
import { findTables } from "./tables/find-tables.ts";
import { withDevicesNamedElsewhere } from "./tables/named-as-devices.ts";
import { withTabPlaces } from "./tables/named-places.ts";
import { LONGEST_LAYOUT, otherLayout } from "./tables/other-layout.ts";
import { tablesSideBySide } from "./tables/side-by-side.ts";
import type { Table } from "./tables/table.ts";
import { withPartedLines } from "./text/parted-lines.ts";
import { recordsOfFile } from "./text/records.ts";
import { withCorrections } from "./workbook/correct-cells.ts";
import { openWorkbook } from "./workbook/open-workbook.ts";
import { judgeFile, type RefusalCode, refusal } from "./workbook/refusals.ts";

/** What is in a file: its tabs with their tables, or why it cannot be read. */
export interface OpenedFile {
  tabs: { grid: Grid; tables: Table[] }[];
  refused: RefusedFile | null;
  /** Why a folder's other file was passed over; null for a sheet. */
  passedOver: RefusalCode | null;
}

/** A file's tabs before their tables are looked for. */
interface UnpackedFile {
  grids: Grid[];
  refused: RefusedFile | null;
  /** Why a folder's other file was passed over; null for a sheet. */
  passedOver: RefusalCode | null;
}

/** Opening is the dear part and two callers need it, so what was found is kept as long as the bytes are. */
const unpacked = new WeakMap<Uint8Array, { name: string; file: UnpackedFile }>();
type Found = WeakMap<Grid, { columns: ColumnsFile | null; tables: Table[] }>;
/** What is recognised is asked for beside what a columns file says: neither drives the other out. */
const recognised: Found = new WeakMap();
const mapped: Found = new WeakMap();

/**
 * Opens a file: judges its bytes, decodes it, parts it into records and finds its tables. The same bytes are opened once;
 * a workbook must have been opened by `openWorkbooks` before, since unpacking it takes waiting, and is refused otherwise.
 */
export function openFile(file: SheetFile, columns: ColumnsFile | null): OpenedFile {
  const { grids, refused, passedOver } = unpack(file);
  const tables = withTabPlaces(grids.flatMap((grid) => tablesIn(grid, columns)));
  const tabs = grids.map((grid) => ({ grid, tables: tables.filter((table) => table.grid === grid) }));
  return { tabs, refused, passedOver };
}

/** Opens files as `openFile` does, and settles what their tables say of one another. */
export function openFiles(files: readonly SheetFile[], columns: ColumnsFile | null): OpenedFile[] {
  const opened = files.map((file) => openFile(file, columns));
  const tables = withDevicesNamedElsewhere(opened.flatMap(({ tabs }) => tabs.flatMap((tab) => tab.tables)));
  return opened.map((file) => ({
    ...file,
    tabs: file.tabs.map(({ grid }) => ({ grid, tables: tables.filter((table) => table.grid === grid) })),
  }));
}

function tablesIn(grid: Grid, columns: ColumnsFile | null): Table[] {
  const found = columns === null ? recognised : mapped;
  const before = found.get(grid);
  if (before && before.columns === columns) return before.tables;
  const tables = tablesSideBySide(grid, (part) => findTables(part, columns));
  found.set(grid, { columns, tables });
  return tables;
}

function unpack(file: SheetFile): UnpackedFile {
  const before = unpacked.get(file.bytes);
  if (before?.name === file.name) return before.file;
  const verdict = judgeFile(file);
  if (verdict.kind === "workbook") return { grids: [], refused: refusal(file.name, "unopened"), passedOver: null };
  return keep(file, verdict.kind === "text" ? unpackText(file) : notOpened(verdict));
}

/** Opens every workbook among the files, so that reading them needs no waiting. To be awaited before `readSheets`. */
export async function openWorkbooks(files: readonly SheetFile[]): Promise<void> {
  for (const file of files) {
    if (unpacked.get(file.bytes)?.name === file.name || judgeFile(file).kind !== "workbook") continue;
    const workbook = await openWorkbook(file, sha256(file.bytes));
    // before its tables are looked for: what was put right decides what they are
    const grids = withCorrections(workbook.grids.map(withPartedLines), file.corrections ?? []);
    keep(file, { ...workbook, grids, passedOver: null });
  }
}

/** Keeps what a file holds, each tab of which nothing can be read told as a list where it is one in another layout. */
function keep({ name, bytes, corrections = [] }: SheetFile, { grids, ...opened }: UnpackedFile): UnpackedFile {
  const file = { ...opened, grids: withCorrections(grids.map(asList), corrections) };
  unpacked.set(bytes, { name, file });
  return file;
}

function asList(grid: Grid): Grid {
  const isShort = grid.rows.length <= LONGEST_LAYOUT;
  return isShort ? otherLayout(grid, tablesIn(grid, null), (list) => tablesIn(list, null)) : grid;
}

function notOpened(verdict: Exclude<ReturnType<typeof judgeFile>, { kind: "text" | "workbook" }>): UnpackedFile {
  return verdict.kind === "refused"
    ? { grids: [], refused: verdict.refused, passedOver: null }
    : { grids: [], refused: null, passedOver: verdict.why };
}

function unpackText({ name, bytes }: SheetFile): UnpackedFile {
  const { rows, separator, openQuotes } = recordsOfFile(name, bytes, LIMITS.rows + 1);
  const code =
    rows.length > LIMITS.rows
      ? "too-many-rows"
      : rows.some((row) => widthOf(row) > LIMITS.columns)
        ? "too-many-columns"
        : null;
  if (code !== null) return { grids: [], refused: refusal(name, code), passedOver: null };
  let digest: string | null = null;
  const grid: Grid = {
    file: name,
    sheet: null,
    rows,
    // worked out when asked for: a large file's takes as long as reading its cells, and text for people does without
    get sha256() {
      digest ??= sha256(bytes);
      return digest;
    },
    semicolons: separator === ";",
    openQuotes,
    hidden: { tab: false, rows: 0, columns: 0 },
    spans: [],
  };
  return { grids: [withPartedLines(grid)], refused: null, passedOver: null };
}
