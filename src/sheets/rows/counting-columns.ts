import type { Cell } from "../grid.ts";
import type { Output, Table } from "../tables/table.ts";
import { cellText } from "../values/cell-text.ts";
import { readNumber } from "../values/number-text.ts";
import { Boxes } from "../values/read-cell.ts";
import { isBoxWord } from "../values/units.ts";
import { parseHeader } from "../words/parse-header.ts";

/** Columns (0-based, -1 for none) beside a quantity that say what it counts: a unit of measure, and units per box. */
export interface CountingColumns {
  measure: number;
  boxSize: number;
}

/** The counting columns of a table for one of its outputs; none where the sheet has columns of its own for them. */
export function countingColumns({ header }: Table, { sheet, fields }: Output): CountingColumns {
  if (sheet.kind === "catalogue" || !fields.some(({ spec }) => spec.name === "quantity" && spec.unit === "units"))
    return { measure: -1, boxSize: -1 };
  const says = header.map((name) => (name === null ? "" : parseHeader(name).says));
  return { measure: says.indexOf("priceper"), boxSize: says.indexOf("box") };
}

/** A record's quantity in boxes where its unit of measure is one, and in units where its line says how many a box holds. */
export function countedIn(quantity: unknown, cells: readonly Cell[], { measure, boxSize }: CountingColumns): unknown {
  const inBoxes = measure !== -1 && isBoxWord(cellText(cells[measure] ?? null).toLowerCase());
  const boxes = quantity instanceof Boxes ? quantity.count : typeof quantity === "number" && inBoxes ? quantity : null;
  if (boxes === null) return quantity;
  const size = boxSize === -1 ? null : readNumber(cellText(cells[boxSize] ?? null), ".");
  return size !== null && Number.isInteger(size.value) && size.value > 0 ? boxes * size.value : new Boxes(boxes);
}
