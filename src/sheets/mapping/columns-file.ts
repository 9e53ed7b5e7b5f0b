import * as z from "zod/mini";
import english from "zod/v4/locales/en.js";
import { SHEETS, type SheetKind } from "../../fleet/columns.ts";
import { ROW_THINGS, type RowThing } from "../words/row-thing.ts";

const KINDS = SHEETS.map(({ kind }) => kind) as [SheetKind, ...SheetKind[]];

// the small build of zod brings no words of its own
z.config(english());

const words = z.string().check(z.minLength(1));

const mappedRows = z
  .strictObject({
    kind: z.enum(KINDS),
    /** The item's name where no column holds it. */
    item: z.optional(words),
    /** For each of the sheet's columns, the header that holds it. */
    columns: z.record(z.string(), words),
    /** In a list of all sorts, what a line must be about to be such a row. */
    thing: z.optional(z.enum(ROW_THINGS)),
  })
  .check(
    z.refine(({ kind, columns }) => Object.keys(columns).every((name) => specOf(kind, name) !== undefined), {
      error: ({ input }) => {
        const { kind, columns } = input as { kind: SheetKind; columns: Record<string, string> };
        const wrong = Object.keys(columns).find((name) => specOf(kind, name) === undefined);
        return `"${wrong}" is no column of ${kind}`;
      },
    }),
  );

const mappedTable = z.strictObject({
  file: z.string(),
  sheet: z.nullable(z.string()),
  table: z.int().check(z.gte(1)),
  rows: z.array(mappedRows),
  unread: z.array(z.string()),
});

const columnsFile = z.strictObject({ format: z.literal("wanecast.columns/1"), tables: z.array(mappedTable) });

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
  const { format } = Object(json) as { format?: unknown };
  if (/^wanecast\.(?!columns\/)[a-z]+\/\d+$/.test(String(format)))
    return { problem: `This is no columns file (wanecast.columns/1) but ${format}: hand over the sheets themselves.` };
  const read = columnsFile.safeParse(json);
  if (read.success) return { columns: read.data };
  const [issue] = read.error.issues;
  const where = issue?.path.length ? ` at ${issue.path.join(".")}` : "";
  return { problem: `The columns file cannot be used${where}: ${issue?.message ?? "not understood"}.` };
}
