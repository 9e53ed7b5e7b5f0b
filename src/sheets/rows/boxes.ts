import { counted } from "../../fleet/count-text.ts";
import { nameKey } from "../../fleet/name-key.ts";
import type { FindingLog } from "../finding-log.ts";
import { Boxes } from "../values/read-cell.ts";
import type { Entry } from "./entry.ts";

/** Turns quantities written in boxes into units by the catalogue's units_per_box; without it the row is set aside. */
export function resolveBoxes(byKind: Map<string, Entry[]>, log: FindingLog): void {
  let sizes: Map<string, number | null> | null = null;
  for (const [kind, entries] of byKind) {
    const fields = (entries[0]?.sheet.columns ?? []).filter(({ unit }) => unit === "units").map(({ field }) => field);
    if (!holdsBoxes(entries, fields)) continue;
    const kept = entries.filter((entry) => {
      for (const field of fields) {
        const value = entry.values[field];
        if (!(value instanceof Boxes)) continue;
        sizes ??= boxSizes(byKind.get("catalogue") ?? []);
        const own = entry.values.unitsPerBox;
        const size = typeof own === "number" ? own : sizes.get(nameKey(String(entry.values.item ?? "")));
        if (!size) {
          refuse(entry, field, value.count, log);
          return false;
        }
        entry.values[field] = value.ofSize(size);
      }
      return true;
    });
    byKind.set(kind, kept);
  }
}

function holdsBoxes(entries: readonly Entry[], fields: readonly string[]): boolean {
  for (let at = 0; at < entries.length; at++) {
    const { values } = entries[at]!;
    for (let f = 0; f < fields.length; f++) if (values[fields[f]!] instanceof Boxes) return true;
  }
  return false;
}

/** Units per box by item; null where two suppliers' boxes differ. */
function boxSizes(catalogue: readonly Entry[]): Map<string, number | null> {
  const sizes = new Map<string, number | null>();
  for (const { values } of catalogue) {
    if (typeof values.unitsPerBox !== "number") continue;
    const item = nameKey(String(values.item));
    const before = sizes.get(item);
    sizes.set(item, before === undefined || before === values.unitsPerBox ? values.unitsPerBox : null);
  }
  return sizes;
}

function refuse(entry: Entry, field: string, count: number, log: FindingLog): void {
  const { file, sheet, line } = entry.values.source;
  const message = `${counted(count, "box", "boxes")} of "${entry.values.item}" cannot be counted in units: the catalogue gives no single units_per_box for it.`;
  log.add("boxes-unknown", { file, sheet, line, column: null, value: String(count) }, () => ({ message }), field);
  entry.state.drop(entry.row, "boxes-unknown", message);
}
