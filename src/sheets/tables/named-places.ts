import type { SheetKind } from "../../fleet/columns.ts";
import { tabName } from "../grid.ts";
import { parseHeader } from "../words/parse-header.ts";
import { DATED_THINGS } from "../words/vocabulary.ts";
import type { Output, Table } from "./table.ts";

/** The column of each sheet that says where a row's thing is. */
const WHERE: Partial<Record<SheetKind, string>> = {
  devices: "site",
  packs: "site",
  dated_stock: "place",
  use_log: "place",
};

/** The field of an output that says where its thing is, as far as no column and no header holds it; null otherwise. */
export function openPlace({ sheet, fields, implied, fromHeading = [] }: Output): string | null {
  const where = WHERE[sheet.kind];
  const told = fields.some(({ spec }) => spec.field === "place" || spec.field === "site");
  return where === undefined || told || (implied[where] !== undefined && !fromHeading.includes(where)) ? null : where;
}

/** True for a text that names a station, store, vehicle or the like, and no supplies. */
export function namesPlace(text: string): boolean {
  const { says, things } = parseHeader(text);
  return (
    /^(place|site|unit|name place|name site)( (site|unit))*$/.test(says) &&
    !things.split(" ").some((thing) => DATED_THINGS.has(thing))
  );
}

/** An output whose rows are all at a place that a header names. */
export function placedAt(output: Output, where: string, place: string): Output {
  const fromHeading = [...(output.fromHeading ?? []), where];
  return { ...output, implied: { ...output.implied, [where]: place }, fromHeading };
}

/** The tables of a workbook with a tab for each station: where no column says the place, the tab's name does. */
export function withTabPlaces(tables: readonly Table[]): Table[] {
  const tabs = new Set(tables.map(({ grid }) => tabName(grid) ?? ""));
  const places = [...tabs].filter(namesPlace);
  if (places.length < 2) return [...tables];
  return tables.map((table) => {
    const name = tabName(table.grid) ?? "";
    if (!places.includes(name)) return table;
    const outputs = table.outputs.map((output) => {
      const where = openPlace(output);
      // a title stands closer to the rows than the tab's name
      return where === null || output.implied[where] !== undefined ? output : placedAt(output, where, name);
    });
    return { ...table, outputs };
  });
}
