import type { Reading } from "../../../src/sheets/reading.ts";
import type { About } from "./headings.ts";

/** What of a made-up sheet's columns is read otherwise than their headings mean, and which rows are set aside, in words. */
export function misreadColumns(columns: readonly About[], headings: readonly string[], reading: Reading): string[] {
  const [table] = reading.inputs;
  const wrong = columns.flatMap((about, at) => {
    const fields = (table?.columns ?? []).flatMap(({ column, kind, field }) =>
      column === at + 1 && kind !== null ? [`${kind}.${field}`] : [],
    );
    const lacks = fields.length === 0 && about.fields.length > 0 && about.spare !== true;
    return lacks || fields.some((field) => !about.fields.includes(field))
      ? [`${headings[at]} is read as ${fields.join(", ") || "nothing"}`]
      : [];
  });
  const aside = reading.setAside.map(({ line, message }) => `line ${line} is set aside: ${message}`);
  return [...wrong, ...aside];
}
