import type { ColumnSpec, SheetSpec } from "../../fleet/columns.ts";
import type { Grid, GridRow } from "../grid.ts";
import type { CellPart } from "../values/lot-and-date.ts";
import { POINTS } from "../words/meanings.ts";
import type { RowThing } from "../words/row-thing.ts";

/** One field of an output and the columns (0-based) that hold it; several columns are copies. */
export interface FieldSource {
  spec: ColumnSpec;
  columns: number[];
  by: "header" | "contents" | "mapping";
  /** The unit that the header names, lower case; empty where none. */
  headerUnit: string;
  /** The part of the column's cells that is meant; null for all of it. */
  part: CellPart | null;
  /** Set where its two columns are no copies but a site and a vehicle of it, which make one place. */
  joins?: true;
  /** Set where its days are those since when things stand as their status says: of what is gone alone they are the last. */
  ifGone?: boolean;
  /** How surely the column was recognised; 0 for one shared with other rows. */
  points: number;
  /** Columns of dates that only a number tells apart from it: one order of day and month holds for all. */
  alike?: number[];
}

/** One kind of row that each record of a table yields. */
export interface Output {
  sheet: SheetSpec;
  fields: FieldSource[];
  /** Values that the header implies, by field, as written: an unnamed item takes its header group's name. */
  implied: Record<string, string>;
  /** The implied fields that were taken from above the table or from its tab's name. */
  fromHeading?: string[];
  /** Columns that make this output; the other ones are shared and make no row by themselves. */
  own: number[];
  /** Set where the rows say of an item what its catalogue would, once a line of a list of other things. */
  beside?: true;
  /** Set where the rows rate the tests of their line, which name no item that a catalogue could rate. */
  rates?: true;
  /** The column (0-based) whose cells list what a line yields, a row for each of a cell's parts. */
  lists?: number;
  /** The word for pads in that column's header, which its cells may leave out; empty where there is none. */
  listsPads?: string;
  /** What its numbers or serials were taken for, its readings' days or its packs' names, though nothing says so. */
  presumed?: "uses" | "moves" | "mid-year" | "named-by-device" | "packs";
  /** In a list of all sorts, what a line must be about to yield this; left out where every line may. */
  thing?: RowThing;
  /** True for the cells of a line that yields something else instead. */
  unless?: (record: GridRow) => boolean;
}

/** A row of a table that is not data, with the reason why. */
export type OddRow = "repeated-header" | "total-row" | "section-line" | "note-row";

/** Why a table of known words cannot be read, and what to do. */
export interface Unclear {
  message: string;
  fix: string;
}

/** One table: a header and the non-blank records below it. */
export interface Table {
  grid: Grid;
  /** 1-based within the tab. */
  number: number;
  headerLines: number[];
  header: (string | null)[];
  groups: (string | null)[];
  outputs: Output[];
  /** In a list of all sorts, the columns (0-based) whose words say of each line what it is about; empty in any other. */
  thingColumns: number[];
  rows: GridRow[];
  odd: Map<number, OddRow>;
  /** The records of all tables of the tab under the same header, written alike; left out where there is no other. */
  alike?: readonly GridRow[];
  /** Two readings of the header that are as good as each other; it is then refused. */
  tied: string[] | null;
  /** What the table is where this program wrote it itself; nothing is then read from it. */
  ownOutput: string | null;
  /** What must be told before the table can be read; null where nothing is open. */
  unclear: Unclear | null;
  /** Columns, by name, that count devices and name none. */
  counted: string[];
  /** The column (0-based) whose blanks were filled with what stands above them; left out where none was. */
  carried?: number;
  /** What no longer fits the mapping that was given for it. */
  changes: string[];
}

/** Types of columns whose cells are numbers. */
export const NUMERIC: ReadonlySet<string> = new Set(["number", "whole", "percent", "share", "money"]);

/** True for a column of dates or numbers. */
export function isTyped({ type }: ColumnSpec): boolean {
  return type === "date" || NUMERIC.has(type);
}

/** True where every column goes by its canonical name: nothing else can be meant. */
export function isCanonical(outputs: readonly Output[]): boolean {
  return outputs.every(({ fields }) => fields.every(({ points }) => points >= POINTS.canonical));
}

/** The columns (0-based) that hold a field of an output; none where it does not stand there. */
export function columnsOf({ fields }: Output, field: string): readonly number[] {
  return fields.find(({ spec }) => spec.field === field)?.columns ?? [];
}
