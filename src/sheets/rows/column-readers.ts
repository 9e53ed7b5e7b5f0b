import type { GridRow } from "../grid.ts";
import type { FieldSource, Table } from "../tables/table.ts";
import { cellText } from "../values/cell-text.ts";
import { cellPart } from "../values/lot-and-date.ts";
import { Problem } from "../values/problem.ts";
import { type CellContext, columnReader } from "../values/read-cell.ts";
import { parseHeader, tellsStatus } from "../words/parse-header.ts";
import type { ReadOptions } from "./read-options.ts";
import { recordReader } from "./record-reader.ts";
import type { ColumnSurvey } from "./survey-column.ts";

/** Columns that a status fills: what may not be used, and what is gone. */
const STANDING: ReadonlySet<string> = new Set(["held", "retired"]);

/** What reads each of a field's columns, as the look over it told: a value, null, or a Problem. */
export function columnReaders(
  table: Table,
  { spec, columns, part, headerUnit }: FieldSource,
  surveys: readonly ColumnSurvey[],
  { asOf, dateOrder }: ReadOptions,
): ((record: GridRow) => unknown)[] {
  const standing = STANDING.has(spec.name) ? standingToldBy(columns, table) : null;
  return surveys.map(({ order, mark, proven }, at) => {
    const refused = order.state === "contradicts" || (order.state === "unsettled" && spec.required);
    if (refused) {
      const problem = new Problem(
        order.state === "contradicts" ? "date-order-contradicts" : "date-order-unsettled",
        "stands in a column whose day/month order is not settled",
      );
      return recordReader(columns[at]!, (cell) => (cellText(cell) === "" ? null : problem));
    }
    const context = { asOf, order: order.order, mark, proven, headerUnit };
    const reader = columnReader(spec, standing === null ? context : { ...context, order: dateOrder, standing });
    return recordReader(columns[at]!, part === null ? reader : (cell) => reader(cellPart(cell, part)));
  });
}

/** What a field's columns tell how things stand by, going by their headers; null where they do not. */
function standingToldBy(columns: readonly number[], { header }: Table): NonNullable<CellContext["standing"]> | null {
  const meanings = columns.map((column) => parseHeader(header[column] ?? ""));
  if (meanings.some(tellsStatus)) return "status";
  return meanings.some(({ says }) => says === "result") ? "result" : null;
}
