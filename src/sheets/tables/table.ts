import type { ColumnSpec, SheetSpec } from "../../fleet/columns.ts";
import type { Grid, GridRow } from "../grid.ts";

/** One field of an output and the columns (0-based) that hold it; several columns are copies. */
export interface FieldSource {
  spec: ColumnSpec;
  columns: number[];
  by: "header" | "contents" | "mapping";
  /** From the header's unit to the column's own. */
  factor: number;
}

/** One kind of row that each record of a table yields. */
export interface Output {
  sheet: SheetSpec;
  fields: FieldSource[];
  /** Values that the header implies, by field: an unnamed item takes its header group's name. */
  implied: Record<string, string>;
  /** Columns that make this output; the other ones are shared and make no row by themselves. */
  own: number[];
}

/** A row of a table that is not data, with the reason why. */
export type OddRow = "repeated-header" | "total-row" | "section-line" | "note-row";

/** One table: a header and the non-blank records below it. */
export interface Table {
  grid: Grid;
  /** 1-based within the tab. */
  number: number;
  headerLines: number[];
  header: (string | null)[];
  groups: (string | null)[];
  outputs: Output[];
  rows: GridRow[];
  odd: Map<number, OddRow>;
}
