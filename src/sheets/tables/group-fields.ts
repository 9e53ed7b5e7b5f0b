import { type SheetKind, sheetSpec } from "../../fleet/columns.ts";
import { isBareNumber } from "./assign.ts";
import { fieldSource } from "./field-source.ts";
import { type ColumnView, MIN_POINTS, pointsFor } from "./score-column.ts";
import type { FieldSource } from "./table.ts";

/** Columns of one thing that stand together: the second pads, the child's pads, the battery. */
export interface Group {
  thing: string;
  views: ColumnView[];
}

/** The fields of a sheet that the group's columns name, whether or not they repeat the thing's own name. */
export function fieldsIn(kind: SheetKind, { thing, views }: Group): FieldSource[] {
  const sheet = sheetSpec(kind);
  const fields: FieldSource[] = [];
  const pairs = views.flatMap((view) =>
    sheet.columns.map((spec) => ({
      spec,
      view,
      points: Math.max(
        pointsFor(view, sheet, spec),
        isOfThing(view, thing) ? pointsFor({ ...view, things: thing }, sheet, spec) : 0,
      ),
    })),
  );
  pairs.sort((a, b) => b.points - a.points || a.view.column - b.view.column);
  const taken = new Set<ColumnView>();
  for (const { spec, view, points } of pairs) {
    if (points < MIN_POINTS || taken.has(view) || fields.some((field) => field.spec === spec)) continue;
    if (isBareNumber(view, spec)) continue;
    fields.push(fieldSource(spec, view, points));
    taken.add(view);
  }
  return fields;
}

/** True for a column that names the thing, or none; a bare date beside a battery is of whatever happened to it. */
function isOfThing({ things, meaning }: ColumnView, thing: string): boolean {
  return things === ""
    ? !(thing === "battery" ? /^(date)?$/ : /^$/).test(meaning.says)
    : things.split(" ").includes(thing);
}
