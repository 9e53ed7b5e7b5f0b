import type { Day } from "../../calendar/day.ts";
import type { ColumnSpec, SheetSpec } from "../../fleet/columns.ts";
import type { Source } from "../../fleet/rows.ts";
import { shortened } from "../../fleet/shortened.ts";
import type { FindingLog } from "../finding-log.ts";
import type { Cell, GridRow } from "../grid.ts";
import { fillFromLabel } from "../labels/fill-from-label.ts";
import type { Output, Table } from "../tables/table.ts";
import { cellText, fillsOne } from "../values/cell-text.ts";
import { readDateText } from "../values/date-text.ts";
import { Problem } from "../values/problem.ts";
import { readCell } from "../values/read-cell.ts";
import { parseHeader } from "../words/parse-header.ts";
import { columnName } from "./column-name.ts";
import { type CountingColumns, countedIn, countingColumns } from "./counting-columns.ts";
import type { FieldReader, ReadOptions } from "./field-reader.ts";
import type { Filled } from "./filled.ts";
import { kindFromName } from "./kind-from-name.ts";
import { settleGone } from "./settle-gone.ts";
import { NothingLeftSettler, refusedBy } from "./settle-nothing-left.ts";
import { type SettledBy, settledBy, settleOrder } from "./settled-orders.ts";

/** Everything that reading one output of every record needs, made once a table. */
export interface RowPlan {
  output: Output;
  readers: FieldReader[];
  template: Record<string, unknown>;
  /** Why no row can be used, where a value that the heading gives cannot be; null where nothing is wrong. */
  refused: Filled | null;
  required: ColumnSpec[];
  /** Columns one of which must hold something; null where the output is the table's only one. */
  own: number[] | null;
  counting: CountingColumns;
  settled: SettledBy;
  nothingLeft: NothingLeftSettler;
  /** The column that describes the item beside its number; -1 where there is none. */
  description: number;
  /** The column whose time of day tells two tests of a day apart; -1 where there is none. */
  timeColumn: number;
}

const FILLED: Filled = { code: null, product: null };

/** The plan of one output. */
export function rowPlan(
  table: Table,
  output: Output,
  readers: FieldReader[],
  options: ReadOptions,
  log: FindingLog,
): RowPlan {
  const template: Record<string, unknown> = {};
  let refused: Filled | null = null;
  for (const { field } of output.sheet.columns) template[field] = null;
  for (const [field, text] of Object.entries(output.implied)) {
    const spec = output.sheet.columns.find((column) => column.field === field) as ColumnSpec;
    const value = readCell(text, spec, { asOf: options.asOf, order: options.dateOrder, mark: ".", headerUnit: "" });
    if (value instanceof Problem) refused = refusedHead(text, value, table, log);
    else template[field] = value;
    if (output.fromHeading === field && refused === null) noteHeading(text, spec, table, log);
  }
  // The place of the source is kept from the start: an object that grows later is many times dearer to make.
  template.source = null;
  const date =
    output.sheet.kind === "runtime_tests" ? output.fields.find(({ spec }) => spec.field === "date") : undefined;
  return {
    output,
    readers,
    // Parsed, the template holds its fields itself. Grown field by field it would keep most of them in a list beside it,
    // and so would every row made of it.
    template: JSON.parse(JSON.stringify(template)) as RowPlan["template"],
    refused,
    required: output.sheet.columns.filter(({ required }) => required),
    own: table.outputs.filter(({ beside }) => !beside).length === 1 && !output.beside ? null : output.own,
    counting: countingColumns(table, output),
    settled: settledBy(table, output),
    nothingLeft: new NothingLeftSettler(readers, table, log),
    description: descriptionColumn(table, output),
    timeColumn: date?.columns[0] ?? -1,
  };
}

function refusedHead(text: string, { code, because }: Problem, table: Table, log: FindingLog): Filled {
  const message = `"${shortened(text)}", which stands for every row, ${because}.`;
  const { file, sheet } = table.grid;
  const place = { file, sheet, line: table.headerLines[0] ?? null, column: null, value: text };
  log.add(code, place, () => ({ message }), text);
  return { code, message };
}

function noteHeading(
  text: string,
  { name }: ColumnSpec,
  { grid: { file, sheet }, number }: Table,
  log: FindingLog,
): void {
  const place = { file, sheet, line: null, column: null, value: text };
  const message = `No column holds ${name}: "${shortened(text)}" was taken for every row.`;
  log.add("from-heading", place, () => ({ message }), String(number));
}

function descriptionColumn({ header }: Table, { fields }: Output): number {
  const read = new Set(fields.flatMap(({ columns }) => columns));
  return header.findIndex((name, column) => {
    if (name === null || read.has(column)) return false;
    const { things, says } = parseHeader(name);
    return things === "item" && says === "";
  });
}

/** True where the record says something of the output at all. */
export function speaksOf({ own, output: { unless } }: RowPlan, cells: readonly Cell[]): boolean {
  return (own === null || fillsOne(own, cells)) && !unless?.(cells);
}

/** Fills a row's values from a record's cells and its label, noting what is wrong with them. */
export function fillRow(
  values: Record<string, unknown> & { source: Source },
  plan: RowPlan,
  record: GridRow,
  table: Table,
  asOf: Day,
  log: FindingLog,
): Filled {
  const { cells, line } = record;
  let { refused } = plan;
  for (const { spec, columns, read } of plan.readers) {
    const value = read(cells, line);
    if (value === null) continue;
    if (value instanceof Problem) refused ??= refusedBy(value, table, columns[0]!, cells[columns[0]!] ?? null);
    else values[spec.field] = value;
  }
  if (refused) return refused;
  const gone = settleGone(values, plan.output.sheet, log);
  if (gone !== null) return gone;
  const absurd = plan.nothingLeft.settle(values, record);
  if (absurd !== null) return absurd;
  const { measure, boxSize } = plan.counting;
  if (measure !== -1 || boxSize !== -1) values.quantity = countedIn(values.quantity, cells, plan.counting);
  const label = typeof values.label === "string" ? fillFromLabel(values, values.label, asOf, log) : null;
  if (plan.output.sheet.kind === "catalogue" && values.kind === null)
    kindFromName(values, cellText(cells[plan.description] ?? null), log);
  if (plan.output.beside) values.kind ??= "other";
  const lacks = lackOf(plan.required, values);
  if (lacks) return label !== null && label.code !== null ? label : missing(lacks, plan, table, line, log);
  const done = settleOrder(values, plan.output.sheet, cells, plan.settled);
  if (done !== null) return done;
  if (!hasOneOf(plan.output.sheet, values)) return unmeasured(table, line, log);
  return label ?? FILLED;
}

/** The first required field that holds nothing; null where all hold something. */
function lackOf(required: readonly ColumnSpec[], values: Record<string, unknown>): ColumnSpec | null {
  for (const spec of required) if (values[spec.field] === null) return spec;
  return null;
}

function hasOneOf({ oneOf }: SheetSpec, values: Record<string, unknown>): boolean {
  for (const field of oneOf) if (values[field] !== null) return true;
  return oneOf.length === 0;
}

function missing(
  spec: ColumnSpec,
  { readers, output: { sheet } }: RowPlan,
  table: Table,
  line: number,
  log: FindingLog,
): Filled {
  const column = readers.find((reader) => reader.spec === spec)?.columns[0] ?? null;
  const named = column === null ? spec.name : `column ${columnName(table, column)}`;
  const place = { file: table.grid.file, sheet: table.grid.sheet, line, value: null };
  log.add(
    "missing-required",
    { ...place, column: column === null ? null : column + 1 },
    () => missingWords(named, sheet),
    sheet.kind,
  );
  return { code: "missing-required", message: `Nothing stands in ${named}.` };
}

function missingWords(named: string, { kind }: SheetSpec): { message: string } {
  return { message: `The row has nothing in ${named}, without which ${kind.replaceAll("_", " ")} cannot be used.` };
}

function unmeasured({ grid: { file, sheet } }: Table, line: number, log: FindingLog): Filled {
  const message = "The runtime test measures nothing that can be used.";
  log.add("no-measurement", { file, sheet, line, column: null, value: null }, () => ({ message }));
  return { code: "no-measurement", message };
}

/** The time of day beside a test's date, as written; empty where there is none. */
export function timeOf({ timeColumn }: RowPlan, cells: readonly Cell[]): string {
  const cell = timeColumn === -1 ? null : cells[timeColumn];
  if (typeof cell !== "string" || cell.length > 80 || !cell.includes(":")) return "";
  const written = readDateText(cellText(cell));
  return written && written.kind !== "bad" ? written.time : "";
}
