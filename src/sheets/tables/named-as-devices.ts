import { columnOfField, sheetSpec } from "../../fleet/columns.ts";
import { nameKey } from "../../fleet/name-key.ts";
import { textsAt } from "../values/cell-text.ts";
import { POINTS } from "../words/meanings.ts";
import { parseHeader } from "../words/parse-header.ts";
import { columnsOf, type FieldSource, type Output, type Table } from "./table.ts";

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
  const open = new Set(tables.filter(mayListDevices));
  if (open.size === 0) return [...tables];
  const asDevices = timesNamed(tables, "device", "place");
  const asSerials = timesNamed(tables, "serial");
  return tables.map((table) => {
    if (!open.has(table)) return table;
    const packs = table.outputs[0]!;
    const serials = namesIn(table, packs, "serial");
    const mostly = (named: (serial: string) => boolean) => {
      const known = serials.filter(named).length;
      return known > 0 && known >= serials.length * MOSTLY;
    };
    if (mostly((serial) => asDevices.has(serial))) return { ...table, outputs: [ofDevices(packs)] };
    if (speaksOfBatteries(table, packs) || mostly((serial) => asSerials.get(serial)! > 1)) return table;
    return { ...table, outputs: [{ ...packs, presumed: "packs" }] };
  });
}

/** True where the file, the tab or an item is named after batteries. */
function speaksOfBatteries(table: Table, packs: Output): boolean {
  const { file, sheet } = table.grid;
  return [file, sheet ?? "", ...new Set(namesIn(table, packs, "item"))].some((name) =>
    parseHeader(name).things.includes("battery"),
  );
}

function mayListDevices({ outputs, header }: Table): boolean {
  const [packs, ...others] = outputs;
  return (
    packs?.sheet.kind === "packs" && others.length === 0 && packs.fields.every((field) => mayBeOfDevice(field, header))
  );
}

function mayBeOfDevice({ spec, by, columns, points }: FieldSource, header: Table["header"]): boolean {
  return (
    OF_A_DEVICE[spec.field] !== undefined &&
    by !== "mapping" &&
    (spec.field !== "item" || points < POINTS.canonical) &&
    !parseHeader(header[columns[0]!] ?? "").things.includes("battery")
  );
}

/** In how many tables each name stands in fields. */
function timesNamed(tables: readonly Table[], ...fields: string[]): Map<string, number> {
  const times = new Map<string, number>();
  for (const table of tables) {
    const names = new Set(table.outputs.flatMap((output) => namesIn(table, output, ...fields)));
    for (const name of names) times.set(name, (times.get(name) ?? 0) + 1);
  }
  return times;
}

/** The keys of what stands in fields of an output. */
function namesIn({ rows }: Table, output: Output, ...fields: string[]): string[] {
  const columns = fields.flatMap((field) => columnsOf(output, field));
  return columns.flatMap((column) => textsAt(rows, column).map(nameKey));
}

function ofDevices({ fields, ...packs }: Output): Output {
  const sheet = sheetSpec("devices");
  const spec = (field: string) => columnOfField(sheet, OF_A_DEVICE[field]!);
  return { ...packs, sheet, fields: fields.map((source) => ({ ...source, spec: spec(source.spec.field) })) };
}
