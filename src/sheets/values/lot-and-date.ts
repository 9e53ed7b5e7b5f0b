import type { Cell } from "../grid.ts";
import { cellText, MAX_TYPED_CHARACTERS } from "./cell-text.ts";
import { isDate, readDateText } from "./date-text.ts";
import { type ListedPart, listedPart } from "./listed-supplies.ts";
import { type ResultOrPercent, resultOrPercent } from "./result-and-percent.ts";

/** Which part of a cell is meant, of one that holds a lot and its date, a result and a capacity, or that lists supplies. */
export type CellPart = LotOrDate | ResultOrPercent | ListedPart;
type LotOrDate = "lot" | "date";

const LOT_WORD = /^(?:lote?|lotto|batch|charge|ch|lotnr|partij?|parti)\b(?:\s*(?:no|nr|n°|#))?[\s.:#]*/i;
/** A small number before a date, which is no part of it: "2 (exp 05/27)", "2 x 05/2027". */
const COUNT_FIRST = /^(\d{1,3})\s?x?[\s(@:,-]+(\D*\d+[/. -].*\d)\)?$/i;
const EDGES = /^[\s/|,;:()[\]-]+|[\s/|,;:([\]-]+$/g;

/** The lot and the date of a cell such as "L2231 / 05-2027" or "exp 05/2027 (L2231)"; null where it holds no such two. */
export function lotAndDate(cell: Cell): Record<LotOrDate, string> | null {
  const text = cellText(cell).replace(/\)$/, "");
  if (text.length > MAX_TYPED_CHARACTERS) return null;
  const [, lot = "", date = ""] = COUNT_FIRST.exec(text) ?? [];
  if (lot !== "" && isDate(date) && !isDate(text)) return { lot, date };
  // Signs part more surely than blanks do, and the leftmost leaves most to the date.
  for (const parting of [/[/|,;(\n]/g, /\s/g]) {
    for (const { index } of text.matchAll(parting)) {
      const [before, after] = [text.slice(0, index), text.slice(index + 1)].map((part) => part.replace(EDGES, ""));
      for (const [date, rest] of [
        [after, before],
        [before, after],
      ] as [string, string][]) {
        const lot = rest.replace(LOT_WORD, "");
        if (lot !== "" && readDateText(lot) === null && isDate(date)) return { lot, date };
      }
    }
  }
  return null;
}

/** The two parts of a cell of which the first is no lot but a count: "2 (exp 05/27)"; null where it holds no such two. */
export function countAndDate(cell: Cell): Record<LotOrDate, string> | null {
  return COUNT_FIRST.test(cellText(cell)) ? lotAndDate(cell) : null;
}

/** One part of a cell; the whole of it, as its date or lot, where it cannot be parted. */
export function cellPart(cell: Cell, part: CellPart): Cell {
  if (part === "result" || part === "percent") return resultOrPercent(cell, part);
  if (part !== "lot" && part !== "date") return listedPart(cellText(cell), part);
  const parts = lotAndDate(cell);
  if (parts) return parts[part];
  return isDate(cellText(cell)) === (part === "date") ? cell : null;
}
