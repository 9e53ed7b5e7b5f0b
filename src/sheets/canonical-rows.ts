import { isoFromDay } from "../calendar/day.ts";
import { type ColumnSpec, SHEETS, type SheetKind } from "../fleet/columns.ts";
import type { Fleet, PriceBreak, Source } from "../fleet/rows.ts";

/** A value as a canonical sheet holds it: ISO dates, yes or no, lists as text parted by semicolons. */
export type CanonicalValue = string | number | null;

/** One row under the names of its sheet's columns, with the place it was read from. */
export type CanonicalRow = Record<string, CanonicalValue | Source>;

/** The fleet's rows by sheet, as clean sheets and check/1 hold them. */
export function canonicalRows(fleet: Fleet): Record<SheetKind, CanonicalRow[]> {
  return Object.fromEntries(
    SHEETS.map(({ kind, list, columns }) => [
      kind,
      fleet[list].map((row) => canonicalRow(row as unknown as Record<string, unknown> & { source: Source }, columns)),
    ]),
  ) as Record<SheetKind, CanonicalRow[]>;
}

function canonicalRow(row: Record<string, unknown> & { source: Source }, columns: readonly ColumnSpec[]): CanonicalRow {
  const result: CanonicalRow = {};
  for (const column of columns) result[column.name] = canonicalValue(row[column.field], column);
  result.source = row.source;
  return result;
}

function canonicalValue(value: unknown, { type }: ColumnSpec): CanonicalValue {
  if (value === null || value === undefined) return null;
  switch (type) {
    case "date":
      return isoFromDay(value as number);
    case "yes-no":
      return value ? "yes" : "no";
    case "list":
      return (value as string[]).length === 0 ? null : (value as string[]).join("; ");
    case "breaks": {
      const breaks = (value as PriceBreak[]).map(({ from, price }) => `${from}:${price}`);
      return breaks.length === 0 ? null : breaks.join("; ");
    }
    default:
      return value as string | number;
  }
}
