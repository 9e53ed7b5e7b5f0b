import { readXlsx, type Sheet, type Workbook } from "hucre/xlsx";
import type { Grid, GridRow } from "../grid.ts";
import { LIMITS } from "../limits.ts";
import type { RefusedFile, SheetFile } from "../reading.ts";
import { refusal } from "./refusals.ts";
import { plainCell, seenCell } from "./workbook-cell.ts";

/** The tabs of a workbook as grids, or why it is refused. */
export interface OpenedWorkbook {
  grids: Grid[];
  refused: RefusedFile | null;
}

/** Reads a workbook's tabs, hidden ones too, as people see their cells. Its limits were checked before. */
export async function openWorkbook({ name, bytes }: SheetFile, digest: string): Promise<OpenedWorkbook> {
  let workbook: Workbook;
  try {
    workbook = await readXlsx(bytes, { readStyles: true });
  } catch (error) {
    const encrypted = error instanceof Error && error.name === "EncryptedFileError";
    return { grids: [], refused: refusal(name, encrypted ? "encrypted" : "damaged") };
  }
  const grids: Grid[] = [];
  for (const sheet of workbook.sheets) {
    const grid = gridOf(sheet, name, digest, workbook.dateSystem === "1904" ? "1904" : "1900");
    if (grid.rows.length > LIMITS.rows) return { grids: [], refused: refusal(name, "too-many-rows") };
    if (grid.rows.some(({ cells }) => cells.length > LIMITS.columns))
      return { grids: [], refused: refusal(name, "too-many-columns") };
    grids.push(grid);
  }
  return { grids, refused: null };
}

function gridOf(sheet: Sheet, file: string, sha256: string, system: "1900" | "1904"): Grid {
  const rows: GridRow[] = [];
  const byIndex = new Map<number, GridRow>();
  sheet.rows.forEach((values, index) => {
    let width = values.length;
    while (width > 0 && (values[width - 1] === null || values[width - 1] === undefined || values[width - 1] === ""))
      width--;
    if (width === 0) return;
    const row = { line: index + 1, cells: values.slice(0, width).map((value) => plainCell(value, system)) };
    rows.push(row);
    byIndex.set(index, row);
  });
  // Only cells with a format or an error of their own stand here: far fewer than there are cells.
  for (const [place, cell] of sheet.cells ?? []) {
    const comma = place.indexOf(",");
    const row = byIndex.get(Number(place.slice(0, comma)));
    const column = Number(place.slice(comma + 1));
    if (row && column < row.cells.length) row.cells[column] = seenCell(cell.formulaResult ?? cell.value, cell, system);
  }
  fillDownMerges(rows, sheet);
  const hiddenRows = [...(sheet.rowDefs ?? [])].filter(([, def]) => def.hidden).length;
  const hiddenColumns = (sheet.columns ?? []).filter((column) => column?.hidden).length;
  return {
    file,
    sheet: sheet.name,
    rows,
    sha256,
    semicolons: false,
    openQuotes: [],
    hidden: { tab: sheet.hidden === true || sheet.veryHidden === true, rows: hiddenRows, columns: hiddenColumns },
    spans: (sheet.merges ?? [])
      .filter(({ startCol, endCol }) => endCol > startCol)
      .map(({ startRow, startCol, endCol }) => ({ line: startRow + 1, from: startCol, to: endCol })),
  };
}

/** A cell merged over several rows is meant for each of them. */
function fillDownMerges(rows: GridRow[], sheet: Sheet): void {
  if (!sheet.merges?.length) return;
  const byLine = new Map(rows.map((row) => [row.line, row]));
  for (const { startRow, endRow, startCol, endCol } of sheet.merges) {
    if (endRow === startRow || endCol - startCol > 0) continue;
    const value = byLine.get(startRow + 1)?.cells[startCol] ?? null;
    if (value === null || endRow - startRow > LIMITS.rows) continue;
    for (let row = startRow + 1; row <= endRow; row++) {
      const target = byLine.get(row + 1);
      if (!target) continue;
      while (target.cells.length <= startCol) target.cells.push(null);
      target.cells[startCol] ??= value;
    }
  }
}
