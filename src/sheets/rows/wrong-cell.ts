import type { ColumnSpec } from "../../fleet/columns.ts";
import { shortened } from "../../fleet/shortened.ts";
import type { Cell } from "../grid.ts";
import type { Table } from "../tables/table.ts";
import { cellText } from "../values/cell-text.ts";
import type { Problem } from "../values/problem.ts";
import { columnName } from "./column-name.ts";

/** What a good cell looks like does not help where its date may be good, only late or in either order, or a word is unknown. */
const MAY_BE_GOOD = /^(status-unknown|date-after|date-order)/;

/** What is wrong with a cell, where, and what was expected. */
export function wrongCell(
  { code, because }: Problem,
  { expects }: ColumnSpec,
  table: Table,
  column: number,
  cell: Cell,
): string {
  const expected = MAY_BE_GOOD.test(code) ? "" : `; ${expects} was expected`;
  return `"${shortened(cellText(cell))}" in column ${columnName(table, column)} ${because}${expected}.`;
}
