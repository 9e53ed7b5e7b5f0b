import type { ColumnSpec } from "../../fleet/columns.ts";
import type { GridRow } from "../grid.ts";
import type { FieldSource, Table } from "../tables/table.ts";
import type { DateOrder } from "../values/date-text.ts";
import { type CellPart, cellPart } from "../values/lot-and-date.ts";
import { dateOrderIn } from "../words/parse-header.ts";
import { type ColumnSurvey, surveyColumn } from "./survey-column.ts";

/** Surveys of records that several tables share, by column spec, columns and part. */
const known = new WeakMap<readonly GridRow[], Map<ColumnSpec, Map<string, ColumnSurvey[]>>>();

/** Looks over a field's columns before their cells are read. */
export function surveyField(table: Table, source: FieldSource, dateOrder: DateOrder | null): ColumnSurvey[] {
  const { spec, columns, part, alike } = source;
  const { semicolons } = table.grid;
  const look = ({ rows, odd }: Pick<Table, "odd"> & { rows: readonly GridRow[] }) =>
    columns.map((column) => {
      const parts = part === null ? rows : partOfRows(rows, column, part);
      const told = dateOrderIn(table.header[column] ?? "");
      return surveyColumn(parts, odd, alike ?? [column], spec, { dateOrder: told ?? dateOrder, semicolons });
    });
  return table.alike ? onceOf(table.alike, source, look) : look(table);
}

/** What a look over records that several tables share tells: it is taken once for all of them. */
function onceOf(
  rows: readonly GridRow[],
  { spec, columns, part }: FieldSource,
  look: (of: Pick<Table, "odd"> & { rows: readonly GridRow[] }) => ColumnSurvey[],
): ColumnSurvey[] {
  const ofRows = known.get(rows) ?? new Map<ColumnSpec, Map<string, ColumnSurvey[]>>();
  known.set(rows, ofRows);
  const ofSpec = ofRows.get(spec) ?? new Map<string, ColumnSurvey[]>();
  ofRows.set(spec, ofSpec);
  const key = `${columns} ${part}`;
  const surveys = ofSpec.get(key) ?? look({ rows, odd: new Map() });
  ofSpec.set(key, surveys);
  return surveys;
}

/** The rows with one column's cells cut down to the part that is meant. */
function partOfRows(rows: readonly GridRow[], column: number, part: CellPart): GridRow[] {
  return rows.map(({ line, cells }) => ({
    line,
    cells: cells.map((cell, at) => (at === column ? cellPart(cell, part) : cell)),
  }));
}
