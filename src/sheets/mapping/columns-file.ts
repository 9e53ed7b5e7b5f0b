import { SHEETS, type SheetKind } from "../../fleet/columns.ts";
import { openFile } from "../open-file.ts";
import type { SheetFile } from "../reading.ts";
import type { Table } from "../tables/table.ts";
import { columnKeys } from "./column-keys.ts";
import { holding, listOf, oneOf, orAbsent, recordOf, type Shape, text, valuesOf, words } from "./shape.ts";

const KINDS = SHEETS.map(({ kind }) => kind);

const mappedRows = recordOf({
  kind: oneOf(...KINDS),
  /** The item's name where no column holds it. */
  item: orAbsent(words),
  /** For each of the sheet's columns, the header that holds it. */
  columns: valuesOf(words),
});

/** Rows whose columns are those of their kind. */
const fittingRows: Shape = (value) => {
  const problem = mappedRows(value);
  if (problem !== null) return problem;
  const { kind, columns } = value as MappedTable["rows"][number];
  const wrong = Object.keys(columns).find((name) => specOf(kind, name) === undefined);
  return wrong === undefined ? null : { at: [], why: `"${wrong}" is no column of ${kind}` };
};

const mappedTable = recordOf({
  file: text,
  sheet: holding((value) => value === null || typeof value === "string", "text or null"),
  table: holding((value) => Number.isInteger(value) && (value as number) >= 1, "a whole number from 1 on"),
  rows: listOf(fittingRows),
  unread: listOf(text),
});

const columnsFile = recordOf({ format: oneOf("wanecast.columns/1"), tables: listOf(mappedTable) });

/** A table of a sheet, and what each of its columns is read as. */
export interface MappedTable {
  file: string;
  sheet: string | null;
  table: number;
  rows: { kind: SheetKind; item?: string | undefined; columns: Record<string, string> }[];
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
export function parseColumnsFile(written: string): { columns: ColumnsFile } | { problem: string } {
  let json: unknown;
  try {
    json = JSON.parse(written.replace(/^\ufeff/, ""));
  } catch (error) {
    return { problem: `The columns file is no JSON: ${error instanceof Error ? error.message : String(error)}.` };
  }
  const problem = columnsFile(json);
  if (problem === null) return { columns: json as ColumnsFile };
  const where = problem.at.length > 0 ? ` at ${problem.at.join(".")}` : "";
  return { problem: `The columns file cannot be used${where}: ${problem.why}.` };
}

/** The columns file that says how the files' tables are read now, for people to correct and use again. */
export function columnsFileOf(files: readonly SheetFile[], columns: ColumnsFile | null = null): ColumnsFile {
  const tables = files
    .flatMap((file) => openFile(file, columns).tabs)
    .flatMap((tab) => tab.tables)
    .map(describe);
  return { format: "wanecast.columns/1", tables };
}

function describe({ grid, number, header, groups, outputs }: Table): MappedTable {
  const keys = columnKeys(header, groups);
  const used = new Set<number>();
  const rows = outputs.map(({ sheet, fields, implied }) => {
    const columns: Record<string, string> = {};
    for (const field of fields) {
      columns[field.spec.name] = keys[field.columns[0]!]!;
      for (const column of field.columns) used.add(column);
    }
    return { kind: sheet.kind, ...(implied.item === undefined ? {} : { item: implied.item }), columns };
  });
  const unread = keys.flatMap((key, column) => (key === null || used.has(column) ? [] : [key]));
  return { file: grid.file, sheet: grid.sheet, table: number, rows, unread };
}
