import { canonicalRows } from "../../src/sheets/canonical-rows.ts";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import { AS_OF } from "./sheet-file.ts";

/** What is wrong with how any bytes are read; null where no row is lost and nothing else is touched. Throws as reading does. */
export function readingFault(bytes: Uint8Array): string | null {
  const { fleet, inputs, setAside } = readSheets([{ name: "f.csv", bytes }], { asOf: AS_OF, dateOrder: null });
  const lost = inputs.find(({ rows, used, setAside: aside }) => rows !== used + aside);
  if (lost) return `${lost.rows} rows, but ${lost.used} used and ${lost.setAside} set aside`;
  const aside = inputs.reduce((sum, table) => sum + table.setAside, 0);
  if (setAside.length !== aside) return `${setAside.length} rows listed as set aside, ${aside} counted`;
  canonicalRows(fleet);
  return Object.keys(Object.prototype).length === 0 ? null : "the prototype of all objects was changed";
}
