import type { GridRow } from "../grid.ts";
import { meansEmpty, textAt } from "../values/cell-text.ts";
import { vehicleAtSite } from "./vehicle-at-site.ts";

/** Reads a place from a column of sites and one of vehicles; `joined` gathers the vehicles' own names by both. */
export function vehicleReader([site, vehicle]: readonly number[]) {
  const joined = new Map<string, string>();
  const textIn = (record: GridRow, column: number) => {
    const text = textAt(record, column);
    return meansEmpty(text) ? "" : text;
  };
  const read = (record: GridRow) => {
    const own = textIn(record, vehicle!);
    const name = vehicleAtSite(textIn(record, site!), own);
    if (name !== own && own !== "") joined.set(name, own);
    return name === "" ? null : name;
  };
  return { read, joined };
}
