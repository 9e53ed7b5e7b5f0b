import { SHEETS, type SheetSpec } from "../../fleet/columns.ts";
import { type Cell, isBlankRow } from "../grid.ts";
import { headerWords } from "../words/header-words.ts";
import type { FieldSource, Output } from "./table.ts";

/** The least share of a header's words that must be known for its row to count as a header. */
const MIN_KNOWN_SHARE = 0.5;

/** The least number of known words in a header of more than one column. */
const MIN_KNOWN = 2;

interface Names {
  sheet: SheetSpec;
  byWords: Map<string, number>;
}

const NAMES: Names[] = SHEETS.map((sheet) => {
  const byWords = new Map<string, number>();
  sheet.columns.forEach((column, at) => {
    for (const alias of column.aliases) if (!byWords.has(alias)) byWords.set(alias, at);
  });
  sheet.columns.forEach((column, at) => {
    byWords.set(headerWords(column.name), at);
  });
  return { sheet, byWords };
});

const ALL_WORDS = new Set(NAMES.flatMap(({ byWords }) => [...byWords.keys()]));

/** The kind of sheet that a row of header cells names, with its columns; null where the row is no header. */
export function matchHeader(cells: readonly Cell[]): Output | null {
  if (isBlankRow(cells)) return null;
  const words = cells.map((cell) => (typeof cell === "string" && cell.length < 100 ? headerWords(cell) : ""));
  const filled = cells.filter((cell) => cell !== null && cell !== "").length;
  const knownCount = words.filter((word) => ALL_WORDS.has(word)).length;
  if (knownCount < filled * MIN_KNOWN_SHARE || knownCount < Math.min(filled, MIN_KNOWN)) return null;
  let best: { output: Output; score: number } | null = null;
  for (const { sheet, byWords } of NAMES) {
    const fields = fieldsOf(sheet, byWords, words);
    if (!fields || fields.length < filled * MIN_KNOWN_SHARE) continue;
    const score = fields.length + fields.filter(({ spec }) => spec.required).length / 10;
    if (best === null || score > best.score) {
      best = { score, output: { sheet, fields, implied: {}, own: fields.flatMap(({ columns }) => columns) } };
    }
  }
  return best?.output ?? null;
}

function fieldsOf(sheet: SheetSpec, byWords: Map<string, number>, words: readonly string[]): FieldSource[] | null {
  const fields = new Map<number, FieldSource>();
  words.forEach((word, column) => {
    const at = word === "" ? undefined : byWords.get(word);
    if (at === undefined) return;
    const field = fields.get(at);
    if (field) field.columns.push(column);
    else fields.set(at, { spec: sheet.columns[at]!, columns: [column], by: "header", factor: 1 });
  });
  const complete = sheet.columns.every((spec, at) => !spec.required || fields.has(at));
  const oneOf = sheet.oneOf.length === 0 || [...fields.values()].some(({ spec }) => sheet.oneOf.includes(spec.field));
  return complete && oneOf ? [...fields.values()] : null;
}
