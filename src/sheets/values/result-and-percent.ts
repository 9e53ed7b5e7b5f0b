import type { Cell } from "../grid.ts";
import { cellText, MAX_TYPED_CHARACTERS } from "./cell-text.ts";
import { resultOf } from "./choice-words.ts";

/** What a cell such as "Pass (92%)", "OK 92 %" or "92 % pass" says of a test. */
export type ResultOrPercent = "result" | "percent";

const RESULT_FIRST = /^(\p{L}[\p{L} .]*?)[\s:,;(–-]*(\d{1,3}(?:[.,]\d+)?\s*%)\)?$/u;
const PERCENT_FIRST = /^(\d{1,3}(?:[.,]\d+)?\s*%)[\s:,;(–-]*(\p{L}[\p{L} .]*?)\)?$/u;

/** The result and the capacity of such a cell; null where it does not hold the two. */
export function resultAndPercent(cell: Cell): Record<ResultOrPercent, string> | null {
  const text = cellText(cell);
  if (text.length > MAX_TYPED_CHARACTERS) return null;
  const [, first = "", second = ""] = RESULT_FIRST.exec(text) ?? PERCENT_FIRST.exec(text) ?? [];
  const [result, percent] = first.endsWith("%") ? [second, first] : [first, second];
  return result !== "" && resultOf(result) !== null ? { result, percent } : null;
}

/** One of the two; the whole of a cell that is one of them alone. */
export function resultOrPercent(cell: Cell, part: ResultOrPercent): Cell {
  const both = resultAndPercent(cell);
  return both ? both[part] : /\d/.test(cellText(cell)) === (part === "percent") ? cell : null;
}
