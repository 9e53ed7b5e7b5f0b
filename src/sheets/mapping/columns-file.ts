import { SHEETS, type SheetKind } from "../../fleet/columns.ts";
import { ROW_THINGS, type RowThing } from "../words/row-thing.ts";
import { andThen, listOf, nullable, objectOf, oneOf, optional, ordinal, text, valuesOf, words } from "./json-shape.ts";

// A library of schemas would take more of the page's size than what reads this one file.
const mappedRows = objectOf({
  kind: oneOf(SHEETS.map(({ kind }) => kind)),
  /** The item's name where no column holds it. */
  item: optional(words),
  /** For each of the sheet's columns, the header that holds it. */
  columns: valuesOf(words),
  /** In a list of all sorts, what a line must be about to be such a row. */
  thing: optional(oneOf(ROW_THINGS)),
});

const columnsFile = objectOf({
  format: oneOf(["wanecast.columns/1"]),
  tables: listOf(
    objectOf({
      file: text,
      sheet: nullable(text),
      table: ordinal,
      rows: listOf(
        andThen<MappedTable["rows"][number]>(mappedRows, ({ kind, columns }) => {
          const wrong = Object.keys(columns).find((name) => specOf(kind, name) === undefined);
          return wrong === undefined ? null : `"${wrong}" is no column of ${kind}`;
        }),
      ),
      unread: listOf(text),
    }),
  ),
});

/** A table of a sheet, and what each of its columns is read as. */
export interface MappedTable {
  file: string;
  sheet: string | null;
  table: number;
  rows: {
    kind: SheetKind;
    item?: string | undefined;
    columns: Record<string, string>;
    thing?: RowThing | undefined;
  }[];
  /** Headers that are not read. */
  unread: string[];
}

/** How the columns of tables are to be read, as a file that people keep and edit. */
export interface ColumnsFile {
  format: "wanecast.columns/1";
  tables: MappedTable[];
}

function specOf(kind: SheetKind, name: string) {
  return SHEETS.find((sheet) => sheet.kind === kind)?.columns.find((column) => column.name === name);
}

/** Reads the text of a columns file; what is wrong with it where it is none. */
export function parseColumnsFile(text: string): { columns: ColumnsFile } | { problem: string } {
  let json: unknown;
  try {
    json = JSON.parse(text.replace(/^\ufeff/, ""));
  } catch (error) {
    return { problem: `The columns file is no JSON: ${error instanceof Error ? error.message : String(error)}.` };
  }
  const problem = columnsFile(json, "");
  if (problem !== null) return { problem: `The columns file cannot be used${problem}.` };
  return { columns: json as ColumnsFile };
}
