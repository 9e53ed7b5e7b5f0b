import { isoFromDay } from "../../calendar/day.ts";
import type { ColumnSpec } from "../../fleet/columns.ts";
import { placeText } from "../../fleet/place-text.ts";
import { shortened } from "../../fleet/shortened.ts";
import type { FindingLog } from "../finding-log.ts";
import { headerKey } from "../tables/header-at.ts";
import { Gone } from "../values/status-words.ts";
import { noteCountedAgain } from "./counted-again.ts";
import { DaysOfNames } from "./days-of-names.ts";
import { differ, folded } from "./differ.ts";
import type { Entry } from "./entry.ts";
import { noteLikelyCopies } from "./likely-copies.ts";
import { policyChoice } from "./policy-value.ts";

/**
 * Takes repeats and clashes out of the entries of one kind and returns those that stay.
 *
 * Entries of one key that contradict each other are all dropped, and those of a pack that is gone since nobody knows when,
 * whatever another list has. Where none does, the fullest stays, its
 * blanks filled by the others; those that add nothing are dropped as repeats.
 */
export function withoutRepeats(entries: Entry[], log: FindingLog): Entry[] {
  const sheet = entries[0]?.sheet;
  if (!sheet) return [];
  // "Service level", "95 %" says what service_level, 0.95 does
  if (sheet.kind === "policy")
    for (const { values } of entries) Object.assign(values, policyChoice(String(values.key), String(values.value)));
  if (entries.every((entry) => lacksKey(entry))) {
    noteLoose(entries, log);
    return entries;
  }
  const byKey = new Map<string, Entry | Entry[]>();
  const byDay = new DaysOfNames();
  const nameAndDay = sheet.key.length === 2 ? (sheet.key as [string, string]) : null;
  const loose: Entry[] = [];
  for (const entry of entries) {
    if (nameAndDay && entry.time === "") {
      const name = entry.values[nameAndDay[0]];
      const day = entry.values[nameAndDay[1]];
      if (typeof name === "string" && typeof day === "number") {
        byDay.add(name, day, entry);
        continue;
      }
    }
    const key = keyOf(entry);
    if (key === null) {
      loose.push(entry);
      continue;
    }
    const before = byKey.get(key);
    if (before === undefined) byKey.set(key, entry);
    else if (Array.isArray(before)) before.push(entry);
    else byKey.set(key, [before, entry]);
  }
  noteLoose(loose, log);
  const gone = new Set<Entry>();
  for (const group of byDay.groups()) settleGroup(group, gone, log);
  for (const group of byKey.values()) {
    if (Array.isArray(group) || group.values.retired instanceof Gone) settleGroup([group].flat(), gone, log);
    const timed = [group].flat().find((entry) => !gone.has(entry));
    if (!nameAndDay || !timed?.time) continue;
    // a sheet without times of day may tell of the same
    const [name, day] = nameAndDay.map((field) => timed.values[field]) as [string, number];
    const untimed = byDay.of(name, day).find((one) => !gone.has(one) && clashIn([timed, one]) === null);
    if (untimed !== undefined) settleGroup([timed, untimed], gone, log);
  }
  return gone.size === 0 ? entries : entries.filter((entry) => !gone.has(entry));
}

/** Findings for entries without a key, of which none is ever dropped. */
function noteLoose(entries: readonly Entry[], log: FindingLog): void {
  noteLikelyCopies(entries, log);
  noteCountedAgain(entries, log);
}

/** The entry's key; null where it has none. */
function keyOf(entry: Entry): string | null {
  if (lacksKey(entry)) return null;
  const { sheet, values, time } = entry;
  let key = time;
  for (const field of sheet.key) {
    const value = values[field];
    key += `\0${typeof value === "string" ? folded(value) : value}`;
  }
  return key;
}

function lacksKey({ sheet: { key, keyMayLack }, values }: Entry): boolean {
  for (let at = 0; at < key.length; at++) if (values[key[at]!] === null && !keyMayLack.includes(key[at]!)) return true;
  return key.length === 0;
}

function settleGroup(group: readonly Entry[], gone: Set<Entry>, log: FindingLog): void {
  // how long a pack served that is gone since nobody knows when cannot be told, and as one in service it would be planned for
  const retired = group.map(({ values }) => values.retired);
  const at = retired.findIndex((said) => said instanceof Gone && said.since === null);
  if (at !== -1 && !retired.some((said) => typeof said === "number")) {
    const { text } = retired[at] as Gone;
    const message = `"${shortened(text)}" in ${placeText(group[at]!.values.source)} says that it is gone, and nothing tells since when.`;
    for (const entry of group) drop(entry, "gone-undated", message, gone, log);
    return;
  }
  const clashing = clashIn(group);
  const name = keyName(group[0]!);
  if (clashing) {
    const { field, name: column } = clashing;
    const told = group.filter(({ values }) => values[field] !== null);
    for (const entry of group) {
      const here = entry.values[field];
      const other = told.find(({ values }) => here === null || differ(values[field], here)) as Entry;
      const [one, two] = [here, other.values[field]].map((value) => shownAs(value, clashing));
      const message = `${name} stands in ${group.length} rows that contradict each other in ${column}: ${one} here, ${two} in ${placeText(other.values.source)}.`;
      drop(entry, "clash", message, gone, log);
    }
    return;
  }
  const byFullness = [...group].sort((a, b) => filled(b) - filled(a));
  const [kept, ...others] = byFullness as [Entry, ...Entry[]];
  for (const entry of others) {
    let added = false;
    for (const { field } of entry.sheet.columns) {
      const [here, there] = [kept.values[field], entry.values[field]];
      if (there !== null && (here === null || (here instanceof Gone && typeof there === "number"))) {
        kept.values[field] = there;
        added = true;
      }
    }
    if (added) {
      gone.add(entry);
      const { file, sheet, line } = entry.values.source;
      const message = `${name} stands here and in ${placeText(kept.values.source)}; each fills blanks of the other, so they are read as one.`;
      log.add("merged", { file, sheet, line, column: null, value: null }, () => ({ message }), entry.sheet.kind);
    }
    if (!added && entry.state.live[entry.row]! > 1 && mayBeTwo(entry, kept))
      tell(
        entry,
        "device-again",
        `${name} stands here and in ${placeText(kept.values.source)}, and was taken for one.`,
        log,
      );
    if (!added) drop(entry, "repeat", `${name} adds nothing to ${placeText(kept.values.source)}.`, gone, log);
  }
}

function drop(
  entry: Entry,
  code: "clash" | "repeat" | "gone-undated",
  message: string,
  gone: Set<Entry>,
  log: FindingLog,
): void {
  gone.add(entry);
  entry.state.drop(entry.row, code, message);
  // A wide row that repeats its device still says something of its packs and pads.
  if (code === "repeat" && entry.state.live[entry.row]! > 0) return;
  tell(entry, code, message, log);
}

function tell(
  entry: Entry,
  code: "clash" | "repeat" | "gone-undated" | "device-again",
  message: string,
  log: FindingLog,
): void {
  const { file, sheet, line } = entry.values.source;
  const key = entry.values[entry.sheet.key[0]!];
  log.add(code, { file, sheet, line, column: null, value: String(key) }, () => ({ message }), entry.sheet.kind);
}

/** True for a device that lists alike name, which say of neither where it is: one in each of two places may be called so. */
function mayBeTwo({ sheet, values, state }: Entry, other: Entry): boolean {
  return (
    sheet.kind === "devices" &&
    values.site === null &&
    state !== other.state &&
    headerKey(state.table) === headerKey(other.state.table)
  );
}

/** The first field in which two of the rows hold different values. */
function clashIn(group: readonly Entry[]): ColumnSpec | null {
  for (const column of group[0]!.sheet.columns) {
    const { field } = column;
    let first: unknown = null;
    for (const { values } of group) {
      const value = values[field];
      if (value === null) continue;
      if (first === null) first = value;
      else if (differ(first, value)) return column;
    }
  }
  return null;
}

function filled({ values, sheet }: Entry): number {
  return sheet.columns.filter(({ field }) => values[field] !== null).length;
}

function keyName({ sheet, values }: Entry): string {
  const words = sheet.columns
    .filter(({ field }) => sheet.key.includes(field) && values[field] !== null)
    .map(({ field, type }) => (type === "date" ? isoFromDay(values[field] as number) : shown(values[field])));
  return `${sheet.kind.replaceAll("_", " ")}: ${words.join(", ")}`;
}

function shown(value: unknown): string {
  if (typeof value === "string") return `"${shortened(value)}"`;
  return shortened(Array.isArray(value) ? JSON.stringify(value) : String(value));
}

function shownAs(value: unknown, { type }: ColumnSpec): string {
  return type === "date" && typeof value === "number" ? isoFromDay(value) : value === null ? "nothing" : shown(value);
}
