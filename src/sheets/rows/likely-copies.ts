import type { FindingLog } from "../finding-log.ts";
import type { Entry } from "./entry.ts";

/**
 * Findings for rows without a key that agree in every cell: one thing entered twice, or two of a kind, nobody can tell.
 *
 * @param entries  of one kind
 * @param where  how the place of a row is told
 */
export function noteLikelyCopies(entries: readonly Entry[], where: (entry: Entry) => string, log: FindingLog): void {
  const fields = (entries[0]?.sheet.columns ?? []).map(({ field }) => field);
  const digest = digests(fields);
  const seen = new Map<number, Entry | Entry[]>();
  for (const entry of entries) {
    const key = digest(entry);
    const found = seen.get(key);
    if (found === undefined) {
      seen.set(key, entry);
      continue;
    }
    const alike = Array.isArray(found) ? found : [found];
    const before = alike.find((other) => agree(other, entry, fields));
    if (before === undefined) {
      seen.set(key, [...alike, entry]);
      continue;
    }
    // Two pads of one device in one line are two, however alike.
    if (before.state === entry.state && before.row === entry.row) continue;
    const { file, sheet, line } = entry.values.source;
    log.add(
      "likely-copy",
      { file, sheet, line, column: null, value: null },
      () => ({ message: `The row holds the same as ${where(before)}; both are used.` }),
      entry.sheet.kind,
    );
  }
}

/** A number for each row that rows alike have in common, and few others: far cheaper than a text of all its cells. */
function digests(fields: readonly string[]): (entry: Entry) => number {
  const numbers = new Map<string, number>();
  const numberOf = (value: unknown) => {
    if (typeof value === "number") return value | 0;
    if (typeof value !== "string") return value === null ? 0 : 1;
    let number = numbers.get(value);
    if (number === undefined) {
      number = numbers.size + 2;
      numbers.set(value, number);
    }
    return number;
  };
  return ({ values, time }) => {
    let sum = time === "" ? 0 : numberOf(time);
    // a multiplier of 32-bit hashes, from Knuth, The Art of Computer Programming, vol. 3, sec. 6.4 (from memory)
    for (const field of fields) sum = Math.imul(sum ^ numberOf(values[field]), 2654435761) ^ (sum >>> 15);
    return sum;
  };
}

function agree(a: Entry, b: Entry, fields: readonly string[]): boolean {
  return a.time === b.time && fields.every((field) => same(a.values[field], b.values[field]));
}

function same(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  return typeof a === "object" && typeof b === "object" && JSON.stringify(a) === JSON.stringify(b);
}
