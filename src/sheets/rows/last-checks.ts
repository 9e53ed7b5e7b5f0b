import { type Day, isoFromDay } from "../../calendar/day.ts";
import { columnOfField, sheetSpec } from "../../fleet/columns.ts";
import { nameKey } from "../../fleet/name-key.ts";
import { FindingLog } from "../finding-log.ts";
import type { GridRow } from "../grid.ts";
import { columnsOf, type FieldSource, type Table } from "../tables/table.ts";
import { meansEmpty, textAt } from "../values/cell-text.ts";
import { isDate } from "../values/date-text.ts";
import { standingOf } from "../values/status-words.ts";
import { parseHeader } from "../words/parse-header.ts";
import { saysCheck } from "../words/says-check.ts";
import { dropEarlierCheck } from "./earlier-check.ts";
import type { Entry } from "./entry.ts";
import { type FieldReader, fieldReader } from "./field-reader.ts";
import type { ReadOptions } from "./read-options.ts";

/** What may tell one bag or unit of a place from another: a line of another one is no later check. */
const NAMES = /place|site|holder|serial|unit|\bid\b/;

/**
 * Of a log with a line for each check of a place, the units that its last check found there, or the word that there are
 * none: what an earlier one found is the same, or was swapped since. A blank says nothing. A list that names its items line
 * by line is none: its lines tell of different units.
 *
 * @param readers  of each of the table's outputs
 * @returns the entries that stand; the others are dropped, with a finding
 */
export function lastChecks(
  table: Table,
  readers: readonly (readonly FieldReader[])[],
  entries: Entry[],
  options: ReadOptions,
  log: FindingLog,
): Entry[] {
  const column = checkColumn(table);
  if (column === -1) return entries;
  const spec = columnOfField(sheetSpec("runtime_tests"), "date");
  const source: FieldSource = { spec, columns: [column], by: "header", headerUnit: "", part: null, points: 0 };
  const { peek } = fieldReader(table, source, options, new FindingLog());
  const named = table.header.flatMap((name, at) => (NAMES.test(parseHeader(name ?? "").says) ? at : []));
  const last = new Map<string, Day>();
  const check = (record: GridRow, place: unknown, item: unknown) => {
    const day = peek(record);
    if (typeof place !== "string" || typeof day !== "number") return null;
    const key = nameKey([place, item, ...named.map((at) => textAt(record, at))].join("\0"));
    last.set(key, Math.max(day, last.get(key) ?? day));
    return { day, place, key };
  };
  const found = entries.flatMap((entry) => {
    const { item, place } = entry.values;
    const of = entry.sheet.kind === "dated_stock" ? check(table.rows[entry.row]!, place, item) : null;
    return of === null ? [] : { entry, ...of };
  });
  table.outputs.forEach((output, at) => {
    const [expiry] = columnsOf(output, "expiry");
    if (output.sheet.kind !== "dated_stock" || expiry === undefined) return;
    const place = readers[at]!.find(({ spec: { field } }) => field === "place");
    for (const record of table.rows)
      if (saysNone(textAt(record, expiry)))
        check(record, place?.peek(record) ?? output.implied.place, output.implied.item);
  });
  const dropped = new Set<Entry>();
  for (const { entry, day, place, key } of found) {
    const latest = last.get(key)!;
    if (day === latest) continue;
    const message = `${place} was checked again on ${isoFromDay(latest)}: what was found then counts.`;
    dropEarlierCheck(entry, column + 1, message, log);
    dropped.add(entry);
  }
  return entries.filter((entry) => !dropped.has(entry));
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
