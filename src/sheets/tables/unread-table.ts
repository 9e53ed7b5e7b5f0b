import type { Cell, Grid, GridRow } from "../grid.ts";
import { parseHeader } from "../words/parse-header.ts";
import { columnViews } from "./column-views.ts";
import { knownNames, nameIn, oneRowHeader } from "./header-rows.ts";
import { interpret } from "./interpret.ts";
import { looksLikeData } from "./looks-like-data.ts";
import type { Table } from "./table.ts";

/** Columns and rows of names that make a table, and the share of its columns that its first rows fill. */
const FEWEST_COLUMNS = 3;
const ROWS_LOOKED_AT = 3;
/** Names of columns known here from which fewer rows make a table. */
const KNOWN_NAMES = 2;
const MOSTLY_FILLED = 0.6;
/** Rows beyond which a sheet is not turned to look at it. */
const MOST_FIELDS = 40;
/** Columns of a form in which names are looked for. */
const FORM_COLUMNS = 6;

const TURNED = {
  message: "The names stand in the first column, and each record in a column of its own.",
  fix: "Copy the table and paste it transposed, so that each record is a row.",
};

const FORM = {
  message: "The names stand beside their values, as in a form, and not above them.",
  fix: "Make a list of it: the names in one line, and below them a line for each form.",
};

/**
 * A table whose header names nothing known, or whose records stand in columns: its rows are set aside, never passed over.
 *
 * @param headed  a header was found in it all the same
 */
export function unreadTable(grid: Grid, rows: readonly GridRow[], headed: boolean): Table | null {
  const form = isForm(rows);
  const turned = form ? 0 : turnedAt(rows);
  const at = turned === -1 && !headed ? headAt(rows) : turned;
  if (at === -1) return null;
  const { lines, header, groups } = oneRowHeader(rows[at] as GridRow);
  return {
    grid,
    number: 1,
    headerLines: lines,
    header,
    groups,
    outputs: [],
    thingColumns: [],
    rows: rows.slice(at + 1),
    odd: new Map(),
    tied: null,
    ownOutput: null,
    unclear: form ? FORM : turned === -1 ? null : TURNED,
    counted: [],
    changes: [],
  };
}

/** True for a form of several columns of names, each left of its values: none of its lines heads the others. */
export function isForm(rows: readonly GridRow[]): boolean {
  if (rows.length > MOST_FIELDS) return false;
  const lines = rows.map(({ cells }) => knownNames(cells));
  if (lines.some(({ known, filled }) => filled > FEWEST_COLUMNS && known === filled)) return false;
  const [first, , ...others] = Array.from({ length: FORM_COLUMNS }, (_, column) => {
    const cells = rows.flatMap((row) => nameIn(row.cells[column]) ?? []);
    const { known, strong, filled } = knownNames(cells);
    const said = new Set(cells.map(parseHeader).map(({ says, things }) => says + things));
    return strong > 1 && known >= filled * MOSTLY_FILLED && said.size > FEWEST_COLUMNS;
  });
  return first === true && others.includes(true);
}

function filledIn(cells: readonly Cell[]): number[] {
  return cells.flatMap((cell, column) => (cell === null || cell === "" ? [] : [column]));
}

/** The first row of names above rows that fill most of the same columns, values among them; -1 where none is. */
function headAt(rows: readonly GridRow[]): number {
  return rows.findIndex(({ cells }, at) => {
    const named = filledIn(cells);
    if (named.length < FEWEST_COLUMNS || looksLikeData(cells)) return false;
    const below = rows.slice(at + 1, at + 1 + ROWS_LOOKED_AT);
    if (below.length < (knownNames(cells).strong >= KNOWN_NAMES ? 1 : ROWS_LOOKED_AT)) return false;
    return (
      below.some((row) => row.cells.some((_, column) => looksLikeData(row.cells.slice(column, column + 1)))) &&
      below.every(
        (row) => named.filter((column) => nameIn(row.cells[column]) !== null).length >= named.length * MOSTLY_FILLED,
      )
    );
  });
}

/** The row from which the first column holds the names of a sheet known here; -1 where it holds none. */
function turnedAt(rows: readonly GridRow[]): number {
  if (rows.length > MOST_FIELDS) return -1;
  // the names of the records may stand above them, with nothing above the names of the columns
  const at = rows.findIndex(({ cells }) => filledIn(cells).length > 1 && nameIn(cells[0]) !== null);
  const fields = rows.slice(Math.max(0, at));
  const names = fields.map(({ cells }) => cells[0] ?? null);
  const { known, strong, filled } = knownNames(names);
  if (at === -1 || fields.length < FEWEST_COLUMNS || strong < 2 || known < filled * MOSTLY_FILLED) return -1;
  const width = Math.max(...fields.map(({ cells }) => cells.length));
  const records = Array.from({ length: width - 1 }, (_, column) => ({
    line: column + 2,
    cells: fields.map(({ cells }) => cells[column + 1] ?? null),
  }));
  const views = columnViews(oneRowHeader({ line: 1, cells: names }), records);
  return interpret(views, null).best === null ? -1 : at;
}
