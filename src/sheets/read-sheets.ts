import { counted } from "../fleet/count-text.ts";
import { listed } from "../fleet/listed.ts";
import { sortBy } from "../maths/sort-by.ts";
import { FindingLog } from "./finding-log.ts";
import type { Grid } from "./grid.ts";
import { type OpenedFile, openFiles } from "./open-file.ts";
import type { Reading, SheetFile } from "./reading.ts";
import { readingOf } from "./reading-of-tables.ts";
import { type BuiltTable, buildEntries } from "./rows/build-entries.ts";
import type { ReadOptions } from "./rows/read-options.ts";
import { isFormLine } from "./tables/form-lines.ts";

/**
 * Reads any mix of sheets into one fleet.
 *
 * Nothing is thrown for what a sheet holds: every record is used or set aside with its reason, and what
 * was found on the way stands in `findings`. Files are read in the order of their names.
 *
 * @param options.asOf       the day after which no test or use can be dated
 * @param options.columns    a columns file that says how columns are to be read; recognised where it is silent
 * @param options.dateOrder  settles date columns that do not settle themselves; null to refuse them
 */
export function readSheets(files: readonly SheetFile[], options: ReadOptions): Reading {
  const log = new FindingLog();
  const built: BuiltTable[] = [];
  const refused: Reading["refused"] = [];
  const ordered = sortBy(files, ({ name }) => [name]);
  for (const [at, opened] of openFiles(ordered, options.columns ?? null).entries()) {
    const file = ordered[at]!;
    if (opened.refused) refused.push(opened.refused);
    noteEmptyFile(file, opened, log);
    for (const { tables } of opened.tabs) for (const table of tables) built.push(buildEntries(table, options, log));
  }
  return { ...readingOf(built, options.asOf, log), refused };
}

function noteEmptyFile(file: SheetFile, { tabs, refused, passedOver }: OpenedFile, log: FindingLog): void {
  if (refused) return;
  const place = { file: file.name, sheet: null, line: null, column: null, value: null };
  if (passedOver !== null) {
    log.add("no-table", place, () => ({ message: "The file is no sheet and was passed over." }));
    return;
  }
  if (tabs.every(({ grid }) => grid.rows.every(({ cells }) => cells.every((cell) => cell === null || cell === "")))) {
    log.add("empty-file", place, () => ({ message: "The file holds nothing." }));
    return;
  }
  for (const { grid, tables } of tabs) {
    noteHidden(grid, log);
    noteToldAsList(grid, log);
    noteOpenQuotes(grid, log);
    if (tables.length > 0) continue;
    const lines = grid.rows.filter(
      (row) => row.cells.filter((cell) => cell !== null && cell !== "").length > 1 || isFormLine(row),
    ).length;
    const whole = grid.sheet === null ? "the file" : `tab "${grid.sheet}"`;
    log.add("no-table", { ...place, sheet: grid.sheet }, () => ({
      message: `No row of ${whole} names columns that are known here${lines > 1 ? `; none of its ${lines} lines was read` : ""}.`,
      severity: lines > 1 ? "warning" : "info",
    }));
  }
}

function noteOpenQuotes({ file, sheet, openQuotes }: Grid, log: FindingLog): void {
  for (const line of openQuotes) {
    log.add("quote-open", { file, sheet, line, column: null, value: null }, () => ({
      message: "A quote opens in the line and never closes, so the line was read as it stands.",
    }));
  }
}

function noteToldAsList({ file, sheet, toldFrom }: Grid, log: FindingLog): void {
  if (!toldFrom) return;
  log.add("told-as-list", { file, sheet, line: null, column: null, value: null }, () => ({
    message: `The names stand left of their values, and the sheet was read as a list below its names. ${toldFrom.where}`,
  }));
}

function noteHidden({ file, sheet, hidden }: Grid, log: FindingLog): void {
  const parts = [
    hidden.tab ? "the tab itself" : "",
    hidden.rows > 0 ? counted(hidden.rows, "row") : "",
    hidden.columns > 0 ? counted(hidden.columns, "column") : "",
  ].filter((part) => part !== "");
  if (parts.length === 0) return;
  log.add("hidden-read", { file, sheet, line: null, column: null, value: null }, () => ({
    message: `Tab "${sheet}" hides ${listed(parts)}; what is hidden was read too.`,
  }));
}
