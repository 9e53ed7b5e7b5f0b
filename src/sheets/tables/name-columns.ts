import { groupBy } from "../../fleet/group-by.ts";
import type { GridRow } from "../grid.ts";
import { type HeaderMeaning, parseHeader } from "../words/parse-header.ts";
import { knownNames, mostlyNames, nameIn } from "./header-rows.ts";

/** Columns in which names are looked for. */
const COLUMNS = 10;
/** Names in a row beyond which it may head a list. */
const OF_A_LIST = 3;
/** Names in a column that make a form, and those that do where they have colons or stand there again. */
const FEWEST_NAMES = 4;
const FEWEST_AGAIN = 2;

/**
 * The columns (0-based) that hold the names of a form, each left of its values; null for a sheet that is no form.
 *
 * One column of names is a form's where the names stand in it again and again, or are marked as labels; else its records
 * may stand in columns.
 *
 * @param labelled  the names are marked as labels
 */
export function nameColumns(rows: readonly GridRow[], labelled: boolean): number[] | null {
  if (rows.some((row, at) => headsList(row, rows[at + 1]))) return null;
  const columns: number[] = [];
  let again = labelled;
  for (let column = 0; column < COLUMNS; column++) {
    const texts = rows.flatMap(({ cells }) => nameIn(cells[column]) ?? []);
    const names = texts.map(parseHeader).filter(({ coverage }) => coverage > 0);
    const said = new Set(names.map(({ says, things }) => `${says} ${things}`));
    const twice = standAgain(names);
    const repeated = twice >= FEWEST_AGAIN && twice * 2 >= said.size;
    const fewest = texts.every((text) => text.endsWith(":")) ? FEWEST_AGAIN : FEWEST_NAMES;
    if (!mostlyNames(texts) || (said.size < fewest && !repeated)) continue;
    if (columns.length === 0) again ||= repeated;
    columns.push(column);
    // the next column holds its values
    column++;
  }
  return columns.length > 1 || (again && columns.length > 0) ? columns : null;
}

/** True for a row of names above a row that starts with none, or holds none but perhaps of a thing: a list's. */
function headsList({ cells }: GridRow, below: GridRow | undefined): boolean {
  const { known, filled } = knownNames(cells);
  if (below === undefined || filled <= OF_A_LIST || known < filled) return false;
  const under = knownNames(below.cells);
  return under.strong === 0 || knownNames(below.cells.slice(0, 1)).known === 0;
}

/** How many different names that say something of a thing stand more than once. */
function standAgain(names: readonly HeaderMeaning[]): number {
  const strong = names.filter(({ says }) => says !== "");
  return [...groupBy(strong, ({ says, things }) => `${says} ${things}`).values()].filter(({ length }) => length > 1)
    .length;
}
