import { sheetSpec } from "../../fleet/columns.ts";
import { counted } from "../../fleet/count-text.ts";
import { nameKey } from "../../fleet/name-key.ts";
import type { FindingLog } from "../finding-log.ts";
import { blankRow } from "./blank-row.ts";
import type { Entry } from "./entry.ts";

/**
 * A pack for each serial that was tested, where no sheet lists packs: a log of tests alone still tells which fade. Each
 * comes from the line of its first test, with nothing known of it but its serial, and its device where it goes by that
 * one's name.
 */
export function packsOfTests(tests: readonly Entry[], devices: readonly Entry[], log: FindingLog): Entry[] {
  const sheet = sheetSpec("packs");
  const listed = new Set(devices.map(({ values }) => nameKey(String(values.device))));
  const packs = new Map<string, Entry>();
  let last: unknown = null;
  for (const { values: test, state, row } of tests) {
    // rows of one pack mostly stand together
    if (test.serial === last) continue;
    last = test.serial;
    const key = nameKey(String(test.serial));
    if (packs.has(key)) continue;
    const device = listed.has(key) ? test.serial : null;
    const values = { ...blankRow(sheet), serial: test.serial, device, source: test.source };
    packs.set(key, state.entryOf(sheet, values, "", row, null));
  }
  const [first] = tests;
  if (first) {
    const { file, sheet: tab } = first.values.source;
    log.add("packs-of-tests", { file, sheet: tab, line: null, column: null, value: null }, () => ({
      message: `No sheet lists packs, so what was tested, ${counted(packs.size, "serial")}, is taken for packs in service.`,
    }));
  }
  return [...packs.values()];
}
