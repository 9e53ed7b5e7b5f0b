import type { SheetKind, SheetSpec } from "../../fleet/columns.ts";

/** A blank row of each kind: as long as one is kept, all made later have its shape. */
const blanks = new Map<SheetKind, Record<string, unknown>>();

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
    blank = parsed(Object.fromEntries(fields.map((field) => [field, null])));
    blanks.set(kind, blank);
  }
  return parsed(blank);
}

function parsed(row: Record<string, unknown>): Record<string, unknown> {
  return JSON.parse(JSON.stringify(row)) as Record<string, unknown>;
}
