import type { ColumnSpec } from "../../fleet/columns.ts";
import type { ColumnView } from "./score-column.ts";
import type { FieldSource } from "./table.ts";

/** A field read from one column. */
export function fieldSource(spec: ColumnSpec, view: ColumnView, points: number): FieldSource {
  const by = points < 6 && view.profile.filled > 0 ? "contents" : "header";
  return { spec, columns: [view.column], by, headerUnit: view.meaning.unit, part: view.part, points };
}
