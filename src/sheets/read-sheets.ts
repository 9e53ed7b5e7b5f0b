import { emptyFleet, type Fleet } from "../fleet/rows.ts";
import { findDatesOutOfOrder, findImpossibleTests } from "./checks/impossible-histories.ts";
import { dropOverRated } from "./checks/over-rated.ts";
import { findUnknownNames } from "./checks/unknown-names.ts";
import { FindingLog } from "./finding-log.ts";
import type { Grid } from "./grid.ts";
import { nameProducts } from "./labels/name-products.ts";
import { type OpenedFile, openFile } from "./open-file.ts";
import type { Reading, ReadTable, SheetFile } from "./reading.ts";
import { resolveBoxes } from "./rows/boxes.ts";
import { type BuiltTable, buildEntries } from "./rows/build-entries.ts";
import type { Entry } from "./rows/entry.ts";
import type { ReadOptions } from "./rows/field-reader.ts";
import { fleetRow } from "./rows/fleet-row.ts";
import { withoutRepeats } from "./rows/repeats.ts";
import { describeTable, setAsideRows } from "./rows/table-report.ts";

/**
 * Reads any mix of sheets into one fleet.
 *
 * Nothing is thrown for what a sheet holds: every record is used or set aside with its reason, and what
 * was found on the way stands in `findings`. Files are read in the order of their names.
 *
 * @param options.asOf       the day after which no test or use can be dated
 * @param options.dateOrder  settles date columns that do not settle themselves; null to refuse them
 */
export function readSheets(files: readonly SheetFile[], options: ReadOptions): Reading {
  const log = new FindingLog();
  const built: BuiltTable[] = [];
  const refused: Reading["refused"] = [];
  for (const file of inOrder(files)) {
    const opened = openFile(file);
    if (opened.refused) refused.push(opened.refused);
    noteEmptyFile(file, opened, log);
    for (const { tables } of opened.tabs) for (const table of tables) built.push(buildEntries(table, options, log));
  }
  const kept = keptEntries(built, log);
  const fleet = fleetOf(kept);
  const inputs: ReadTable[] = built.map((each) => describeTable(each));
  return { fleet, inputs, findings: log.all(), setAside: built.flatMap(({ state }) => setAsideRows(state)), refused };
}

function inOrder(files: readonly SheetFile[]): SheetFile[] {
  return [...files].sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
}

function noteEmptyFile(file: SheetFile, { tabs, refused, passedOver }: OpenedFile, log: FindingLog): void {
  if (refused) return;
  if (passedOver !== null) {
    log.add("no-table", { file: file.name, sheet: null, line: null, column: null, value: null }, () => ({
      message: "The file is no sheet and was passed over.",
    }));
    return;
  }
  const place = { file: file.name, sheet: null, line: null, column: null, value: null };
  if (tabs.every(({ grid }) => grid.rows.every(({ cells }) => cells.every((cell) => cell === null || cell === "")))) {
    log.add("empty-file", place, () => ({ message: "The file holds nothing." }));
    return;
  }
  for (const { grid, tables } of tabs) {
    noteHidden(grid, log);
    if (tables.length > 0) continue;
    log.add("no-table", { ...place, sheet: grid.sheet }, () => ({
      message: `No row of ${grid.sheet === null ? "the file" : `tab "${grid.sheet}"`} names columns that are known here.`,
    }));
  }
}

function noteHidden({ file, sheet, hidden }: Grid, log: FindingLog): void {
  const parts = [
    hidden.tab ? "the tab itself" : "",
    hidden.rows > 0 ? `${hidden.rows} rows` : "",
    hidden.columns > 0 ? `${hidden.columns} columns` : "",
  ].filter((part) => part !== "");
  if (parts.length === 0) return;
  log.add("hidden-read", { file, sheet, line: null, column: null, value: null }, () => ({
    message: `Tab "${sheet}" hides ${parts.join(", ")}; what is hidden was read too.`,
  }));
}

/** The entries that stay once boxes, labels, repeats and ratings are settled across all sheets. */
function keptEntries(built: readonly BuiltTable[], log: FindingLog): Entry[] {
  const byKind = new Map<string, Entry[]>();
  for (const { entries } of built) {
    for (const entry of entries) {
      const list = byKind.get(entry.sheet.kind);
      if (list) list.push(entry);
      else byKind.set(entry.sheet.kind, [entry]);
    }
  }
  nameProducts(byKind);
  resolveBoxes(byKind, log);
  for (const [kind, entries] of byKind) byKind.set(kind, withoutRepeats(entries, log));
  if (byKind.has("runtime_tests")) byKind.set("runtime_tests", dropOverRated(byKind, log));
  findUnknownNames(byKind, log);
  findDatesOutOfOrder(byKind, log);
  findImpossibleTests(byKind, log);
  return [...byKind.values()].flat();
}

function fleetOf(entries: readonly Entry[]): Fleet {
  const fleet = emptyFleet();
  for (const { sheet, values } of entries) (fleet[sheet.list] as unknown[]).push(fleetRow(sheet.kind, values));
  return fleet;
}
