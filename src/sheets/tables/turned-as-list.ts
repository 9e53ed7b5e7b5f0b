import type { GridRow } from "../grid.ts";
import { parseHeader } from "../words/parse-header.ts";
import { columnViews } from "./column-views.ts";
import { filledIn } from "./filled-in.ts";
import { labelIn, mostlyNames, oneRowHeader } from "./header-rows.ts";
import { interpret } from "./interpret.ts";
import type { ListInside } from "./list-inside.ts";

/** Names beyond which a sheet is not turned to look at it, and the fewest that make a record. */
const MOST_NAMES = 40;
const FEWEST_NAMES = 3;

/** A sheet with its names in the first column and each record in a column of its own; null for any other. */
export function turnedAsList(rows: readonly GridRow[]): ListInside | null {
  if (rows.length > MOST_NAMES) return null;
  // the names of the records may stand above them, with nothing above the names of the columns
  const from = rows.findIndex(({ cells }) => filledIn(cells).length > 1);
  const fields = rows.slice(Math.max(0, from));
  const names = fields.map(({ cells }) => labelIn(cells[0]));
  // of values below each other the second has no name of its own
  if (new Set(names).size < names.length || names.includes(null, 1)) return null;
  if (filledIn(names).length < FEWEST_NAMES || !mostlyNames(names)) return null;
  const width = Math.max(...fields.map(({ cells }) => cells.length));
  const records = Array.from({ length: width - 1 }, (_, at) => ({
    line: at + 2,
    cells: fields.map(({ cells }) => cells[at + 1] ?? null),
  })).filter(({ cells }) => filledIn(cells).length > 0);
  if (records.length === 0) return null;
  if (headsDevices(names, records)) names[0] = "Device";
  const header = { line: 1, cells: names };
  if (interpret(columnViews(oneRowHeader(header), records), null).best === null) return null;
  const where = "What is told as its line 2 is column B, line 3 column C, and so on.";
  return { rows: [header, ...records], name: "turned", where };
}

/** True where the first row holds the names of devices, one for each record, and no other row does. */
function headsDevices([first, ...others]: readonly (string | null)[], records: readonly GridRow[]): boolean {
  if (first != null && parseHeader(first).coverage > 0) return false;
  const said = others.map((name) => parseHeader(name ?? ""));
  if (said.some(({ things, says }) => things + says === "device" || (things === "" && /^(name|id)$/.test(says))))
    return false;
  const titles = records.map(({ cells }) => parseHeader(String(cells[0])).things);
  // above one record, or beside serial numbers, which may be of anything, only words for a device name one
  const mayBeAny = records.length > 1 && said.every(({ says }) => says !== "serial");
  return titles.every((things) => things === "device" || (things === "" && mayBeAny));
}
