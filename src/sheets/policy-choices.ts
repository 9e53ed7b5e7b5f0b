import type { PolicyChoice } from "../fleet/resolve-policy.ts";
import { sortBy } from "../maths/sort-by.ts";
import { FindingLog } from "./finding-log.ts";
import type { ColumnsFile } from "./mapping/columns-file.ts";
import { openFile } from "./open-file.ts";
import type { SheetFile } from "./reading.ts";
import { buildEntries } from "./rows/build-entries.ts";
import { withoutRepeats } from "./rows/repeats.ts";

/**
 * The choices of every policy sheet among the files, in the order of their names. They are wanted before
 * anything else is read, since as_of and date_order decide how dates are judged.
 */
export function policyChoicesIn(files: readonly SheetFile[], columns: ColumnsFile | null = null): PolicyChoice[] {
  const entries = sortBy(files, ({ name }) => [name])
    .flatMap((file) => openFile(file, columns).tabs)
    .flatMap(({ tables }) => tables)
    .filter(({ outputs }) => outputs.some(({ sheet }) => sheet.kind === "policy"))
    .flatMap((table) => buildEntries(table, { asOf: 0, dateOrder: null }, new FindingLog()).entries);
  return withoutRepeats(entries, new FindingLog()).map(({ values: { key, value } }) => ({
    key: String(key),
    value: String(value),
  }));
}
