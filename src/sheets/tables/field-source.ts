import { type ColumnSpec, columnOfField, type SheetSpec } from "../../fleet/columns.ts";
import type { ColumnView } from "./score-column.ts";
import type { FieldSource } from "./table.ts";

/** A field read from one column. */
export function fieldSource(spec: ColumnSpec, view: ColumnView, points: number): FieldSource {
  const by = points < 6 && view.profile.filled > 0 ? "contents" : "header";
  return { spec, columns: [view.column], by, headerUnit: view.meaning.unit, part: view.part, points };
}

/** A column that another kind of row reads too, as a field of that kind: it makes no row of it by itself. */
export function sharedField(source: FieldSource, sheet: SheetSpec, field: string): FieldSource {
  return { ...source, spec: columnOfField(sheet, field), points: 0 };
}
