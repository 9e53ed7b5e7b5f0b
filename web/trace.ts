import type { Reading } from "../src/index.ts";
import { dayText } from "./months.ts";
import { nameKey } from "./pack-readings.ts";

/** Something that bears the lot, serial or name that was asked for. */
export interface Trace {
  kind: "pack" | "dated stock" | "on order" | "device";
  item: string | null;
  name: string | null;
  place: string | null;
  /** Where the device stands that is the place, as far as the sheets say. */
  site: string | null;
  quantity: number | null;
  /** Expiry or arrival, `YYYY-MM-DD`. */
  until: string | null;
  file: string;
  line: number;
}

/**
 * Every row that bears a lot, serial, order number or device, without regard to case and outer blanks; of dated stock
 * and packs also those that lie in a device of that name.
 */
export function trace(wanted: string, { fleet }: Reading): Trace[] {
  const key = nameKey(wanted);
  if (key === "") return [];
  const is = (...names: (string | null)[]) => names.some((name) => name !== null && nameKey(name) === key);
  const sites = new Map(fleet.devices.map(({ device, site }) => [nameKey(device), site]));
  const siteOf = (device: string | null) => (device === null ? null : (sites.get(nameKey(device)) ?? null));
  const day = (value: number | null) => (value === null ? null : dayText(value));
  return [
    ...fleet.packs
      .filter((row) => is(row.serial, row.device))
      .map((row) => ({
        kind: "pack" as const,
        item: row.item,
        name: row.serial,
        place: row.device ?? row.site,
        site: row.device === null ? null : (row.site ?? siteOf(row.device)),
        quantity: 1,
        until: null,
        file: row.source.file,
        line: row.source.line,
      })),
    ...fleet.datedStock
      .filter((row) => is(row.lot, row.serial, row.place))
      .map((row) => ({
        kind: "dated stock" as const,
        item: row.item,
        name: row.lot ?? row.serial,
        place: row.place,
        site: siteOf(row.place),
        quantity: row.quantity,
        until: day(row.expiry),
        file: row.source.file,
        line: row.source.line,
      })),
    ...fleet.onOrder
      .filter((row) => is(row.order))
      .map((row) => ({
        kind: "on order" as const,
        item: row.item,
        name: row.order,
        place: row.supplier,
        site: null,
        quantity: row.quantity,
        until: day(row.arrives),
        file: row.source.file,
        line: row.source.line,
      })),
    ...fleet.devices
      .filter((row) => is(row.device))
      .map((row) => ({
        kind: "device" as const,
        item: row.type,
        name: row.device,
        place: row.site,
        site: null,
        quantity: null,
        until: null,
        file: row.source.file,
        line: row.source.line,
      })),
  ];
}
