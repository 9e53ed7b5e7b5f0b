import type { Cell, GridRow } from "../grid.ts";
import { LABEL_AND_VALUE } from "./form-lines.ts";
import { nameIn } from "./header-rows.ts";

/** Share of the cells that hold a label and its value together. */
const MOSTLY = 0.6;

/** Rows with "Label: value" in one cell parted into two, where most cells are so; null for others. */
export function labelsApart(rows: readonly GridRow[]): GridRow[] | null {
  const texts = rows.flatMap(({ cells }) => cells.flatMap((cell) => nameIn(cell) ?? []));
  if (texts.filter((text) => LABEL_AND_VALUE.test(text)).length < texts.length * MOSTLY) return null;
  return rows.map(({ line, cells }) => ({
    line,
    cells: cells.flatMap((cell): Cell[] => {
      const [, label, value] = LABEL_AND_VALUE.exec(nameIn(cell) ?? "") ?? [];
      return label === undefined ? [cell, null] : [label, value!];
    }),
  }));
}
