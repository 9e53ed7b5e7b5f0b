/** How much a finding matters: `error` = a row or cell is not used; `warning` = used, look; `info` = for the record. */
export type Severity = "info" | "warning" | "error";

/**
 * Something found in a sheet, as data. `line` is the line a spreadsheet shows (header = 1), null where the
 * finding is about a column or file; `lines` lists further lines that share it; `column` is 1-based.
 */
export interface Finding {
  code: string;
  severity: Severity;
  file: string | null;
  sheet: string | null;
  line: number | null;
  lines: number[];
  column: number | null;
  value: string | null;
  /** What was found and what was expected, ending with a full stop. */
  message: string;
  /** What to do, ending with a full stop. */
  fix: string;
}

/** One row that was not used, as it stood. `cells` holds text, numbers or null per column. */
export interface SetAsideRow {
  file: string;
  sheet: string | null;
  line: number;
  reason: string;
  message: string;
  cells: (string | number | boolean | null)[];
}
