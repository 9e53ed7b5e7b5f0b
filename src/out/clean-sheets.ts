import { dayFromIso } from "../calendar/day.ts";
import { type ColumnSpec, SHEETS, type SheetSpec, sheetSpec } from "../fleet/columns.ts";
import type { Fleet } from "../fleet/rows.ts";
import { type CanonicalRow, type CanonicalValue, canonicalRows } from "../sheets/canonical-rows.ts";
import { csvText } from "./csv.ts";
import { workbookText } from "./workbook/workbook-text.ts";
import { workbookDay, writeWorkbook } from "./workbook/write-workbook.ts";

/** A cleaned sheet: its file's name and its text. */
interface CleanSheet {
  name: string;
  text: string;
}

/** The fleet as CSV sheets in canonical columns, one a kind that has rows; reading them gives the same fleet. */
export function cleanSheets(fleet: Fleet): CleanSheet[] {
  const rows = canonicalRows(fleet);
  return SHEETS.filter(({ kind }) => rows[kind].length > 0).map((sheet) => ({
    name: `${sheet.kind}.csv`,
    text: sheetText(sheet, rows[sheet.kind]),
  }));
}

/** The fleet's dated stock as the text of its canonical sheet; the header alone where there is none. */
export function datedStockCsv(fleet: Fleet): string {
  return sheetText(sheetSpec("dated_stock"), canonicalRows(fleet).dated_stock);
}

/** The fleet as one workbook, a tab for each kind that has rows, dates as dates and serials as text. */
export async function cleanWorkbook(fleet: Fleet): Promise<Uint8Array> {
  const rows = canonicalRows(fleet);
  return writeWorkbook(
    SHEETS.filter(({ kind }) => rows[kind].length > 0).map(({ kind, columns }) => ({
      name: kind,
      columns: columns.map(({ name, type }) => ({
        header: name,
        key: name,
        ...(type === "date" ? { numFmt: "yyyy-mm-dd" } : {}),
      })),
      data: rows[kind].map((row) =>
        Object.fromEntries(columns.map((column) => [column.name, workbookValue(cellOf(row, column.name), column)])),
      ),
    })),
  );
}

function sheetText({ columns }: SheetSpec, rows: readonly CanonicalRow[]): string {
  const names = columns.map(({ name }) => name);
  return csvText(
    names,
    rows.map((row) => names.map((name) => cellOf(row, name))),
  );
}

function cellOf(row: CanonicalRow, name: string): CanonicalValue {
  return row[name] as CanonicalValue;
}

function workbookValue(value: CanonicalValue, { type }: ColumnSpec): CanonicalValue {
  if (typeof value !== "string") return value;
  const day = type === "date" ? dayFromIso(value) : null;
  return day === null ? workbookText(value) : workbookDay(day);
}
