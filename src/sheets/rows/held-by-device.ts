import { nameKey } from "../../fleet/name-key.ts";
import { shortened } from "../../fleet/shortened.ts";
import type { FindingLog } from "../finding-log.ts";
import type { GridRow } from "../grid.ts";
import type { Table } from "../tables/table.ts";
import type { Entry } from "./entry.ts";

/** Places where things lie on a shelf, whatever devices are kept beside them. */
const IS_STORE = /stor(e|age)|stock|lager|maga[sz]|depo|almac|armaz|reserv|spare|forrad|voorraad|suppl|pharma/i;
const NOWHERE = "";

/**
 * Says which device holds the batteries and supplies of a list that gives places only: the one device of the place, or,
 * where a place has several and each stands right above what belongs to it, the one above. Elsewhere what a place holds
 * stays there, and a finding says so: it then counts as stock that any device may take.
 */
export function holdByDevices({ grid, rows, number }: Table, entries: readonly Entry[], log: FindingLog): void {
  for (const [place, { devices, parts }] of byPlace(entries)) {
    if (devices.length === 0 || parts.length === 0 || IS_STORE.test(place)) continue;
    const single = devices.length === 1;
    const open = !single && !standUnderDevices(devices, parts);
    const where = place === NOWHERE ? "no site" : `"${shortened(placeOf(parts[0] as Entry))}"`;
    const words = () => ({ message: `What is at ${where} and names no device ${takenFor(devices, open)}.` });
    for (const part of parts) {
      const holder = single ? devices[0] : devices.filter(({ row }) => row < part.row).at(-1);
      if (!open && holder) part.values[heldIn(part)] = holder.values.device;
      const { line } = rows[part.row] as GridRow;
      const at = { file: grid.file, sheet: grid.sheet, line, column: null, value: null };
      log.add("holder-presumed", at, words, `${number} ${single} ${open}`);
    }
  }
}

function takenFor(devices: readonly Entry[], open: boolean): string {
  if (open) return `counts as stock there, since any of ${devices.length} devices may hold it`;
  if (devices.length > 1) return "was taken to be in the device above it";
  return `was taken to be in the one device there, "${shortened(String((devices[0] as Entry).values.device))}"`;
}

/** The devices of each place, and what else stands there without naming a device. */
function byPlace(entries: readonly Entry[]): Map<string, { devices: Entry[]; parts: Entry[] }> {
  const named = new Set(
    entries.flatMap(({ sheet, values }) => (sheet.kind === "devices" ? nameKey(String(values.device)) : [])),
  );
  const found = new Map<string, { devices: Entry[]; parts: Entry[] }>();
  for (const entry of entries) {
    const isDevice = entry.sheet.kind === "devices";
    const holder = isDevice ? null : entry.values[heldIn(entry)];
    if (typeof holder === "string" && (entry.sheet.kind === "packs" || named.has(nameKey(holder)))) continue;
    const key = nameKey(placeOf(entry));
    const here = found.get(key) ?? { devices: [], parts: [] };
    found.set(key, here);
    (isDevice ? here.devices : here.parts).push(entry);
  }
  return found;
}

function heldIn({ sheet }: Entry): "device" | "place" {
  return sheet.kind === "packs" ? "device" : "place";
}

function placeOf({ sheet, values }: Entry): string {
  return String((sheet.kind === "dated_stock" ? values.place : values.site) ?? NOWHERE);
}

/** True where every device of a place stands right above parts of its own, and nothing else comes between. */
function standUnderDevices(devices: readonly Entry[], parts: readonly Entry[]): boolean {
  const isPart = new Set(parts.map(({ row }) => row));
  const all = [...isPart, ...devices.map(({ row }) => row)].sort((a, b) => a - b);
  const together = all.every((row, at) => at === 0 || row - all[at - 1]! <= 1);
  return together && !isPart.has(all[0]!) && devices.every(({ row }) => isPart.has(row + 1));
}
