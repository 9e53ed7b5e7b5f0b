import type { ColumnSpec } from "../../fleet/columns.ts";
import { shortened } from "../../fleet/shortened.ts";
import type { FindingLog } from "../finding-log.ts";
import { type Cell, cellAt, type GridRow } from "../grid.ts";
import type { Table } from "../tables/table.ts";
import { cellText } from "../values/cell-text.ts";
import { NothingLeft } from "../values/nothing-left.ts";
import { outOfBounds, type Problem } from "../values/problem.ts";
import { columnName } from "./column-name.ts";
import type { FieldReader } from "./field-reader.ts";
import type { Filled } from "./filled.ts";
import { wrongCell } from "./wrong-cell.ts";

/** Of a column's measurements, the share that leave nothing from which on it holds something else, such as hours. */
const TOO_MANY = 0.5;

/**
 * Settles tests that found hardly anything left. A dead battery is no slip of the pen: such a row is a failed test. Where
 * the row itself says otherwise (it passed, another measure holds a figure, the test was stopped early), or half the
 * column reads so and the row does not say that it failed, the number is as absurd as one out of bounds, and the row is
 * refused. A word for a failed test is heeded always.
 */
export class NothingLeftSettler {
  readonly #measures: readonly FieldReader[];
  readonly #mostlyNothing = new Map<FieldReader, boolean>();

  /** @param readers  of one output of the table */
  constructor(
    readers: readonly FieldReader[],
    readonly table: Table,
    readonly log: FindingLog,
  ) {
    this.#measures = readers.filter(({ spec }) => spec.failsBelow);
  }

  /** @returns why the row cannot be used; null where it can */
  settle(values: Record<string, unknown>, record: GridRow): Filled | null {
    for (const reader of this.#measures)
      if (values[reader.spec.field] instanceof NothingLeft) return this.#settled(reader, values, record);
    return null;
  }

  #settled(reader: FieldReader, values: Record<string, unknown>, record: GridRow): Filled | null {
    const { line } = record;
    const column = reader.columns[0]!;
    const cell = cellAt(record, column) ?? null;
    const inWords = (values[reader.spec.field] as NothingLeft).amount === null;
    const measured = this.#measures.some(({ spec }) => typeof values[spec.field] === "number");
    const otherwise = measured || values.result === "pass" || values.atLeast === true;
    if (!inWords && (otherwise || (values.result !== "fail" && this.#isMostlyNothing(reader)))) {
      const problem = outOfBounds();
      reader.complain(problem, cell, column, line);
      return refusedBy(problem, reader.spec, this.table, column, cell);
    }
    for (const { spec } of this.#measures) if (typeof values[spec.field] !== "number") values[spec.field] = null;
    values.result = "fail";
    const { file, sheet } = this.table.grid;
    const value = cellText(cell);
    this.log.add("nothing-left", { file, sheet, line, column: column + 1, value }, () => ({
      message: `"${shortened(value)}" in column ${columnName(this.table, column)} ${inWords ? "" : "leaves hardly anything: it "}was read as a failed test.`,
    }));
    return null;
  }

  #isMostlyNothing(reader: FieldReader): boolean {
    const known = this.#mostlyNothing.get(reader);
    if (known !== undefined) return known;
    let measured = 0;
    let nothing = 0;
    for (const row of this.table.rows) {
      const value = reader.peek(row);
      if (typeof value === "number") measured++;
      else if (value instanceof NothingLeft) nothing++;
    }
    const mostly = nothing >= TOO_MANY * (nothing + measured);
    this.#mostlyNothing.set(reader, mostly);
    return mostly;
  }
}

/** A row that a cell's problem sets aside. */
export function refusedBy(problem: Problem, spec: ColumnSpec, table: Table, column: number, cell: Cell): Filled {
  return { code: problem.code, message: wrongCell(problem, spec, table, column, cell) };
}
