import { writeXlsx } from "hucre/xlsx";
import { dayFromIso } from "../calendar/day.ts";
import { type ColumnSpec, SHEETS } from "../fleet/columns.ts";
import type { Fleet } from "../fleet/rows.ts";
import { type CanonicalRow, type CanonicalValue, canonicalRows } from "../sheets/canonical-rows.ts";
import { csvText, guardText } from "./csv.ts";

const MS_PER_DAY = 86_400_000;

/** A cleaned sheet: its file's name and its text. */
interface CleanSheet {
  name: string;
  text: string;
}

/** The fleet as CSV sheets in canonical columns, one a kind that has rows; reading them gives the same fleet. */
export function cleanSheets(fleet: Fleet): CleanSheet[] {
  const rows = canonicalRows(fleet);
  return SHEETS.filter(({ kind }) => rows[kind].length > 0).map(({ kind, columns }) => ({
    name: `${kind}.csv`,
    text: csvText(
      columns.map(({ name }) => name),
      rows[kind].map((row) => columns.map(({ name }) => cellOf(row, name))),
    ),
  }));
}

/** The fleet as one workbook, a tab for each kind that has rows, dates as dates and serials as text. */
export async function cleanWorkbook(fleet: Fleet): Promise<Uint8Array> {
  const rows = canonicalRows(fleet);
  return writeXlsx({
    sheets: SHEETS.filter(({ kind }) => rows[kind].length > 0).map(({ kind, columns }) => ({
      name: kind,
      columns: columns.map(({ name, type }) => ({
        header: name,
        key: name,
        ...(type === "date" ? { numFmt: "yyyy-mm-dd" } : {}),
      })),
      data: rows[kind].map((row) =>
        Object.fromEntries(columns.map((column) => [column.name, workbookValue(cellOf(row, column.name), column)])),
      ),
      freezePane: { rows: 1 },
    })),
  });
}

function cellOf(row: CanonicalRow, name: string): CanonicalValue {
  return row[name] as CanonicalValue;
}

function workbookValue(value: CanonicalValue, { type }: ColumnSpec): CanonicalValue | Date {
  if (typeof value !== "string") return value;
  const day = type === "date" ? dayFromIso(value) : null;
  return day === null ? guardText(value) : new Date(day * MS_PER_DAY);
}
