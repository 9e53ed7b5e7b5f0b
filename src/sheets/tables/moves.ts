import { columnOfField, sheetSpec } from "../../fleet/columns.ts";
import { headerWords } from "../words/header-words.ts";
import { fieldSource } from "./field-source.ts";
import type { ColumnView } from "./score-column.ts";
import type { Output } from "./table.ts";

/** What heads the places that units were carried from and to. */
const FROM = /^(from|von|aus|de|du|desde|van|origine?|origen|source|herkunft)\b/;
const TO = /^(to|nach|an|a|vers|hacia|para|naar|destination|destino|ziel)\b/;
/** The share of cells that may be dates or numbers below the name of a place. */
const SOME = 0.5;

/**
 * The outputs, those of a log of what was carried from one place to another as moves, which use nothing up, and those of
 * batteries that were.
 */
export function withMoves(outputs: Output[], views: readonly ColumnView[]): Output[] {
  const from = headed(FROM, views);
  const to = headed(TO, views);
  if (!from || !to || from.column >= to.column) return outputs;
  return outputs.map((output) => {
    const has = (field: string) => output.fields.some(({ spec }) => spec.field === field);
    if (output.sheet.kind === "packs" && to.things === from.things) return inEither(output, [to.column, from.column]);
    if (output.sheet.kind !== "use_log" || has("reason")) return output;
    const place = columnOfField(sheetSpec("use_log"), "place");
    const fields = has("place") ? output.fields : [...output.fields, fieldSource(place, to, 6)];
    return {
      ...output,
      fields,
      implied: { ...output.implied, reason: "restock" },
      own: [...output.own, to.column],
      presumed: "moves" as const,
    };
  });
}

/** Packs with the device that they went into or, where they went into none, came out of. */
function inEither(output: Output, columns: [to: number, from: number]): Output {
  const fields = output.fields.map((source) =>
    source.spec.field === "device" && source.columns[0] === columns[1] ? { ...source, columns } : source,
  );
  return { ...output, fields };
}

function headed(words: RegExp, views: readonly ColumnView[]): ColumnView | undefined {
  return views.find(
    ({ name, profile }) =>
      words.test(headerWords(name)) && profile.filled > 0 && profile.dates < SOME && profile.numbers < SOME,
  );
}
