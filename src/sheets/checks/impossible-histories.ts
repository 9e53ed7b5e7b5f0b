import { isoFromDay } from "../../calendar/day.ts";
import { nameKey } from "../../fleet/name-key.ts";
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
    const entries = byKind.get(kind) ?? [];
    for (let at = 0; at < entries.length; at++) {
      const { values } = entries[at]!;
      for (let p = 0; p < pairs.length; p++) {
        const pair = pairs[p]!;
        const before = values[pair[0]];
        if (typeof before !== "number") continue;
        const after = values[pair[1]];
        if (typeof after === "number" && before > after) noteOutOfOrder(values, pair, log);
      }
    }
  }
}

function noteOutOfOrder(values: Entry["values"], [early, late]: [string, string], log: FindingLog): void {
  const [before, after] = [early, late].map((field) => isoFromDay(values[field] as number));
  const { file, sheet, line } = values.source;
  const message = `The row is ${WORDS[early]} on ${before} and ${WORDS[late]} on ${after}, which is earlier.`;
  log.add(
    "dates-out-of-order",
    { file, sheet, line, column: null, value: after! },
    () => ({ message }),
    `${early}/${late}`,
  );
}

/**
 * Findings for packs that were tested before they were made or after they were retired, and whose cycle count falls,
 * from one test to the next or from the last test to the packs row.
 */
export function findImpossibleTests(byKind: Kinds, log: FindingLog): void {
  const packs = new Map((byKind.get("packs") ?? []).map(({ values }) => [nameKey(String(values.serial)), values]));
  const bySerial = new Map<string, TestsOfPack>();
  for (const entry of byKind.get("runtime_tests") ?? []) {
    const serial = entry.values.serial as string;
    let tests = bySerial.get(serial);
    if (!tests) {
      tests = testsOfPack(serial, packs, bySerial);
      bySerial.set(serial, tests);
    }
    const date = entry.values.date as number;
    if (date < tests.made) noteImpossible("test-before-made", entry, "before it was made", tests.made, log);
    if (date > tests.retired) noteImpossible("test-after-retired", entry, "after it was retired", tests.retired, log);
    if (entry.values.cycles !== null) tests.counted.push(entry);
  }
  for (const { counted } of new Set(bySerial.values())) noteFalls(counted, log);
  for (const pack of byKind.get("packs") ?? []) {
    noteLowCount(pack, bySerial.get(nameKey(String(pack.values.serial)))?.counted ?? [], log);
  }
}

interface TestsOfPack {
  made: number;
  retired: number;
  counted: Entry[];
}

/** The tests of a pack, shared by every spelling of its serial. */
function testsOfPack(
  serial: string,
  packs: ReadonlyMap<string, Entry["values"]>,
  bySerial: Map<string, TestsOfPack>,
): TestsOfPack {
  const key = nameKey(serial);
  const { made, retired } = packs.get(key) ?? ({} as Partial<Entry["values"]>);
  const tests = bySerial.get(key) ?? {
    made: typeof made === "number" ? made : -Infinity,
    retired: typeof retired === "number" ? retired : Infinity,
    counted: [],
  };
  bySerial.set(key, tests);
  return tests;
}

function noteImpossible(
  code: "test-before-made" | "test-after-retired",
  { values }: Entry,
  when: string,
  day: number,
  log: FindingLog,
): void {
  const { file, sheet, line } = values.source;
  log.add(code, { file, sheet, line, column: null, value: String(values.serial) }, () => ({
    message: `"${values.serial}" was tested on ${isoFromDay(values.date as number)}, ${when} on ${isoFromDay(day)}.`,
  }));
}

/** The count of a packs row against that of the pack's last test before it. */
function noteLowCount({ values }: Entry, inOrder: readonly Entry[], log: FindingLog): void {
  if (typeof values.cycles !== "number") return;
  const on = (values.cyclesOn ?? values.retired) as number | null;
  const before = inOrder.filter((test) => (test.values.date as number) <= (on ?? Infinity)).at(-1)?.values;
  if (before === undefined || values.cycles >= (before.cycles as number)) return;
  const { file, sheet, line } = values.source;
  const when = on === null ? "" : ` on ${isoFromDay(on)}`;
  log.add("cycles-fall", { file, sheet, line, column: null, value: String(values.cycles) }, () => ({
    message: `"${values.serial}" has ${values.cycles} cycles${when} but ${before.cycles} at its test on ${isoFromDay(before.date as number)}.`,
  }));
}

/** By date; of counts on one day, which a sheet may list newest first, the smaller comes first. */
function byDateAndCount({ values: a }: Entry, { values: b }: Entry): number {
  return (a.date as number) - (b.date as number) || (a.cycles as number) - (b.cycles as number);
}

function noteFalls(tests: Entry[], log: FindingLog): void {
  const inOrder = tests.every((test, at) => at === 0 || byDateAndCount(tests[at - 1]!, test) <= 0);
  if (!inOrder) tests.sort(byDateAndCount);
  for (let i = 1; i < tests.length; i++) {
    const before = tests[i - 1]!.values;
    const after = tests[i]!.values;
    if ((after.cycles as number) >= (before.cycles as number)) continue;
    const { file, sheet, line } = after.source;
    log.add("cycles-fall", { file, sheet, line, column: null, value: String(after.cycles) }, () => ({
      message: `"${after.serial}" has ${after.cycles} cycles on ${isoFromDay(after.date as number)} but ${before.cycles} on ${isoFromDay(before.date as number)}.`,
    }));
  }
}
