import { columnOfField, sheetSpec } from "../../fleet/columns.ts";
import { standingOf } from "../values/status-words.ts";
import { fieldSource } from "./field-source.ts";
import { type ColumnView, MIN_POINTS } from "./score-column.ts";
import type { FieldSource, Output, Unclear } from "./table.ts";

/** The longest title that names a list by what its things are, in words; one of two things ("in use and scrapped") names neither. */
const MOST_WORDS = 5;
const OF_TWO = /[&/+]|\b(and|incl\w*|und|et|y|en)\b/i;
/** Points of a date that need not be the first day in service. */
const VAGUE = 4;
const MOSTLY_DATES = 0.5;
/** What is said of such a day: nothing, or as of putting in, where another column gives that ("Installed, Replaced on, Reason"). */
const OPEN = /^(install)?$/;
const RETIRED = columnOfField(sheetSpec("packs"), "retired");

/** The title of a list of things that are gone, such as "Scrapped batteries"; undefined where none stands above it. */
function goneAbove(above: readonly string[]): string | undefined {
  return above.find(
    (text) => text.split(/\s+/).length <= MOST_WORDS && !OF_TWO.test(text) && standingOf(text) === "gone",
  );
}

/**
 * Outputs with the days on which packs were retired, where no heading says so: "Since" behind a status, of those that are
 * gone, and beside a reason, or below "Scrapped", the one day that says no more.
 *
 * @param above  the lines above the table and the name of its tab
 */
export function withRetirements(outputs: Output[], views: readonly ColumnView[], above: readonly string[]): Output[] {
  const taken = new Set(outputs.flatMap(({ fields }) => fields.flatMap(({ columns }) => columns)));
  return outputs.map((output) => {
    const { sheet, fields } = output;
    const field = (name: string) => fields.find(({ spec }) => spec.field === name);
    if (sheet.kind !== "packs" || field("retired")) return output;
    const status = field("held")?.columns[0];
    const since = views.find(({ column, meaning }) => meaning.says === "since" && column - 1 === status);
    if (since) return { ...output, fields: [...fields, { ...fieldSource(RETIRED, since, MIN_POINTS), ifGone: true }] };
    if (!field("retiredBecause") && goneAbove(above) === undefined) return output;
    const [open, other] = views.filter(
      ({ column, meaning, things, profile }) =>
        !taken.has(column) && OPEN.test(things + meaning.says) && profile.dates > MOSTLY_DATES,
    );
    const vague = fields.find(({ spec, points }) => spec.field === "inService" && points <= VAGUE);
    const retired = (source: FieldSource) => ({ ...source, spec: RETIRED });
    if (open && !other) return { ...output, fields: [...fields, fieldSource(RETIRED, open, MIN_POINTS)] };
    return vague ? { ...output, fields: fields.map((each) => (each === vague ? retired(each) : each)) } : output;
  });
}

/** What is missing where packs are listed as gone, and nothing tells since when; null elsewhere. */
export function goneUndated(outputs: readonly Output[], above: readonly string[]): Unclear | null {
  const title = goneAbove(above);
  const undated = outputs.some(
    ({ sheet, fields }) => sheet.kind === "packs" && !fields.some(({ spec }) => spec.field === "retired"),
  );
  if (title === undefined || !undated) return null;
  return {
    message: `The batteries stand below "${title}", and nothing tells since when they are gone.`,
    fix: "Write the day on which each was retired, or leave the list out.",
  };
}
