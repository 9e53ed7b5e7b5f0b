import { nameKey } from "../../fleet/name-key.ts";
import { shortened } from "../../fleet/shortened.ts";
import type { FindingLog } from "../finding-log.ts";
import { differ } from "./differ.ts";
import { Entry } from "./entry.ts";

/**
 * Joins what lists of packs and stock say of their items to the catalogue: one row an item and supplier. An item that
 * stands in a catalogue proper is left as it is there; where two lines say different things of an item, neither counts.
 *
 * @param proper  the rows of the catalogue sheets
 * @param beside  a row a line of the lists
 * @returns the catalogue, the proper rows first
 */
export function withCatalogueBeside(proper: readonly Entry[], beside: readonly Entry[], log: FindingLog): Entry[] {
  const listed = new Set(proper.map(itemOf));
  const byItem = new Map<string, { entry: Entry; doubted: Set<string> }>();
  for (const entry of beside) {
    if (listed.has(itemOf(entry))) continue;
    const key = `${itemOf(entry)}\0${nameKey(String(entry.values.supplier ?? ""))}`;
    const before = byItem.get(key);
    if (before === undefined)
      byItem.set(key, { entry: new Entry(entry.shared, { ...entry.values }, entry.row), doubted: new Set() });
    else join(before, entry, log);
  }
  return [...proper, ...[...byItem.values()].map(({ entry }) => entry)];
}

const itemOf = ({ values }: Entry) => nameKey(String(values.item));

/** Fills the blanks of the row with what a further line says; empties what the two say differently, with a finding. */
function join(
  { entry: { values, sheet }, doubted }: { entry: Entry; doubted: Set<string> },
  further: Entry,
  log: FindingLog,
): void {
  for (const { field, name } of sheet.columns) {
    const [here, there] = [values[field], further.values[field]];
    if (there === null || there === undefined || doubted.has(field)) continue;
    if (here === null) values[field] = there;
    else if (differ(here, there)) {
      doubted.add(field);
      values[field] = null;
      const { file, sheet: tab, line } = further.values.source;
      const message = `The ${name} of "${shortened(String(values.item))}" is ${String(there)} here and ${String(here)} on line ${values.source.line} of ${values.source.file}; neither is used.`;
      log.add(
        "item-facts-differ",
        { file, sheet: tab, line, column: null, value: String(there) },
        () => ({ message }),
        name,
      );
    }
  }
}
