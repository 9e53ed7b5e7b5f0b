import type { Grid, GridRow } from "../grid.ts";
import { filledIn } from "./filled-in.ts";
import { knownNames, nameIn, oneRowHeader } from "./header-rows.ts";
import { looksLikeData } from "./looks-like-data.ts";
import { nameColumns } from "./name-columns.ts";
import type { Table } from "./table.ts";
import { turnedAsList } from "./turned-as-list.ts";

/** Columns and rows of names that make a table, and the share of its columns that its first rows fill. */
const FEWEST_COLUMNS = 3;
const ROWS_LOOKED_AT = 3;
/** Names of columns known here from which fewer rows make a table. */
const KNOWN_NAMES = 2;
const MOSTLY_FILLED = 0.6;
/** Lines of a sheet by which a form is known. */
const FORM_LINES = 40;

const TURNED = {
  message: "The names stand in the first column, and each record in a column of its own.",
  fix: "Copy the table and paste it transposed, so that each record is a row.",
};

const FORM = {
  message: "The names stand beside their values, as in a form, and not above them.",
  fix: "Make a list of it: the names in one line, and below them a line for each form.",
};

/**
 * A table whose header names nothing known, or a form, or one with its records in columns, that was not read as a list:
 * its rows are set aside, never passed over.
 *
 * @param headed  a header was found in it all the same
 */
export function unreadTable(grid: Grid, rows: readonly GridRow[], headed: boolean): Table | null {
  const form = isForm(rows);
  const head = form ? 0 : headed ? -1 : headAt(rows);
  const turned = head === -1 && turnedAsList(rows) !== null;
  const at = turned ? 0 : head;
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
    unclear: form ? FORM : turned ? TURNED : null,
    counted: [],
    changes: [],
  };
}

/** True for a form of several columns of names, each left of its values: none of its lines heads the others. */
export function isForm(rows: readonly GridRow[]): boolean {
  return rows.length <= FORM_LINES && (nameColumns(rows, false)?.length ?? 0) > 1;
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
