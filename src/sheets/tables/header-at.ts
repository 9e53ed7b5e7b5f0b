import type { Cell, Grid, GridRow } from "../grid.ts";
import { MAX_TYPED_CHARACTERS, meansEmpty, textAt } from "../values/cell-text.ts";
import { readDateText } from "../values/date-text.ts";
import { readNumber } from "../values/number-text.ts";
import { columnViews } from "./column-views.ts";
import { datedColumns, headsDates } from "./dated-columns.ts";
import { isFormLine } from "./form-lines.ts";
import { type HeaderRows, headerOverUnits, knownNames, nameIn, oneRowHeader, twoRowHeader } from "./header-rows.ts";
import { headingAbove } from "./heading.ts";
import { interpret } from "./interpret.ts";
import { looksLikeData } from "./looks-like-data.ts";
import { ownOutput } from "./own-outputs.ts";
import { NUMERIC, type Output } from "./table.ts";

/** The least share of a row's cells that must name something known, in a header and in one below a table. */
const MIN_KNOWN_SHARE = 0.4;
const MIN_KNOWN_BELOW = 0.6;
/** The least share of attribute words in a header that stands right below a table. */
const MIN_STRONG_SHARE = 0.75;
/** By how many points a header a line lower must be the better one. */
const MORE_POINTS = 3;
/** How many rows below a header are read to tell which reading of it fits. */
const LOOK_AHEAD = 200;
/** How many records above a line are read to tell whether it is another of them. */
const LOOK_BACK = 20;

/** The table among whose rows a header is looked for: its own header, and how that was read by its words. */
interface HeadOfTable {
  rows: HeaderRows;
  outputs: Output[];
}

/** The header that starts at a row, over one line or two; null where the row names no columns. */
export function headerAt(
  rows: readonly GridRow[],
  at: number,
  current: HeadOfTable | null,
  grid: Grid,
): HeaderRows | null {
  const { spans } = grid;
  const row = rows[at] as GridRow;
  const next = rows[at + 1];
  const names = knownNames(row.cells);
  const { known, filled, strong, exact } = names;
  const namesTooFew = known < Math.min(exact > 0 ? 1 : 2, filled);
  // most rows of a list without dates and numbers, and all that is asked of them
  if (namesTooFew && current !== null && ownOutput(row.cells) === null) return null;
  if (isFormLine(row) || row.cells.some(tellsOfOne)) return null;
  // a last line as full as the one before it heads nothing
  if (
    current === null &&
    next === undefined &&
    at > 0 &&
    filled > 1 &&
    filled <= knownNames((rows[at - 1] as GridRow).cells).filled
  )
    return null;
  const plain = oneRowHeader(row);
  if (current === null && headsDates(row, next)) return plain;
  if (ownOutput(plain.header) !== null) return plain;
  const share = current ? MIN_KNOWN_BELOW : MIN_KNOWN_SHARE;
  if (namesTooFew) return null;
  // months, each with a tick below it, name nothing and are no strange words either
  if (known < filled * share && known < (filled - datedColumns(row.cells).length) * share) return null;
  if (current) {
    const two = next ? twoRowHeader(row, next, spans) : null;
    if (two && current.rows.lines.length === 2 && sameHeader(current.rows, two)) return two;
    if (sameHeader(current.rows, plain)) return plain;
    if (repeatsValues(row, rows.slice(Math.max(0, at - LOOK_BACK), at), current)) return null;
    if (!mayStartTable(row, rows[at - 1] as GridRow, names, current)) return null;
  }
  // A line of one text above others is a title or a note, whatever its words.
  if (
    filled === 1 &&
    next &&
    next.cells.filter((cell) => nameIn(cell) !== null).length > 1 &&
    nameIn(row.cells[0]) !== null
  )
    return null;
  const candidates = [next ? headerOverUnits(row, next) : plain];
  if (next && isLowerHeader(next, row, spans)) candidates.push(twoRowHeader(row, next, spans));
  // of a later table a line above may say what it is of: "Pads" above "Lot, Qty, Exp"
  const heading = current && headingAbove(grid, rows, at, false);
  const readings = candidates.map((header) => {
    const sample = rows.slice(at + header.lines.length, at + header.lines.length + LOOK_AHEAD);
    const { best, unclear } = interpret(columnViews(header, sample), heading);
    return { header, points: best?.points ?? 0, unclear: unclear !== null };
  });
  const best = readings.sort((a, b) => b.points - a.points)[0] as (typeof readings)[number];
  if (current === null && headsBetter(rows, at + 1, best.header.lines.length, best.points, spans)) return null;
  if (best.points > 0) return best.header;
  if (current === null && best.unclear) return best.header;
  return current === null && strong >= 2 && known >= filled * MIN_KNOWN_BELOW ? plain : null;
}

/** True where the header that starts a line lower names more: the line above it only groups it further. */
function headsBetter(
  rows: readonly GridRow[],
  at: number,
  lines: number,
  points: number,
  spans: Grid["spans"],
): boolean {
  const row = rows[at];
  if (!row || looksLikeData(row.cells) || row.cells.some((cell) => isNothing(cell) || isCount(cell) || isDay(cell)))
    return false;
  const { known, filled } = knownNames(row.cells);
  if (known < 2 || known < filled * MIN_KNOWN_SHARE) return false;
  const lower = rows[at + 1];
  const candidates = lines > 1 ? [] : [oneRowHeader(row)];
  if (lower && !looksLikeData(lower.cells) && knownNames(lower.cells).strong > 1)
    candidates.push(twoRowHeader(row, lower, spans));
  return candidates.some((header) => {
    const sample = rows.slice(at + header.lines.length, at + header.lines.length + LOOK_AHEAD);
    return (interpret(columnViews(header, sample), null).best?.points ?? 0) > points + MORE_POINTS;
  });
}

/** True where the row below a header's can be its second line: it names columns under groups or fills its gaps. */
function isLowerHeader(lower: GridRow, upper: GridRow, spans: Grid["spans"]): boolean {
  if (looksLikeData(lower.cells) || lower.line > upper.line + 1 || lower.cells.some(isNothing)) return false;
  const { known, strong, filled } = knownNames(lower.cells);
  if (known < 2 || strong < 1 || known < filled * MIN_KNOWN_SHARE) return false;
  const merged = spans.some(({ line }) => line === upper.line);
  return merged || lower.cells.some((cell, column) => nameIn(cell) !== null && nameIn(upper.cells[column]) === null);
}

/** True for a text that names a thing and then tells its dates, as notes do and names of columns do not: "AED-01: pads exp 3/27". */
function tellsOfOne(cell: Cell): boolean {
  if (typeof cell !== "string") return false;
  // "fitted 12/2024, good till 12/2028"
  if (/\d[-/.]\d{2}[^\p{L}]*\p{L}+ (\p{L}+ )?\d{1,2}[-/.]\d/u.test(cell)) return true;
  const [named = ""] = /^[^:]{1,40}:\s/.exec(cell) ?? [];
  // one after the other: in one pattern a long text would be gone over again and again
  const said = cell.slice(named.length).search(/\p{L}/u);
  return named !== "" && said !== -1 && /\d{1,2}[-/.]\d{2,4}/.test(cell.slice(named.length + said));
}

/** True for a bare number that is no year: a line below the names of columns that holds one is a record. */
function isCount(cell: Cell): boolean {
  return typeof cell === "string" && /^\d{1,3}( \p{L}+)?$/u.test(cell.trim());
}

/** True for a whole date: below the names of columns it stands in a record. */
function isDay(cell: Cell): boolean {
  return typeof cell === "string" && /^\s*\d{1,4}([-/.])\d{1,2}\1\d{2,4}\s*$/.test(cell);
}

/** True for a cell that says "nothing here", as cells below a header do and headers do not. */
function isNothing(cell: Cell): boolean {
  return typeof cell === "string" && cell.trim() !== "" && (meansEmpty(cell.trim()) || /^#[A-Z]/.test(cell.trim()));
}

/** True where several of a row's cells stand in a record above too, each below the same name: "B3, Battery, Station, OK". */
function repeatsValues({ cells }: GridRow, above: readonly GridRow[], { rows }: HeadOfTable): boolean {
  const isSame = (cell: Cell, column: number) => nameIn(cell) !== null && cell === cells[column];
  return above.some((record) => record.line > rows.lines.at(-1)! && record.cells.filter(isSame).length > 1);
}

/**
 * True where a row among a table's records may be the header of the next table: it must not read as a record
 * of the one before, and must either stand off from it or be named beyond doubt.
 */
function mayStartTable(
  row: GridRow,
  before: GridRow,
  { strong, exact, filled }: { strong: number; exact: number; filled: number },
  { outputs }: HeadOfTable,
): boolean {
  if (row.cells.some(isNothing)) return false;
  for (const { fields } of outputs) {
    for (const { spec, columns } of fields) {
      const text = textAt(row, columns[0] as number);
      if (text === "" || text.length > MAX_TYPED_CHARACTERS) continue;
      if (spec.type === "date" ? readDateText(text) !== null : NUMERIC.has(spec.type) && readNumber(text, ".") !== null)
        return false;
    }
  }
  const standsOff = row.line > before.line + 1 || before.cells.filter((cell) => nameIn(cell) !== null).length === 1;
  return standsOff
    ? strong >= 2 || (filled >= 2 && exact === filled)
    : strong >= 3 && strong >= filled * MIN_STRONG_SHARE;
}

/** True for two headers of the same names, whatever their case. */
export function sameHeader(a: HeaderRows, b: HeaderRows): boolean {
  return headerKey(a) === headerKey(b);
}

/** The same text for headers of the same names. */
export function headerKey({ header }: Pick<HeaderRows, "header">): string {
  return header.join("\0").toLowerCase().replace(/\0+$/, "");
}
