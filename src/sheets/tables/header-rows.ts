import { SHEETS } from "../../fleet/columns.ts";
import type { Cell, GridRow } from "../grid.ts";
import { headerWords } from "../words/header-words.ts";
import { parseHeader } from "../words/parse-header.ts";

/** A header over one or two lines: the names of the columns and of the groups above them. */
export interface HeaderRows {
  lines: number[];
  header: (string | null)[];
  groups: (string | null)[];
}

/** Share of texts that are known as names, where they are names. */
const MOSTLY_KNOWN = 0.6;
/** Longest text that can name a column. */
const MAX_NAME = 120;

/** Text of a cell that may name a column; null where it cannot. */
export function nameIn(cell: Cell | undefined): string | null {
  if (typeof cell !== "string") return typeof cell === "number" ? String(cell) : null;
  const text = cell.trim();
  return text === "" || text.length > MAX_NAME ? null : text;
}

/** Text of a cell that may be a label, without its colon; null where it cannot. */
export function labelIn(cell: Cell | undefined): string | null {
  return nameIn(cell)?.replace(/\s*:$/, "") || null;
}

const CANONICAL = new Set(SHEETS.flatMap(({ columns }) => columns.map(({ name }) => headerWords(name))));

/** How many of a row's cells name something known, and how many hold anything; exact ones are canonical names. */
export function knownNames(cells: readonly Cell[]): { known: number; strong: number; exact: number; filled: number } {
  let known = 0;
  let exact = 0;
  let strong = 0;
  let filled = 0;
  for (const cell of cells) {
    if (cell === null || cell === "" || (typeof cell === "string" && cell.trim() === "")) continue;
    filled++;
    const name = typeof cell === "string" ? nameIn(cell) : null;
    if (name === null) continue;
    const { coverage, says, things, words } = parseHeader(name);
    if (coverage < 0.55 || (says === "" && things === "")) continue;
    known++;
    if (says !== "") strong++;
    if (CANONICAL.has(words)) exact++;
  }
  return { known, strong, exact, filled };
}

/** True where most cells that hold anything name something known, at least two of them more than a thing. */
export function mostlyNames(cells: readonly Cell[]): boolean {
  const { known, strong, filled } = knownNames(cells);
  return strong > 1 && known >= filled * MOSTLY_KNOWN;
}

/** One row as the header of its columns. */
export function oneRowHeader(row: GridRow): HeaderRows {
  return { lines: [row.line], header: row.cells.map((cell) => nameIn(cell)), groups: row.cells.map(() => null) };
}

/** One row as the header of its columns, with the units that a row of their own below it gives, as "h" below "Runtime". */
export function headerOverUnits(row: GridRow, below: GridRow): HeaderRows {
  const plain = oneRowHeader(row);
  const isUnit = (cell: Cell) =>
    /^([-()[\]/.:]{0,3}(%|m?[aw]h|min|h|w|°[cf]|[dmyjta.]{8,}|)[-()[\]/.:]{0,3}|\((n[or]?|dat(e|um))\))$/i.test(
      String(cell ?? "").trim(),
    );
  if (!below.cells.every(isUnit) || below.cells.every((cell) => !nameIn(cell))) return plain;
  const header = plain.header.map((name, column) => name && `${name} ${nameIn(below.cells[column]) ?? ""}`.trim());
  return { ...plain, lines: [row.line, below.line], header };
}

/** Cells merged over several columns in a line. */
type Spans = readonly { line: number; from: number; to: number }[];

/**
 * Two rows as one header: the upper one names groups, or columns that the lower one leaves blank. A group
 * reaches as far as its merged cell does; where nothing is merged, up to the next named one.
 */
export function twoRowHeader(upper: GridRow, lower: GridRow, spans: Spans): HeaderRows {
  const merged = spans.filter(({ line }) => line === upper.line);
  const width = Math.max(upper.cells.length, lower.cells.length);
  const header: (string | null)[] = [];
  const groups: (string | null)[] = [];
  let group: string | null = null;
  for (let column = 0; column < width; column++) {
    const above = nameIn(upper.cells[column]);
    const below = nameIn(lower.cells[column]);
    if (above !== null) group = above;
    else if (merged.length > 0 && !merged.some(({ from, to }) => column > from && column <= to)) group = null;
    header.push(below ?? above);
    groups.push(below === null || above === below ? null : group);
    // A column named above only ends the group on its left.
    if (below === null && above !== null) group = null;
  }
  return { lines: [upper.line, lower.line], header, groups };
}
