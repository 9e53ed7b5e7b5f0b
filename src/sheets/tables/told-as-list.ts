import { type Grid, isBlankRow } from "../grid.ts";
import { formsAsList } from "./forms-as-list.ts";
import { labelsApart } from "./labels-apart.ts";
import { turnedAsList } from "./turned-as-list.ts";

/**
 * A grid whose names stand left of their values, as a list below its names; null for any other.
 *
 * Forms, and records in columns, have no line of their own in their sheet. They are told by the line of the list,
 * which goes by a name beside the tab's, so that rows, findings and corrections all mean the same cells.
 */
export function toldAsList(grid: Grid): Grid | null {
  const rows = grid.rows.filter((row) => !isBlankRow(row));
  const apart = labelsApart(rows);
  const list = apart === null ? (formsAsList(rows, false) ?? turnedAsList(rows)) : formsAsList(apart, true);
  if (list === null) return null;
  const { name, where } = list;
  const sheet = grid.sheet === null ? name : `${grid.sheet}, ${name}`;
  return { ...grid, sheet, rows: list.rows, spans: [], toldFrom: { tab: grid.sheet, where } };
}
