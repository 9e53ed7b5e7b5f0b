import type { Finding, SetAsideRow } from "../fleet/finding.ts";
import type { Fleet } from "../fleet/rows.ts";

/** A file as handed over by the caller: its own name (no path) and its bytes. */
export interface SheetFile {
  name: string;
  bytes: Uint8Array;
  /** True for one of the files of a folder, which may be no sheet; a file named by itself must be one. */
  fromFolder?: boolean;
  /** What a person put right in a workbook. With other corrections the bytes must be another copy. */
  corrections?: CellCorrection[];
}

/** A cell of a workbook that holds something else than its file says. Columns are 1-based, lines the tab's rows. */
export interface CellCorrection {
  sheet: string;
  line: number;
  column: number;
  text: string;
}

/** How one column was read. Columns are 1-based. */
export interface ReadColumn {
  column: number;
  header: string | null;
  group: string | null;
  kind: string | null;
  field: string | null;
  by: "header" | "contents" | "mapping" | null;
  dateOrder: "dmy" | "mdy" | "ymd" | null;
}

/** One table found in a file. rows = used + setAside, always. */
export interface ReadTable {
  file: string;
  sheet: string | null;
  /** 1-based within the file's tab. */
  table: number;
  kinds: string[];
  headerLines: number[];
  rows: number;
  used: number;
  setAside: number;
  readonly sha256: string;
  columns: ReadColumn[];
}

/** A file that could not be read at all. */
export interface RefusedFile {
  file: string;
  code: string;
  message: string;
}

/** Everything that came of reading the inputs. */
export interface Reading {
  fleet: Fleet;
  inputs: ReadTable[];
  findings: Finding[];
  setAside: SetAsideRow[];
  refused: RefusedFile[];
}
