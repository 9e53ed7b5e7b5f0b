import { placeText } from "../../fleet/place-text.ts";
import { mixed } from "../../maths/mixed.ts";
import type { FindingLog } from "../finding-log.ts";
import { type Entry, tablesOf } from "./entry.ts";

/**
 * Findings for rows without a key that agree in every cell: one thing entered twice, or two of a kind, nobody can tell.
 *
 * @param entries  of one kind
 */
export function noteLikelyCopies(entries: readonly Entry[], log: FindingLog): void {
  const fields = (entries[0]?.sheet.columns ?? []).map(({ field }) => field);
  const read = fieldsRead(entries, fields);
  const digestOf = new Int32Array(entries.length);
  // a hash table of rows by index, open addressed: a Map of as many numbers is several times dearer
  const slots = new Int32Array(1 << Math.ceil(Math.log2(2 * entries.length + 1))).fill(-1);
  for (let row = 0; row < entries.length; row++) {
    const entry = entries[row]!;
    const key = digest(entry, read);
    digestOf[row] = key;
    let slot = key & (slots.length - 1);
    for (let other = slots[slot]!; other !== -1; other = slots[slot]!) {
      if (digestOf[other] === key && agree(entries[other]!, entry, fields)) {
        noteCopy(entries[other]!, entry, log);
        break;
      }
      slot = (slot + 1) & (slots.length - 1);
    }
    if (slots[slot] === -1) slots[slot] = row;
  }
}

function noteCopy(before: Entry, entry: Entry, log: FindingLog): void {
  // Two pads of one device in one line are two, however alike.
  if (before.state === entry.state && before.row === entry.row) return;
  const { file, sheet, line } = entry.values.source;
  log.add(
    "likely-copy",
    { file, sheet, line, column: null, value: null },
    () => ({ message: `The row holds the same as ${placeText(before.values.source)}; both are used.` }),
    entry.sheet.kind,
  );
}

/** The fields that a table of these entries reads, or its labels may give; the others tell no rows apart. */
function fieldsRead(entries: readonly Entry[], fields: readonly string[]): string[] {
  const read = new Set<string>();
  for (const { table } of tablesOf(entries))
    for (const output of table.outputs) for (const { spec } of output.fields) read.add(spec.field);
  return read.has("label") ? [...fields] : fields.filter((field) => read.has(field));
}

/** A number for a row that rows alike have in common, and few others: far cheaper than a text of all its cells. */
function digest({ values, time }: Entry, fields: readonly string[]): number {
  let sum = numberOf(time);
  for (let at = 0; at < fields.length; at++) sum = mixed(sum, numberOf(values[fields[at]!]));
  return sum;
}

function numberOf(value: unknown): number {
  if (typeof value === "number") return value | 0;
  if (typeof value !== "string") return value === null ? 0 : 1;
  let sum = value.length;
  for (let at = 0; at < value.length; at++) sum = mixed(sum, value.charCodeAt(at));
  return sum;
}

function agree(a: Entry, b: Entry, fields: readonly string[]): boolean {
  return a.time === b.time && fields.every((field) => same(a.values[field], b.values[field]));
}

function same(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  return typeof a === "object" && typeof b === "object" && JSON.stringify(a) === JSON.stringify(b);
}
