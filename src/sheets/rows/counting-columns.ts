import type { GridRow } from "../grid.ts";
import type { Output, Table } from "../tables/table.ts";
import { textAt } from "../values/cell-text.ts";
import { readNumber } from "../values/number-text.ts";
import { Boxes } from "../values/read-cell.ts";
import { isBoxWord, isUnitWord, packIn } from "../values/units.ts";
import { parseHeader } from "../words/parse-header.ts";

/** Columns (0-based, -1 for none) beside a quantity that say what it counts: a unit of measure, and units per box. */
export interface CountingColumns {
  measure: number;
  boxSize: number;
  /** Units that lie loose beside the boxes. */
  loose: number;
}

/** The counting columns of a table for one of its outputs; none where the sheet has columns of its own for them. */
export function countingColumns({ header, rows }: Table, { sheet, fields }: Output): CountingColumns {
  if (sheet.kind === "catalogue" || !fields.some(({ spec }) => spec.name === "quantity" && spec.unit === "units"))
    return { measure: -1, boxSize: -1, loose: -1 };
  const counts = new Set(fields.flatMap(({ spec, columns }) => (spec.name === "quantity" ? columns : [])));
  const says = header.map((name, column) => (name === null || counts.has(column) ? "" : parseHeader(name).says));
  const measure = says.indexOf("priceper");
  return {
    measure: measure === -1 ? unitColumn(says, rows) : measure,
    boxSize: says.indexOf("box"),
    loose: header.findIndex((name) => LOOSE.test(name ?? "")),
  };
}

const LOOSE = /^(loo?se|losse|singles|einzeln|sueltos|vrac)/i;

/** Rows in which units of measure are looked for. */
const LOOKED_AT = 20;

/** A column headed "Unit" below which units of measure stand, and no vehicles; -1 where there is none. */
function unitColumn(says: readonly string[], rows: readonly GridRow[]): number {
  return says.findIndex((said, column) => {
    if (said !== "unit") return false;
    const words = rows.slice(0, LOOKED_AT).map((row) => textAt(row, column).toLowerCase());
    const filled = words.filter((word) => word !== "");
    return filled.length > 0 && filled.every(isUnitWord);
  });
}

/** A record's quantity in boxes where its unit of measure is one, and in units where its line says how many a box holds. */
export function countedIn(quantity: unknown, record: GridRow, columns: CountingColumns): unknown {
  const unit = textAt(record, columns.measure).toLowerCase();
  const pack = packIn(unit);
  const inBoxes = pack !== null || isBoxWord(unit);
  const count = quantity instanceof Boxes ? quantity.count : typeof quantity === "number" && inBoxes ? quantity : null;
  const loose = readNumber(textAt(record, columns.loose), ".")?.value ?? 0;
  if (count === null) return quantity ?? (loose || null);
  const boxes = new Boxes(count, loose);
  const size = pack?.size ?? readNumber(textAt(record, columns.boxSize), ".")?.value ?? 0;
  return Number.isInteger(size) && size > 0 ? boxes.ofSize(size) : boxes;
}
