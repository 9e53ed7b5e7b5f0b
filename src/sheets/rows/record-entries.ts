import type { FindingLog } from "../finding-log.ts";
import type { GridRow } from "../grid.ts";
import { columnsOf, type Table } from "../tables/table.ts";
import { TextRow } from "../text/text-row.ts";
import type { RowThing } from "../words/row-thing.ts";
import { countsTogether, partCount } from "./counted-together.ts";
import type { Entry, TableState } from "./entry.ts";
import { fillRow, type RowPlan, speaksOf, timeOf } from "./fill-row.ts";
import { listedEntries } from "./listed-rows.ts";
import { type LotColumns, type LotRow, lotsOfRecord } from "./lots-in-a-cell.ts";
import { rateTests } from "./rated-tests.ts";
import type { SortedLines } from "./sorted-lines.ts";

/** How one output of a table reads a record. */
export interface RecordPlan {
  plan: RowPlan;
  /** Columns whose cells hold more than their heads say; null where none does. */
  lots: LotColumns | null;
  /** The field that says where its thing is, where the line above a section may name that. */
  where: string | null;
}

/** Turns a table's records into entries, one after the other. */
export class RecordEntries {
  readonly entries: Entry[] = [];
  /** What records say of their items besides. */
  readonly beside: Entry[] = [];
  /** The place that the line above a section names, where one does. */
  place: string | null = null;
  private readonly together: number;

  constructor(
    private readonly table: Table,
    private readonly plans: readonly RecordPlan[],
    private readonly state: TableState,
    private readonly lines: SortedLines,
    private readonly log: FindingLog,
  ) {
    this.together = countsTogether(table.outputs);
  }

  /** @param thing  what the record is about, where a column says so line by line; undefined where none does */
  add(record: GridRow, row: number, thing: RowThing | undefined): void {
    const { entries, plans, table, state, together, log } = this;
    const before = entries.length;
    for (const by of plans) {
      const { plan, lots } = by;
      if ((plan.output.thing ?? thing) !== thing || !speaksOf(plan, record)) continue;
      const first = entries.length;
      const parts = lots ? lotsOfRecord(record, lots) : [record as LotRow];
      for (const part of parts) this.addPart(part, { record, row, thing, by, before });
      if (parts.length === 1 || parts.some((part) => part.count !== undefined)) continue;
      const [count] = columnsOf(plan.output, "quantity");
      if (count !== undefined) partCount(entries.slice(first), table, count, log);
    }
    if (together !== -1 && entries.length > before + 1) partCount(entries.slice(before), table, together, log);
    if (state.live[row] === 0) state.never(row, "missing-required", "No cell of a known column holds anything.");
  }

  /** Adds what one output makes of a record, or of one of the lots in it. */
  private addPart(part: LotRow, { record, row, thing, by, before }: Spoken): void {
    const { entries, table, state, log } = this;
    const { plan } = by;
    const { output } = plan;
    const values = this.valuesOf(record, thing, by);
    if (output.lists !== undefined) {
      entries.push(...listedEntries(values, plan, record, row, state, log));
      return;
    }
    if (output.rates) {
      rateTests(entries, before, plan, record, log);
      return;
    }
    const isBeside = output.beside === true;
    // what a line says of its item counts only where the line itself does
    if (isBeside && state.live[row] === 0) return;
    const filled = fillRow(values, plan, part, table);
    if (filled.code !== null) {
      if (!isBeside) state.never(row, filled.code, filled.message);
      return;
    }
    if (!isBeside) state.live[row]!++;
    if (part.count !== undefined) values.quantity = part.count;
    const entry = state.entryOf(output.sheet, values, timeOf(plan, record), row, filled.product);
    (isBeside ? this.beside : entries).push(entry);
  }

  /** The values of an entry before its cells are read: what a record's heading and place in the sheet say. */
  private valuesOf(record: GridRow, thing: RowThing | undefined, { plan, where }: RecordPlan): Entry["values"] {
    const { file, sheet } = this.table.grid;
    const values = { ...plan.template } as Entry["values"];
    if (thing !== undefined) this.lines.nameBy(values, plan.output, record);
    if (this.place !== null && where) values[where] = this.place;
    values.source = record instanceof TextRow ? record : { file, sheet, line: record.line };
    return values;
  }
}

/** A record of which an output speaks. */
interface Spoken {
  record: GridRow;
  row: number;
  thing: RowThing | undefined;
  by: RecordPlan;
  /** How many entries there were before the record. */
  before: number;
}
