import type { SheetKind, SheetSpec } from "../../fleet/columns.ts";

/** By kind. Kept, so that the engine knows the rows of every reading by the one shape for which its code was made. */
const blanks = new Map<SheetKind, Record<string, unknown>>();

/** A row of a sheet in which nothing is filled: its fields and its source, null. Rows are copies of it. */
export function blankRow({ kind, columns }: SheetSpec): Readonly<Record<string, unknown>> {
  let blank = blanks.get(kind);
  if (!blank) {
    // The place of the source is kept from the start: an object that grows later is many times dearer to make.
    const fields = Object.fromEntries([...columns.map(({ field }) => field), "source"].map((field) => [field, null]));
    // Parsed, the row holds its fields itself. Grown field by field it would keep most of them in a list beside it, and so
    // would every row made of it.
    blank = JSON.parse(JSON.stringify(fields)) as Record<string, unknown>;
    blanks.set(kind, blank);
  }
  return blank;
}
