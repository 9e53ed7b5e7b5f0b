import { sheetSpec } from "../../fleet/columns.ts";
import { nameKey } from "../../fleet/name-key.ts";
import { textsAt } from "../values/cell-text.ts";
import { POINTS } from "../words/meanings.ts";
import { parseHeader } from "../words/parse-header.ts";
import type { FieldSource, Output, Table } from "./table.ts";

/** What a list of packs tells that one of devices tells, too, and the device's field for it. */
const OF_A_DEVICE: Record<string, string> = {
  serial: "device",
  item: "type",
  site: "site",
  inService: "inService",
  retired: "retired",
  temperatureC: "temperatureC",
};
/** The share of serials from which other lists name them as devices. */
const MOSTLY = 0.5;

/**
 * Tables of all files, with lists of serials read as devices where other lists name those as the devices of their packs,
 * tests or supplies: "Serial, Model, Site" alone may be a list of either. One that nothing settles is marked as presumed.
 */
export function withDevicesNamedElsewhere(tables: readonly Table[]): Table[] {
  return tables.map((table) => {
    const [packs] = table.outputs;
    if (table.outputs.length !== 1 || !packs?.fields.every((field) => mayBeOfDevice(field, packs, table))) return table;
    const serials = namesIn(table, packs, /^serial$/);
    const others = tables.filter((other) => other !== table);
    const mostlyIn = (field: RegExp) => {
      const named = new Set(
        others.flatMap((other) => other.outputs.flatMap((output) => namesIn(other, output, field))),
      );
      const known = serials.filter((serial) => named.has(serial)).length;
      return known > 0 && known >= serials.length * MOSTLY;
    };
    if (mostlyIn(/^(device|place)$/)) return { ...table, outputs: [ofDevices(packs)] };
    if (speaksOfBatteries(table, packs) || mostlyIn(/^serial$/)) return table;
    return { ...table, outputs: [{ ...packs, presumed: "packs" }] };
  });
}

/** True where the file, the tab or an item is named after batteries. */
function speaksOfBatteries(table: Table, packs: Output): boolean {
  const { file, sheet } = table.grid;
  return [file, sheet ?? "", ...new Set(namesIn(table, packs, /^item$/))].some((name) =>
    parseHeader(name).things.includes("battery"),
  );
}

function mayBeOfDevice({ spec, by, columns, points }: FieldSource, { sheet }: Output, { header }: Table): boolean {
  return (
    sheet.kind === "packs" &&
    OF_A_DEVICE[spec.field] !== undefined &&
    by !== "mapping" &&
    (spec.field !== "item" || points < POINTS.canonical) &&
    !parseHeader(header[columns[0]!] ?? "").things.includes("battery")
  );
}

/** What stands in the fields of an output that a pattern names. */
function namesIn({ rows }: Table, { fields }: Output, pattern: RegExp): string[] {
  return fields
    .filter(({ spec }) => pattern.test(spec.field))
    .flatMap(({ columns }) => columns.flatMap((column) => textsAt(rows, column).map(nameKey)));
}

function ofDevices({ fields, ...packs }: Output): Output {
  const sheet = sheetSpec("devices");
  const spec = (field: string) => sheet.columns.find((column) => column.field === OF_A_DEVICE[field])!;
  return { ...packs, sheet, fields: fields.map((source) => ({ ...source, spec: spec(source.spec.field) })) };
}
