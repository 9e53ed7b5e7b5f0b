import type { ColumnSpec, SheetSpec } from "../../fleet/columns.ts";
import { fieldSource } from "./field-source.ts";
import { type ColumnView, datedThing, MIN_POINTS, pointsFor } from "./score-column.ts";
import type { FieldSource } from "./table.ts";

/** Gives each field its best column, best pairs first; a column like it in every word is a copy. */
export function assign(sheet: SheetSpec, views: readonly ColumnView[]): FieldSource[] {
  const pairs: { spec: ColumnSpec; view: ColumnView; points: number }[] = [];
  for (const view of views) {
    for (const spec of sheet.columns) {
      const points = pointsFor(view, sheet, spec);
      if (points >= MIN_POINTS) pairs.push({ spec, view, points });
    }
  }
  pairs.sort((a, b) => b.points - a.points || a.view.column - b.view.column);
  const expiring = pairs.find(({ spec }) => spec.name === "expiry")?.view;
  const dated = expiring === undefined ? "" : datedThing(expiring);
  const fields = new Map<ColumnSpec, { source: FieldSource; words: string }>();
  const taken = new Set<ColumnView>();
  for (const { spec, view, points } of pairs) {
    // what a line says of its battery it does not say of its pads, whose expiry it gives
    if (taken.has(view) || (dated !== "" && ![dated, ""].includes(datedThing(view)))) continue;
    if (dated !== "" && isBareNumber(view, spec)) continue;
    const before = fields.get(spec);
    if (!before) fields.set(spec, { source: fieldSource(spec, view, points), words: wordsOf(view) });
    else if (before.words === wordsOf(view)) before.source.columns.push(view.column);
    else continue;
    taken.add(view);
  }
  return sheet.columns.flatMap((spec) => fields.get(spec)?.source ?? []);
}

/** True for a column that only numbers lines or things, which are not what they are. */
export function isBareNumber({ things, meaning }: ColumnView, { name }: ColumnSpec): boolean {
  return name === "item" && things + meaning.says === "id";
}

function wordsOf({ meaning, groupSubject }: ColumnView): string {
  return `${groupSubject}/${meaning.words}`;
}
