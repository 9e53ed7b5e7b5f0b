import { isoFromDay } from "../../calendar/day.ts";
import { nameKey } from "../../fleet/rows.ts";
import type { FindingLog } from "../finding-log.ts";
import type { Entry } from "../rows/entry.ts";

type Kinds = ReadonlyMap<string, Entry[]>;

/** Dates of a row that come one after the other, by kind. */
const IN_ORDER: Record<string, [string, string][]> = {
  devices: [["inService", "retired"]],
  packs: [
    ["made", "inService"],
    ["made", "retired"],
    ["inService", "retired"],
  ],
  dated_stock: [
    ["made", "expiry"],
    ["made", "opened"],
  ],
};

const WORDS: Record<string, string> = {
  inService: "in service",
  made: "made",
  retired: "retired",
  expiry: "expiring",
  opened: "opened",
};

/** Findings for rows whose own dates come in an order that cannot be. */
export function findDatesOutOfOrder(byKind: Kinds, log: FindingLog): void {
  for (const [kind, pairs] of Object.entries(IN_ORDER)) {
    for (const { values } of byKind.get(kind) ?? []) {
      for (const [early, late] of pairs) {
        const before = values[early];
        const after = values[late];
        if (typeof before !== "number" || typeof after !== "number" || before <= after) continue;
        const { file, sheet, line } = values.source;
        const message = `The row is ${WORDS[early]} on ${isoFromDay(before)} and ${WORDS[late]} on ${isoFromDay(after)}, which is earlier.`;
        log.add(
          "dates-out-of-order",
          { file, sheet, line, column: null, value: isoFromDay(after) },
          () => ({ message }),
          `${early}/${late}`,
        );
      }
    }
  }
}

/** Findings for packs that were tested after they were retired, and whose cycle count falls. */
export function findImpossibleTests(byKind: Kinds, log: FindingLog): void {
  const retired = new Map<string, number>();
  for (const { values } of byKind.get("packs") ?? []) {
    if (typeof values.retired === "number") retired.set(nameKey(String(values.serial)), values.retired);
  }
  const counts = new Map<string, Entry[]>();
  const keys = new Map<string, string>();
  for (const entry of byKind.get("runtime_tests") ?? []) {
    const { values } = entry;
    const serial = keys.get(values.serial as string) ?? nameKey(String(values.serial));
    keys.set(values.serial as string, serial);
    const end = retired.get(serial);
    if (end !== undefined && (values.date as number) > end) {
      const { file, sheet, line } = values.source;
      const words = () => ({
        message: `"${values.serial}" was tested on ${isoFromDay(values.date as number)}, after it was retired on ${isoFromDay(end)}.`,
      });
      log.add("test-after-retired", { file, sheet, line, column: null, value: String(values.serial) }, words);
    }
    if (typeof values.cycles !== "number") continue;
    const list = counts.get(serial);
    if (list) list.push(entry);
    else counts.set(serial, [entry]);
  }
  for (const list of counts.values()) noteFall(list, log);
}

function noteFall(tests: Entry[], log: FindingLog): void {
  tests.sort((a, b) => (a.values.date as number) - (b.values.date as number));
  for (let i = 1; i < tests.length; i++) {
    const [before, after] = [tests[i - 1]!.values, tests[i]!.values];
    if ((after.cycles as number) >= (before.cycles as number)) continue;
    const { file, sheet, line } = after.source;
    const words = () => ({
      message: `"${after.serial}" has ${after.cycles} cycles on ${isoFromDay(after.date as number)} but ${before.cycles} on ${isoFromDay(before.date as number)}.`,
    });
    log.add("cycles-fall", { file, sheet, line, column: null, value: String(after.cycles) }, words);
  }
}
