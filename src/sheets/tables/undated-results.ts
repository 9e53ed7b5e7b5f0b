import { columnOfField, sheetSpec } from "../../fleet/columns.ts";
import { DATED_THINGS } from "../words/vocabulary.ts";
import { fieldSource } from "./field-source.ts";
import { type ColumnView, MIN_POINTS } from "./score-column.ts";
import type { Output } from "./table.ts";

/** Cells of numbers from which a result is a measurement, of which no day is known. */
const MOSTLY_NUMBERS = 0.5;

/**
 * Outputs with the result of a test that no column dates as the standing of the packs beside it: what failed may not be
 * used until it is tested again.
 */
export function withUndatedResult(outputs: readonly Output[], views: readonly ColumnView[]): Output[] {
  const [packs, ...others] = outputs.filter(({ sheet }) => sheet.kind === "packs");
  const taken = new Set(outputs.flatMap(({ fields }) => fields.flatMap(({ columns }) => columns)));
  const result = views.find(
    ({ column, meaning, things, profile }) =>
      meaning.says === "result" &&
      !taken.has(column) &&
      things.split(" ").every((thing) => thing === "battery" || !DATED_THINGS.has(thing)) &&
      profile.numbers < MOSTLY_NUMBERS,
  );
  const dated = outputs.some(({ sheet }) => sheet.kind === "runtime_tests");
  if (!packs || !result || dated || others.length > 0 || packs.fields.some(({ spec }) => spec.field === "held"))
    return [...outputs];
  const held = columnOfField(sheetSpec("packs"), "held");
  const fields = [...packs.fields, fieldSource(held, result, MIN_POINTS)];
  return outputs.map((output) => (output === packs ? { ...packs, fields } : output));
}
