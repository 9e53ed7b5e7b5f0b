import type { SheetSpec } from "../../fleet/columns.ts";
import { shortened } from "../../fleet/shortened.ts";
import type { FindingLog } from "../finding-log.ts";
import type { GridRow } from "../grid.ts";
import type { Output, Table } from "../tables/table.ts";
import { meansEmpty, textAt } from "../values/cell-text.ts";
import { ROW_THINGS, type RowThing, thingOfRow } from "../words/row-thing.ts";
import { columnName } from "./column-name.ts";
import type { TableState } from "./entry.ts";

/** The column of a sheet that the word which sorts a line fills, until another names the thing better. */
export function namedBySort({ kind }: SheetSpec): string {
  return kind === "devices" ? "type" : "item";
}

/** What each line of a list of all sorts is about, and how many of each there were. */
export class SortedLines {
  readonly #counts = new Map<RowThing, number>();

  constructor(
    readonly table: Table,
    readonly state: TableState,
    readonly log: FindingLog,
  ) {}

  /** What a line is about: undefined where the table is no such list; null where nothing known, and the line is then set aside. */
  thingOf(record: GridRow, row: number): RowThing | null | undefined {
    const { grid, thingColumns } = this.table;
    const [column] = thingColumns;
    if (column === undefined) return undefined;
    const thing = thingOfRow(thingColumns, record);
    if (thing !== null) {
      this.#counts.set(thing, (this.#counts.get(thing) ?? 0) + 1);
      return thing;
    }
    const text = this.#word(record);
    const name = columnName(this.table, column);
    const message =
      text === ""
        ? `Nothing stands in column ${name}.`
        : `"${shortened(text)}" in column ${name} is no device, battery or supplies known here.`;
    this.state.never(row, "thing-unknown", message);
    this.log.add(
      "thing-unknown",
      { file: grid.file, sheet: grid.sheet, line: record.line, column: column + 1, value: text },
      () => ({
        message,
      }),
      text.toLowerCase(),
    );
    return null;
  }

  /** Names a row by the word that sorts its line, until a column names it better. */
  nameBy(values: Record<string, unknown>, { sheet }: Output, record: GridRow): void {
    values[namedBySort(sheet)] = this.#word(record) || null;
  }

  #word(record: GridRow): string {
    const texts = this.table.thingColumns.map((column) => textAt(record, column));
    return texts.find((text) => !meansEmpty(text)) ?? "";
  }

  /** A finding that says how the lines were sorted. */
  note(): void {
    const [column] = this.table.thingColumns;
    if (column === undefined) return;
    const { grid, headerLines, header, number } = this.table;
    const said = ROW_THINGS.map((thing) => `${this.#counts.get(thing) ?? 0} × ${thing}`).join(", ");
    const place = {
      file: grid.file,
      sheet: grid.sheet,
      line: headerLines[0] ?? null,
      column: column + 1,
      value: header[column] ?? null,
    };
    const message = `Each line was read as what column ${columnName(this.table, column)} says it is: ${said}.`;
    this.log.add("things-by-row", place, () => ({ message }), String(number));
  }
}
