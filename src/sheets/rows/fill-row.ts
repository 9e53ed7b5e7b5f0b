import { type ColumnSpec, columnOfField, type SheetSpec } from "../../fleet/columns.ts";
import { shortened } from "../../fleet/shortened.ts";
import type { FindingLog } from "../finding-log.ts";
import { cellAt, type GridRow } from "../grid.ts";
import type { Output, Table } from "../tables/table.ts";
import { cellText, fillsOne, textAt } from "../values/cell-text.ts";
import { type DateOrder, readDateText } from "../values/date-text.ts";
import { Problem } from "../values/problem.ts";
import { Boxes, readCell } from "../values/read-cell.ts";
import { blankRow } from "./blank-row.ts";
import { type CountingColumns, countingColumns } from "./counting-columns.ts";
import { orderOfColumn } from "./date-order.ts";
import type { FieldReader } from "./field-reader.ts";
import type { Filled } from "./filled.ts";
import type { ReadOptions } from "./read-options.ts";
import { type RowStep, type RowValues, rowSteps } from "./row-steps.ts";
import { refusedBy } from "./settle-nothing-left.ts";
import { type SettledBy, settledBy } from "./settled-orders.ts";

/** Everything that reading one output of every record needs, made once a table. */
export interface RowPlan {
  output: Output;
  readers: FieldReader[];
  template: Record<string, unknown>;
  /** Why no row can be used, where a value that the heading gives cannot be; null where nothing is wrong. */
  refused: Filled | null;
  /** Columns one of which must hold something; null where the output is the table's only one. */
  own: number[] | null;
  counting: CountingColumns;
  /** True where a quantity may be counted in boxes: a cell was, or a column beside it or the heading may say so. */
  mayHoldBoxes: boolean;
  settled: SettledBy;
  steps: RowStep[];
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
  const template = blankRow(output.sheet);
  let refused: Filled | null = null;
  const order = options.dateOrder ?? orderOfHeads(table);
  for (const [field, text] of Object.entries(output.implied)) {
    const spec = columnOfField(output.sheet, field);
    const value = readCell(text, spec, { asOf: options.asOf, order, mark: ".", headerUnit: "" });
    if (value instanceof Problem) refused = refusedHead(text, value, table, log);
    else template[field] = value;
    if (output.fromHeading?.includes(field) && refused === null) noteHeading(text, spec, table, log);
  }
  const date =
    output.sheet.kind === "runtime_tests" ? output.fields.find(({ spec }) => spec.field === "date") : undefined;
  const counting = countingColumns(table, output);
  const settled = settledBy(table, output);
  return {
    output,
    readers,
    template,
    refused,
    own: table.outputs.filter(({ beside }) => !beside).length === 1 && !output.beside ? null : output.own,
    counting,
    mayHoldBoxes:
      counting.measure !== -1 ||
      counting.boxSize !== -1 ||
      Object.values(template).some((value) => value instanceof Boxes),
    settled,
    steps: rowSteps({ table, output, readers, counting, settled, asOf: options.asOf, log }),
    timeColumn: date?.columns[0] ?? -1,
  };
}

/** The order of day and month of the dates that stand in a table's headers and above it; null where they do not settle it. */
function orderOfHeads({ outputs }: Table): DateOrder | null {
  const dates = outputs.flatMap(({ implied: { date = "", expiry = "", arrives = "" } }) => {
    const written = readDateText(date || expiry || arrives);
    return written?.kind === "ordered" ? [written] : [];
  });
  return orderOfColumn(dates, null).order;
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
  log.add("from-heading", place, () => ({ message }), `${number} ${name}`);
}

/** True where the record says something of the output at all. */
export function speaksOf({ own, output: { sheet, unless } }: RowPlan, record: GridRow): boolean {
  return (own === null || (fillsOne(own, record) && !holdsNone(sheet, own, record))) && !unless?.(record);
}

/** True where a line has none of some dated units, or none on order: it counts 0 of them and says nothing else. */
function holdsNone({ kind }: SheetSpec, own: readonly number[], record: GridRow): boolean {
  return (
    (kind === "on_order" || (own.length > 1 && kind === "dated_stock")) &&
    own.every((column) => /^(0|)$/.test(textAt(record, column)))
  );
}

/** Fills a row's values from a record's cells and its label, noting what is wrong with them. */
export function fillRow(values: RowValues, plan: RowPlan, record: GridRow, table: Table): Filled {
  let { refused } = plan;
  for (let at = 0; at < plan.readers.length; at++) {
    const { spec, columns, read } = plan.readers[at]!;
    const value = read(record);
    if (value === null) continue;
    if (value instanceof Problem)
      refused ??= refusedBy(value, spec, table, columns[0]!, cellAt(record, columns[0]!) ?? null);
    else {
      if (value instanceof Boxes) plan.mayHoldBoxes = true;
      values[spec.field] = value;
    }
  }
  if (refused) return refused;
  let filled = FILLED;
  for (let at = 0; at < plan.steps.length; at++) {
    const came = plan.steps[at]!(values, record);
    if (came === null) continue;
    if (came.code !== null) return came;
    filled = came;
  }
  return filled;
}

/** The time of day beside a test's date, as written; empty where there is none. */
export function timeOf({ timeColumn }: RowPlan, record: GridRow): string {
  const cell = timeColumn === -1 ? null : cellAt(record, timeColumn);
  if (typeof cell !== "string" || cell.length > 80 || !cell.includes(":")) return "";
  const written = readDateText(cellText(cell));
  return written && written.kind !== "bad" ? written.time : "";
}
