import { type Day, isoFromDay } from "../../calendar/day.ts";
import { columnOfField, sheetSpec } from "../../fleet/columns.ts";
import { groupBy } from "../../fleet/group-by.ts";
import { nameKey } from "../../fleet/name-key.ts";
import { FindingLog } from "../finding-log.ts";
import type { GridRow } from "../grid.ts";
import { profileColumn } from "../tables/profile.ts";
import { columnsOf, type FieldSource, type Table } from "../tables/table.ts";
import { meansEmpty, textAt } from "../values/cell-text.ts";
import { isDate } from "../values/date-text.ts";
import { standingOf } from "../values/status-words.ts";
import { parseHeader } from "../words/parse-header.ts";
import { saysCheck } from "../words/says-check.ts";
import { dropEarlierCheck } from "./earlier-check.ts";
import type { Entry, TableState } from "./entry.ts";
import { type FieldReader, fieldReader } from "./field-reader.ts";
import type { ReadOptions } from "./read-options.ts";

/** What may tell one bag or unit of a place from another: a line of another one is no later check. */
const NAMES = /place|site|holder|serial|unit|\bid\b/;

/** The checks of places that a table tells of: the day of the last by what was looked at, and that of each entry. */
export interface Checks {
  /** The column (0-based) of their days. */
  column: number;
  last: Map<string, Day>;
  found: Map<Entry, { place: string; key: string; day: Day }>;
}

/**
 * Of a log with a line for each check of a place, the units that its last check found there, or the word that there are
 * none: what an earlier one found is the same, or was swapped since. A blank says nothing. A list that names its items line
 * by line is none: its lines tell of different units.
 *
 * @param readers  of each of the table's outputs
 * @returns the entries that stand, the others being dropped with a finding, and the checks; null for no log of any
 */
export function lastChecks(
  table: Table,
  readers: readonly (readonly FieldReader[])[],
  entries: Entry[],
  options: ReadOptions,
  log: FindingLog,
): { entries: Entry[]; checks: Checks | null } {
  const column = checkColumn(table);
  if (column === -1) return { entries, checks: null };
  const spec = columnOfField(sheetSpec("runtime_tests"), "date");
  const source: FieldSource = { spec, columns: [column], by: "header", headerUnit: "", part: null, points: 0 };
  const { peek } = fieldReader(table, source, options, new FindingLog());
  const named = table.header.flatMap((name, at) =>
    NAMES.test(parseHeader(name ?? "").says) && !profileColumn(table.rows, at).counts ? at : [],
  );
  const last = new Map<string, Day>();
  const check = (record: GridRow, place: unknown, item: unknown) => {
    const day = peek(record);
    if (typeof place !== "string" || typeof day !== "number") return null;
    const key = nameKey([place, item, ...named.map((at) => textAt(record, at))].join("\0"));
    last.set(key, Math.max(day, last.get(key) ?? day));
    return { day, place, key };
  };
  const found: Checks["found"] = new Map();
  for (const entry of entries) {
    const { item, place } = entry.values;
    const of = entry.sheet.kind === "dated_stock" ? check(table.rows[entry.row]!, place, item) : null;
    if (of !== null) found.set(entry, of);
  }
  table.outputs.forEach((output, at) => {
    const [expiry] = columnsOf(output, "expiry");
    if (output.sheet.kind !== "dated_stock" || expiry === undefined) return;
    const place = readers[at]!.find(({ spec: { field } }) => field === "place");
    for (const record of table.rows)
      if (saysNone(textAt(record, expiry)))
        check(record, place?.peek(record) ?? output.implied.place, output.implied.item);
  });
  const checks = { column, last, found };
  return { entries: withoutEarlier(entries, checks, last, log), checks };
}

/**
 * Of forms that are all filled in from one, each in a file or tab of its own, what the last check of each place found.
 *
 * @param tables  as read by themselves
 */
export function lastFormChecks(tables: readonly CheckedTable[], log: FindingLog): Map<CheckedTable, Entry[]> {
  const forms = tables.filter(({ state, checks }) => checks !== null && state.table.grid.toldFrom !== undefined);
  const kept = new Map<CheckedTable, Entry[]>();
  for (const series of groupBy(forms, ({ state }) => state.table.header.join("\0")).values()) {
    const last = new Map<string, Day>();
    for (const { checks } of series)
      for (const [key, day] of checks!.last) last.set(key, Math.max(day, last.get(key) ?? day));
    for (const form of series) kept.set(form, withoutEarlier(form.entries, form.checks!, last, log));
  }
  return kept;
}

/** A table's entries with its checks. */
interface CheckedTable {
  state: TableState;
  entries: Entry[];
  checks: Checks | null;
}

/** The entries that no later check has made old. */
function withoutEarlier(
  entries: readonly Entry[],
  { column, found }: Checks,
  last: ReadonlyMap<string, Day>,
  log: FindingLog,
): Entry[] {
  return entries.filter((entry) => {
    const check = found.get(entry);
    const latest = check && last.get(check.key)!;
    if (latest === undefined || check?.day === latest) return true;
    const message = `${check!.place} was checked again on ${isoFromDay(latest)}: what was found then counts.`;
    dropEarlierCheck(entry, column + 1, message, log);
    return false;
  });
}

/** True for "none" and "missing" in the place of an expiry, and no bare sign. */
function saysNone(text: string): boolean {
  return /\p{L}/u.test(text) && (meansEmpty(text) || standingOf(text) === "gone");
}

/** The column (0-based) that tells the day of a line's check of a place; -1 where there is none. */
function checkColumn({ header, outputs, rows }: Table): number {
  const isLog = outputs.some(
    (output) =>
      output.sheet.kind === "dated_stock" &&
      output.implied.item !== undefined &&
      (columnsOf(output, "place").length > 0 || output.implied.place !== undefined),
  );
  const others = outputs.filter(({ sheet }) => sheet.kind !== "runtime_tests");
  const read = others.flatMap(({ fields }) => fields.flatMap(({ columns }) => columns));
  return isLog
    ? header.findIndex(
        (name, column) =>
          saysCheck(parseHeader(name ?? "")) &&
          !read.includes(column) &&
          rows.some((row) => isDate(textAt(row, column))),
      )
    : -1;
}
