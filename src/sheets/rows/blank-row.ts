import type { SheetKind, SheetSpec } from "../../fleet/columns.ts";

/** The text of a blank row, by kind. */
const blanks = new Map<SheetKind, string>();

/**
 * A row of a sheet in which nothing is filled: its fields and its source, null. The rows of a table are copies of one.
 *
 * The place of the source is kept from the start: an object that grows later is many times dearer to make. And the row
 * is parsed anew each time: so it holds its fields itself, as do the copies of it, and all have one shape. Grown field
 * by field, or as the copy that a statement makes at its first run, it would keep most of them in a list beside it.
 */
export function blankRow({ kind, columns }: SheetSpec): Record<string, unknown> {
  let blank = blanks.get(kind);
  if (blank === undefined) {
    const fields = [...columns.map(({ field }) => field), "source"];
    blank = JSON.stringify(Object.fromEntries(fields.map((field) => [field, null])));
    blanks.set(kind, blank);
  }
  return JSON.parse(blank) as Record<string, unknown>;
}
