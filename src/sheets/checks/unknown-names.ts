import { nameKey } from "../../fleet/name-key.ts";
import { shortened } from "../../fleet/shortened.ts";
import type { FindingLog } from "../finding-log.ts";
import type { Entry } from "../rows/entry.ts";
import { nearName } from "./near-name.ts";

type Kinds = ReadonlyMap<string, Entry[]>;

/** Findings for names that the sheet which should list them does not: packs of tests, devices of packs, items. */
export function findUnknownNames(byKind: Kinds, log: FindingLog): void {
  check(byKind, "runtime_tests", "serial", "packs", log);
  check(byKind, "packs", "device", "devices", log);
  for (const kind of ["packs", "dated_stock", "use_log", "on_order", "routine"]) {
    check(byKind, kind, "item", "catalogue", log);
  }
}

/** Findings for names in a field of one kind of rows that no row of the listing kind has in the same field. */
function check(
  byKind: Kinds,
  kind: string,
  field: "serial" | "device" | "item",
  listKind: string,
  log: FindingLog,
): void {
  const list = byKind.get(listKind) ?? [];
  if (list.length === 0) return;
  const known = new Map(list.map(({ values }) => [nameKey(String(values[field])), String(values[field])]));
  const judged = new Map<string, boolean>();
  const entries = byKind.get(kind) ?? [];
  // rows of one name mostly stand together
  let lastKnown: unknown = null;
  for (let at = 0; at < entries.length; at++) {
    const { values } = entries[at]!;
    const name = values[field];
    if (typeof name !== "string" || name === lastKnown) continue;
    let isKnown = judged.get(name);
    if (isKnown === undefined) {
      isKnown = known.has(nameKey(name));
      judged.set(name, isKnown);
    }
    if (isKnown) {
      lastKnown = name;
      continue;
    }
    const { file, sheet, line } = values.source;
    log.add(
      `${field}-unknown`,
      { file, sheet, line, column: null, value: name },
      () => words(name, field, listKind, known),
      nameKey(name),
    );
  }
}

function words(
  name: string,
  field: string,
  listKind: string,
  known: ReadonlyMap<string, string>,
): { message: string; fix?: string } {
  const near = nearName(nameKey(name), known.keys());
  const message = `The ${field} "${shortened(name)}" is not listed in ${listKind}.`;
  return near === null
    ? { message }
    : { message, fix: `Write "${known.get(near)}" if that was meant, or list "${shortened(name)}" in ${listKind}.` };
}
