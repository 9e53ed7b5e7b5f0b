import type { Cell, GridRow } from "../grid.ts";
import { headerWords } from "../words/header-words.ts";
import { filledIn } from "./filled-in.ts";
import { knownNames, labelIn } from "./header-rows.ts";

/** What measures the value on its left. */
const UNIT = /^(%|m?[aw]h|min(utes|\.)?|h|w|days?|months?|years?|pcs|cycles)$/i;

/** Labels of a form by their words, with their values and where they stand in it: its row and column (0-based). */
export type Pairs = Map<string, { label: string; value: Cell; at: [number, number] }>;

/** The rows of each form: one starts wherever the first label stands again. */
export function bandsOf(rows: readonly GridRow[], column: number): GridRow[][] {
  const keyOf = ({ cells }: GridRow) => headerWords(labelIn(cells[column]) ?? "");
  const from = rows.findIndex(
    ({ cells }) => filledIn(cells).length > 1 && knownNames([cells[column] ?? null]).known > 0,
  );
  if (from === -1) return [];
  const first = keyOf(rows[from]!);
  const bands: GridRow[][] = [];
  for (const row of rows.slice(from)) {
    if (keyOf(row) === first) bands.push([]);
    bands.at(-1)!.push(row);
  }
  return bands;
}

/** The labels of one column with what stands right of them; null where a label has several values, or a value none. */
export function pairsIn(rows: readonly GridRow[], column: number, end: number): Pairs | null {
  const pairs: Pairs = new Map();
  for (const [row, { cells }] of rows.entries()) {
    const label = labelIn(cells[column]);
    // a unit may reach into the column of the next labels
    const beside = cells.slice(column + 1, isUnit(cells[end]) ? end + 1 : end);
    const [value, unit, ...others] = filledIn(beside).map((at) => beside[at]!);
    if (label === null && value !== undefined) return null;
    if (label === null) continue;
    if (others.length > 0 || (unit !== undefined && !isUnit(unit))) return null;
    if (value === undefined && isUnit(label)) continue;
    const key = headerWords(label);
    const isKnown = knownNames([label]).known > 0;
    if (value === undefined && !isKnown) continue;
    if (pairs.has(key)) return null;
    pairs.set(key, {
      label,
      value: unit === undefined ? (value ?? null) : `${value} ${unit}`,
      at: [row, column],
    });
  }
  return pairs;
}

function isUnit(cell: Cell | undefined): boolean {
  return UNIT.test(String(cell ?? ""));
}
