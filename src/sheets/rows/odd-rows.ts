import { nameKey } from "../../fleet/name-key.ts";
import { type Cell, type GridRow, isBlankCell, textsInColumn } from "../grid.ts";
import type { OddRow, Table } from "../tables/table.ts";
import { TextRow } from "../text/text-row.ts";
import { cellText, textAt } from "../values/cell-text.ts";

/** What is said of a record that is no data. */
export const ODD_ROW_MESSAGES: Record<OddRow, string> = {
  "repeated-header": "The header stands here again.",
  "total-row": "The row sums up other rows.",
  "section-line": "The line names a group of rows.",
  "note-row": "The line is a note.",
};

const TOTAL =
  /^(grand |sub[ -]?|zwischen|gesamt|end|sous[ -]|overall )?(totals?|totaal|totaux|summen?|sums?|somme|suma|gesamt|som|average|mean|mittelwert|moyenne|promedio)(?![a-z])/i;
const ONLY_TOTAL = new RegExp(`${TOTAL.source}\\W*$`, "i");
/** What a row sums up that holds little else, and could be a name too. */
const FIGURE = /^(min|max|minimum|maximum|median|count|anzahl|nombre|n|st(d|andard)\.? ?dev\w*)\W*$/i;
const ENDS_TOTAL = / (sub)?(totals?|summe|gesamt)\W*$/i;
/** A total that is never a name, whatever follows. */
const SUBTOTAL = /^(sub|sous|zwischen)/i;
const NOTE =
  /^([*†•]|notes?\b|nb\b|n\.b\.|hinweis|anmerkung|remarque|nota\b|opmerking|legend|key:|last updated|prepared|printed|source\b|stand\b|exported|generated|end of|(page|seite) \d)/i;
/** What a program prints at the foot of a page, in whatever column; and room for a signature. */
const PRINTED = /^(last updated|printed|exported|generated)\b.*\d/i;
const ROOM = /(\.{4}|__)$/;
/** A lone text longer than this is a note, not a name. */
const NOTE_LENGTH = 60;
/** Tables of fewer columns hold too little to tell a line of words from a row. */
const MIN_COLUMNS = 3;
/** How many filled cells a record of words may have to be looked at as one. */
const SAMPLE = 300;
/** In how many of a row's first filled cells the word for a total is looked for. */
const WORDS_LOOKED_AT = 3;

/** Tells records that are totals, section lines or notes from those that are data. */
export function oddRowTest(table: Table): (record: GridRow, row: number) => OddRow | null {
  const test = cellsTest(table);
  const plainly = startPlainly(table.rows);
  return (record, row) =>
    plainly && record instanceof TextRow && record.width >= WORDS_LOOKED_AT ? null : test(record.cells, row);
}

/** True where the first columns of a text hold no blank and no total anywhere, so that no record of them is odd. */
function startPlainly(rows: readonly GridRow[]): boolean {
  for (let column = 0; column < WORDS_LOOKED_AT; column++) {
    const texts = textsInColumn(rows, column);
    if (texts === null || texts.some((text) => isBlankCell(text) || speaksOfTotal(text))) return false;
  }
  return true;
}

function cellsTest(table: Table): (cells: readonly Cell[], row: number) => OddRow | null {
  const width = table.header.filter((name) => name !== null).length;
  const named = new Set(
    table.outputs.flatMap(({ fields }) => fields.filter(({ spec }) => spec.required).flatMap(({ columns }) => columns)),
  );
  const dates = table.outputs.flatMap(({ fields }) =>
    fields.filter(({ spec }) => spec.type === "date").flatMap(({ columns }) => columns),
  );
  const prefixes = new Map<number, Set<string>>();
  const names = new Map<number, Set<string>>();
  /** True for "Total adult pads" in a column in which "Adult pads" stands. */
  const sumsUpOne = (cell: string, column: number) => {
    const one = nameKey(cell.trim().replace(TOTAL, "").replace(ENDS_TOTAL, ""));
    const known = names.get(column) ?? new Set(table.rows.map((row) => nameKey(textAt(row, column))));
    names.set(column, known);
    return one !== "" && known.has(one);
  };
  return (cells, row) => {
    let filled = 0;
    let first = -1;
    let total = false;
    // A total is named in one of a row's first words: the rest of the row need not be looked at. Where all that a
    // record needs is there, the word is a name: there are suppliers of that name.
    for (let column = 0; column < cells.length && filled < WORDS_LOOKED_AT; column++) {
      const cell = cells[column];
      if (cell === undefined || isBlankCell(cell)) continue;
      filled++;
      if (first === -1) first = column;
      if (typeof cell === "string" && ROOM.test(cell)) return "note-row";
      if (typeof cell !== "string" || cell.length > NOTE_LENGTH || !speaksOfTotal(cell)) continue;
      const alone = ONLY_TOTAL.test(cell.trim());
      total ||=
        SUBTOTAL.test(cell.trim()) ||
        sumsUpOne(cell, column) ||
        ((alone || ENDS_TOTAL.test(cell)) && lacksOne(named, cells)) ||
        (alone && (named.size === 0 || named.has(column) || countsDates(dates, cells)));
    }
    if (total) return "total-row";
    if (first === -1) return null;
    const head = cells[first] as Cell;
    if (filled === WORDS_LOOKED_AT && !(typeof head === "string" && mayBeTotal(head))) return null;
    const text = cellText(head);
    if (text.length < 40 && (TOTAL.test(text) || FIGURE.test(text)) && filledCells(cells) <= width / 2)
      return "total-row";
    if (filled > 1 || width < MIN_COLUMNS || typeof head !== "string")
      return filled === 2 && NOTE.test(text) && text.length > 3 && (!named.has(first) || PRINTED.test(text))
        ? "note-row"
        : null;
    if (text.length > NOTE_LENGTH || NOTE.test(text)) return "note-row";
    if (!named.has(first)) return hasLetters(text) ? "section-line" : null;
    const known = prefixes.get(first) ?? prefixesOf(table, first);
    prefixes.set(first, known);
    if (known.has(prefix(text)) || /^\S*\d\S*$/.test(text)) return null;
    return row >= table.rows.length - 1 ? "note-row" : "section-line";
  };
}

function lacksOne(columns: ReadonlySet<number>, cells: readonly Cell[]): boolean {
  for (const column of columns) if (isBlankCell(cells[column])) return true;
  return false;
}

/** True where a count stands in a column of dates: how many rows above have one. */
function countsDates(columns: readonly number[], cells: readonly Cell[]): boolean {
  return columns.some((column) => /^\d{1,3}$/.test(cellText(cells[column] ?? null)));
}

function filledCells(cells: readonly Cell[]): number {
  return cells.filter((cell) => !isBlankCell(cell)).length;
}

/** A quick look at the first letter, since nearly no cell is a word for a total. */
function mayBeTotal(cell: string): boolean {
  const c = cell.charCodeAt(0) | 32;
  return c === 32 || "tsgzeoamp".includes(String.fromCharCode(c));
}

function speaksOfTotal(cell: string): boolean {
  return (mayBeTotal(cell) && TOTAL.test(cell.trim())) || ENDS_TOTAL.test(cell);
}

function hasLetters(text: string): boolean {
  return /\p{L}/u.test(text);
}

/** The letters with which a name starts, or a mark for one that starts with digits. */
function prefix(text: string): string {
  return /^[^\d\s]*/.exec(text)?.[0].toLowerCase().slice(0, 12) || "#";
}

/** How the names of a column start, in the rows that hold more than the name. */
function prefixesOf(table: Table, column: number): Set<string> {
  const found = new Set<string>();
  for (const { cells } of table.rows.slice(0, SAMPLE)) {
    const filled = cells.filter((cell) => cell !== null && cell !== "").length;
    if (filled > 1) found.add(prefix(cellText(cells[column] ?? null)));
  }
  return found;
}
