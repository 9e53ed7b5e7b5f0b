import type { Day } from "../../calendar/day.ts";
import type { ColumnSpec } from "../../fleet/columns.ts";
import type { FindingLog } from "../finding-log.ts";
import { type Cell, cellAt, type GridRow } from "../grid.ts";
import type { ColumnsFile } from "../mapping/columns-file.ts";
import type { FieldSource, Table } from "../tables/table.ts";
import { cellText, meansEmpty, textAt } from "../values/cell-text.ts";
import type { DateOrder } from "../values/date-text.ts";
import { saysPastUse } from "../values/fault-words.ts";
import { type CellPart, cellPart } from "../values/lot-and-date.ts";
import { Problem } from "../values/problem.ts";
import { type CellContext, columnReader } from "../values/read-cell.ts";
import { parseHeader, tellsStatus } from "../words/parse-header.ts";
import { columnName } from "./column-name.ts";
import { logSurvey } from "./log-survey.ts";
import { recordReader } from "./record-reader.ts";
import { type ColumnSurvey, surveyColumn } from "./survey-column.ts";
import { vehicleAtSite } from "./vehicle-at-site.ts";
import { wrongCell } from "./wrong-cell.ts";

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
  /** Notes what is wrong with a cell; gives the problem back where the record cannot stand with it. */
  complain: (problem: Problem, cell: Cell, column: number, line: number) => Problem | null;
  /** Of places that are a site and a vehicle together: the vehicle's own name by both. */
  joined?: ReadonlyMap<string, string>;
}

/** What reading needs to know from outside the sheets. */
export interface ReadOptions {
  asOf: Day;
  dateOrder: DateOrder | null;
  /** How columns are to be read where a columns file says so. */
  columns?: ColumnsFile | null;
}

/** Columns that a status fills: what may not be used, and what is gone. */
const STANDING: ReadonlySet<string> = new Set(["held", "retired"]);

/** What an item's name may tell where its own column does not. */
const TOLD_BY_NAMES: ReadonlySet<string> = new Set(["kind"]);

/** Problems with a measuring cell that make its whole record absurd. */
const ABSURD = new Set(["number-out-of-range", "number-not-whole"]);

/** Surveys of records that several tables share, by column spec, columns and part. */
const known = new WeakMap<readonly GridRow[], Map<ColumnSpec, Map<string, ColumnSurvey[]>>>();

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

/** The reader of one field of a table. */
export function fieldReader(table: Table, source: FieldSource, options: ReadOptions, log: FindingLog): FieldReader {
  const { spec, columns, part } = source;
  if (source.joins) return vehicleReader(source);
  const { file, sheet, semicolons } = table.grid;
  const look = ({ rows, odd }: Pick<Table, "odd"> & { rows: readonly GridRow[] }) =>
    columns.map((column) => {
      const parts = part === null ? rows : partOfRows(rows, column, part);
      const together = source.alike ?? [column];
      return surveyColumn(parts, odd, together, spec, { dateOrder: options.dateOrder, semicolons });
    });
  const surveys = table.alike ? onceOf(table.alike, source, look) : look(table);
  surveys.forEach((survey, at) => {
    logSurvey(survey, table, columns[at]!, spec, log);
  });
  const standing = STANDING.has(spec.name) ? standingToldBy(source, table) : null;
  const readers = surveys.map(({ order, mark }, at) => {
    const refused = order.state === "contradicts" || (order.state === "unsettled" && spec.required);
    if (refused) {
      const problem = new Problem(
        order.state === "contradicts" ? "date-order-contradicts" : "date-order-unsettled",
        "stands in a column whose day/month order is not settled",
      );
      return recordReader(columns[at]!, (cell) => (cellText(cell) === "" ? null : problem));
    }
    const context = { asOf: options.asOf, order: order.order, mark, headerUnit: source.headerUnit };
    const reader = columnReader(spec, standing === null ? context : { ...context, order: options.dateOrder, standing });
    return recordReader(columns[at]!, part === null ? reader : (cell) => reader(cellPart(cell, part)));
  });

  const complain = (problem: Problem, cell: Cell, column: number, line: number): Problem | null => {
    const fatal = (spec.required && !TOLD_BY_NAMES.has(spec.name)) || (spec.measures && ABSURD.has(problem.code));
    if (problem.code.startsWith("date-order-")) return fatal ? problem : null;
    const value = cellText(cell);
    const code = spec.field === "expiry" && saysPastUse(value) ? "fault-unread" : problem.code;
    log.add(code, { file, sheet, line, column: column + 1, value }, () => ({
      message: wrongCell(problem, spec, table, column, cell),
      severity: fatal ? "error" : "warning",
    }));
    return fatal ? problem : null;
  };

  const [firstColumn] = columns;
  const [firstReader] = readers;
  const read =
    columns.length === 1
      ? (row: GridRow) => {
          const value = firstReader!(row);
          return value instanceof Problem ? complain(value, cellAt(row, firstColumn!)!, firstColumn!, row.line) : value;
        }
      : (row: GridRow) => {
          let kept: unknown = null;
          let from = -1;
          for (let i = 0; i < columns.length; i++) {
            const column = columns[i]!;
            let value = readers[i]!(row);
            if (value instanceof Problem) value = complain(value, cellAt(row, column)!, column, row.line);
            if (value === null || value instanceof Problem) continue;
            if (from === -1) {
              kept = value;
              from = i;
            } else if (!same(kept, value)) {
              const [one, two] = [columns[from]!, column];
              const place = { file, sheet, line: row.line, column: two + 1, value: textAt(row, column) };
              log.add("copies-disagree", place, () => ({
                message: `Columns ${columnName(table, one)} and ${columnName(table, two)} both mean ${spec.name} and hold different values.`,
              }));
              return null;
            }
          }
          return kept;
        };
  return { spec, columns, orders: surveys.map(({ order }) => order.order), read, peek: firstReader!, complain };
}

/** The reader of a place from a column of sites and one of vehicles. */
function vehicleReader({ spec, columns }: FieldSource): FieldReader {
  const [site, vehicle] = columns as [number, number];
  const joined = new Map<string, string>();
  const textIn = (record: GridRow, column: number) => {
    const text = textAt(record, column);
    return meansEmpty(text) ? "" : text;
  };
  const read = (record: GridRow) => {
    const own = textIn(record, vehicle);
    const name = vehicleAtSite(textIn(record, site), own);
    if (name !== own && own !== "") joined.set(name, own);
    return name === "" ? null : name;
  };
  return { spec, columns, orders: [null, null], read, peek: read, complain: () => null, joined };
}

/** What a field's columns tell how things stand by, going by their headers; null where they do not. */
function standingToldBy({ columns }: FieldSource, { header }: Table): NonNullable<CellContext["standing"]> | null {
  const meanings = columns.map((column) => parseHeader(header[column] ?? ""));
  if (meanings.some(tellsStatus)) return "status";
  return meanings.some(({ says }) => says === "result") ? "result" : null;
}

/** The rows with one column's cells cut down to the part that is meant. */
function partOfRows(rows: readonly GridRow[], column: number, part: CellPart): GridRow[] {
  return rows.map(({ line, cells }) => ({
    line,
    cells: cells.map((cell, at) => (at === column ? cellPart(cell, part) : cell)),
  }));
}

function same(a: unknown, b: unknown): boolean {
  return typeof a === "string" && typeof b === "string"
    ? a.toLowerCase() === b.toLowerCase()
    : JSON.stringify(a) === JSON.stringify(b);
}
