import { matcherOf, productsIn, type Reading } from "../../src/index.ts";
import { dayText } from "../months.ts";
import { nameKey } from "../name-key.ts";

/** Something that bears the lot, serial or name that was asked for; of a row that was set aside only where it stands is known. */
export interface Trace {
  kind: "pack" | "dated stock" | "on order" | "device" | "set aside";
  item: string | null;
  name: string | null;
  place: string | null;
  /** Where the device stands that is the place, as far as the sheets say. */
  site: string | null;
  quantity: number | null;
  /** Expiry or arrival, `YYYY-MM-DD`. */
  until: string | null;
  file: string;
  sheet: string | null;
  line: number;
}

/**
 * Every row that bears a lot, serial, order number or device, without regard to case and outer blanks; of dated stock
 * and packs also those that lie in a device of that name. What ends in `*` is a beginning; a GTIN is every unit of its
 * items, and a scanned label its lot and serial, of its product only where the catalogue knows it. What is recalled may
 * lie where a row that was set aside says.
 */
export function trace(wanted: string, { fleet, setAside }: Reading, asOf: number): Trace[] {
  if (nameKey(wanted) === "") return [];
  const matcher = matcherOf(wanted, asOf);
  const productOf = productsIn(fleet.catalogue);
  const is = (item: string | null, ...names: (string | null)[]) => {
    const { all, named } = productOf(item)(matcher);
    return all || (named && names.some((name) => name !== null && matcher.match(nameKey(name))));
  };
  const sites = new Map(fleet.devices.map(({ device, site }) => [nameKey(device), site]));
  const siteOf = (device: string | null) => (device === null ? null : (sites.get(nameKey(device)) ?? null));
  const day = (value: number | null) => (value === null ? null : dayText(value));
  const unknown = { item: null, name: null, place: null, site: null, quantity: null, until: null };
  return [
    ...fleet.packs
      .filter((row) => is(row.item, row.serial, row.device))
      .map((row) => ({
        ...unknown,
        ...row.source,
        kind: "pack" as const,
        item: row.item,
        name: row.serial,
        place: row.device ?? row.site,
        site: row.device === null ? null : (row.site ?? siteOf(row.device)),
        quantity: 1,
      })),
    ...fleet.datedStock
      .filter((row) => is(row.item, row.lot, row.serial, row.place))
      .map((row) => ({
        ...unknown,
        ...row.source,
        kind: "dated stock" as const,
        item: row.item,
        name: row.lot ?? row.serial,
        place: row.place,
        site: siteOf(row.place),
        quantity: row.quantity,
        until: day(row.expiry),
      })),
    ...fleet.onOrder
      .filter((row) => is(row.item, row.order))
      .map((row) => ({
        ...unknown,
        ...row.source,
        kind: "on order" as const,
        item: row.item,
        name: row.order,
        place: row.supplier,
        quantity: row.quantity,
        until: day(row.arrives),
      })),
    ...fleet.devices
      .filter((row) => is(null, row.device))
      .map((row) => ({
        ...unknown,
        ...row.source,
        kind: "device" as const,
        item: row.type,
        name: row.device,
        place: row.site,
      })),
    ...setAside
      .filter(({ cells, reason }) => reason !== "repeat" && is(null, ...cells.map(String)))
      .map((row) => ({ ...unknown, ...row, kind: "set aside" as const })),
  ];
}
