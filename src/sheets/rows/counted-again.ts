import { placeText } from "../../fleet/place-text.ts";
import type { FindingLog } from "../finding-log.ts";
import { type Entry, tablesOf } from "./entry.ts";
import { unitKey } from "./unit-key.ts";

/** Findings for a lot that stands at one place in two tables with different quantities: two counts, as of two months' tabs. */
export function noteCountedAgain(entries: readonly Entry[], log: FindingLog): void {
  const [first] = entries;
  if (first?.sheet.kind !== "dated_stock" || tablesOf(entries).length === 1) return;
  const before = new Map<string, Entry>();
  for (const entry of entries) {
    const { lot, place, source } = entry.values;
    if (typeof lot !== "string" || typeof place !== "string") continue;
    const key = unitKey(entry);
    const other = before.get(key);
    if (other === undefined) before.set(key, entry);
    else if (other.state !== entry.state && other.values.quantity !== entry.values.quantity)
      log.add(
        "counted-again",
        { ...source, column: null, value: lot },
        () => ({
          message: `The lot stands at the same place in ${placeText(other.values.source)} with another quantity; both are used.`,
        }),
        entry.sheet.kind,
      );
  }
}
