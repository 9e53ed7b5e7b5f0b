import type { ColumnSpec, SheetSpec } from "../../fleet/columns.ts";
import { DATED_THINGS } from "../words/vocabulary.ts";
import { fieldSource } from "./field-source.ts";
import { type ColumnView, MIN_POINTS, pointsFor } from "./score-column.ts";
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
  const dated = datedThing(pairs.find(({ spec }) => spec.name === "expiry")?.view);
  const fields = new Map<ColumnSpec, { source: FieldSource; words: string }>();
  const taken = new Set<ColumnView>();
  for (const { spec, view, points } of pairs) {
    // what a line says of its battery it does not say of its pads, whose expiry it gives
    if (taken.has(view) || (dated !== "" && ![dated, ""].includes(datedThing(view)))) continue;
    const before = fields.get(spec);
    if (!before) fields.set(spec, { source: fieldSource(spec, view, points), words: wordsOf(view) });
    else if (before.words === wordsOf(view)) before.source.columns.push(view.column);
    else continue;
    taken.add(view);
  }
  return sheet.columns.flatMap((spec) => fields.get(spec)?.source ?? []);
}

/** The pads, gel or the like that a column is about; empty where it names none. */
function datedThing(view: ColumnView | undefined): string {
  return view?.things.split(" ").find((thing) => DATED_THINGS.has(thing)) ?? "";
}

function wordsOf({ meaning, groupSubject }: ColumnView): string {
  return `${groupSubject}/${meaning.words}`;
}
