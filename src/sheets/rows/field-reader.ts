import type { ColumnSpec } from "../../fleet/columns.ts";
import type { FindingLog } from "../finding-log.ts";
import { cellAt, type GridRow } from "../grid.ts";
import type { FieldSource, Table } from "../tables/table.ts";
import type { DateOrder } from "../values/date-text.ts";
import { Problem } from "../values/problem.ts";
import { columnReaders } from "./column-readers.ts";
import { type Complain, complainer } from "./complain.ts";
import { copiesReader } from "./copies-reader.ts";
import { logSurvey } from "./log-survey.ts";
import type { ReadOptions } from "./read-options.ts";
import { surveyField } from "./survey-field.ts";
import { vehicleReader } from "./vehicle-reader.ts";

/** Reads one field of a record: its value, null where empty or unusable. */
export interface FieldReader {
  spec: ColumnSpec;
  columns: number[];
  /** The day/month order of each column's dates. */
  orders: (DateOrder | null)[];
  /** Reads the field from a record; a Problem where the record cannot stand with it. */
  read: (record: GridRow) => unknown;
  /** What the field's first column holds, noting nothing. */
  peek: (record: GridRow) => unknown;
  complain: Complain;
  /** Of places that are a site and a vehicle together: the vehicle's own name by both. */
  joined?: ReadonlyMap<string, string>;
}

/** The reader of one field of a table. */
export function fieldReader(table: Table, source: FieldSource, options: ReadOptions, log: FindingLog): FieldReader {
  const { spec, columns } = source;
  if (source.joins) {
    const { read, joined } = vehicleReader(columns);
    return { spec, columns, orders: [null, null], read, peek: read, complain: () => null, joined };
  }
  const surveys = surveyField(table, source, options.dateOrder);
  surveys.forEach((survey, at) => {
    logSurvey(survey, table, columns[at]!, spec, log);
  });
  const readers = columnReaders(table, source, surveys, options);
  const complain = complainer(table, spec, log);
  const readAt = (record: GridRow, at: number) => {
    const value = readers[at]!(record);
    if (!(value instanceof Problem)) return value;
    return complain(value, cellAt(record, columns[at]!)!, columns[at]!, record.line);
  };
  return {
    spec,
    columns,
    orders: surveys.map(({ order }) => order.order),
    read: columns.length === 1 ? (record) => readAt(record, 0) : copiesReader(table, spec, columns, readAt, log),
    peek: readers[0]!,
    complain,
  };
}
