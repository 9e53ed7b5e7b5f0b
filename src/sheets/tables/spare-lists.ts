import { parseHeader } from "../words/parse-header.ts";
import { VOCABULARY } from "../words/vocabulary.ts";
import type { ColumnView } from "./score-column.ts";
import type { Output } from "./table.ts";

/**
 * The outputs, those of packs below "Spares" without the day on which they were bought as their first in service: packs
 * that wait on a shelf for a device are in none.
 *
 * @param above  the lines above the table and the name of its tab
 */
export function asSpares(outputs: Output[], views: readonly ColumnView[], above: readonly string[]): Output[] {
  if (!above.some((text) => parseHeader(text).variant === "spare")) return outputs;
  const bought = new Set(
    views.flatMap(({ column, meaning }) =>
      meaning.words.split(" ").some((word) => VOCABULARY.get(word) === "bought") ? column : [],
    ),
  );
  return outputs.map((output) => {
    const has = (field: string) => output.fields.some(({ spec }) => spec.field === field);
    if (output.sheet.kind !== "packs" || has("device")) return output;
    const fields = output.fields.filter(
      ({ spec, columns }) => spec.field !== "inService" || !columns.some((column) => bought.has(column)),
    );
    return { ...output, fields };
  });
}
