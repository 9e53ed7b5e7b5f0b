import { type Cell, cellAt, type GridRow } from "../grid.ts";
import { unguardText } from "./formula-guard.ts";

/** Words that stand for an empty cell. */
const EMPTY_WORDS = new Set(
  "-|--|---|–|—|?|??|???|.|/|n/a|na|n.a.|n.a|n/t|none|null|nil|nan|unknown|unk|not known|tbd|tbc|tba|k.a.|k. a.|unbekannt|keine|entfällt|s/o|sans objet|inconnu|inconnue|néant|desconocido|no aplica|n/d|no tiene|no hay|no lleva|sin|s/d|s.d.|ninguno|ninguna|aucun|aucune|ohne|ohne datum|nicht vorhanden|not fitted|none fitted|not supplied|not held|no date|no expiry|sans date|sin fecha|nvt|n.v.t.|n.v.t|onbekend|geen".split(
    "|",
  ),
);

/** The longest cell that can be a date, number, choice or yes/no: longer ones are refused unread. */
export const MAX_TYPED_CHARACTERS = 80;

/** The apostrophe by which people keep the leading zeros of digits in a spreadsheet. */
const KEEPS_DIGITS = /^'(?=\d[^']*$)/;

/** Text of a cell as its writer meant it: trimmed, without the apostrophes that guard formula signs or leading zeros. */
export function cellText(cell: Cell): string {
  if (cell === null) return "";
  if (typeof cell !== "string") return String(cell);
  const text = unguardText(cell.trim());
  return text.charCodeAt(0) === 39 ? text.replace(KEEPS_DIGITS, "") : text;
}

/** The text of one of a record's cells (0-based); empty beyond its end, and at -1. */
export function textAt(record: GridRow, column: number): string {
  return cellText(cellAt(record, column) ?? null);
}

/** The texts of a column (0-based), leaving out those that mean that it is empty. */
export function textsAt(records: readonly GridRow[], column: number): string[] {
  return records.map((record) => textAt(record, column)).filter((text) => !meansEmpty(text));
}

/** True where the text is empty or a word for "nothing here", such as n/a. */
export function meansEmpty(text: string): boolean {
  if (text === "") return true;
  // "n/a (mains)"
  const word = text.endsWith(")") ? text.slice(0, text.indexOf(" (")) : text;
  return word.length <= 16 && EMPTY_WORDS.has(word.toLowerCase());
}

/** True where one of a record's cells in these columns (0-based) holds something. */
export function fillsOne(columns: readonly number[], record: GridRow): boolean {
  return columns.some((column) => !meansEmpty(textAt(record, column)));
}
