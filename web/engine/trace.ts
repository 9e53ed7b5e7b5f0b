import { matcherOf, type Policy, type Reading, traceIds, withNamedItems } from "../../src/index.ts";
import { dayText } from "../months.ts";
import { nameKey } from "../name-key.ts";

/** Something that bears the lot, serial or name that was asked for; of a row that was set aside only where it stands is known. */
export interface TracedRow {
  kind: "pack" | "retired pack" | "dated stock" | "on order" | "device" | "set aside";
  item: string | null;
  name: string | null;
  place: string | null;
  /** Where the device stands that is the place, as far as the sheets say. */
  site: string | null;
  quantity: number | null;
  /** Expiry, arrival or the end of service, `YYYY-MM-DD`. */
  until: string | null;
  file: string;
  sheet: string | null;
  line: number;
}

/** What it takes to do without the units of an item that bear what was asked for; its day as `YYYY-MM-DD`. */
export type Without = Omit<ReturnType<typeof traceIds>["items"][number], "coveredOn"> & { coveredOn: string | null };

export interface Traced {
  rows: TracedRow[];
  /** Units that have not left the fleet, a battery that stands in two lists once, and the number of their places. */
  units: number;
  places: number;
  without: Without[];
  /** Why a label that is in no row cannot be trusted; null where it is none. */
  wrong: string | null;
}

/**
 * What the engine traces of a lot, serial, GTIN, order number or scanned label, as the program does; besides a device of
 * that name with what lies in it, and rows that were set aside, since what is recalled may lie where they say.
 */
export function trace(wanted: string, { fleet: sheets, setAside }: Reading, policy: Policy): Traced {
  if (nameKey(wanted) === "") return { rows: [], units: 0, places: 0, without: [], wrong: null };
  // the rows that the engine traces
  const fleet = withNamedItems(sheets);
  const traced = traceIds(fleet, policy, [wanted]);
  const { match } = matcherOf(wanted, policy.asOf);
  const isNamed = (name: string | null) => name !== null && match(nameKey(name));
  const sites = new Map(fleet.devices.map(({ device, site }) => [nameKey(device), site]));
  const siteOf = (device: string | null) => (device === null ? null : (sites.get(nameKey(device)) ?? null));
  const day = (value: number | null) => (value === null ? null : dayText(value));
  const unknown = { item: null, name: null, place: null, site: null, quantity: null, until: null };
  const packRow = (row: (typeof fleet.packs)[number]): TracedRow => ({
    ...row.source,
    kind: row.retired !== null && row.retired <= policy.asOf ? "retired pack" : "pack",
    item: row.item,
    name: row.serial,
    place: row.device ?? row.site,
    site: row.device === null ? null : (row.site ?? siteOf(row.device)),
    quantity: 1,
    until: day(row.retired),
  });
  const stockRow = (row: (typeof fleet.datedStock)[number]): TracedRow => ({
    ...row.source,
    kind: "dated stock",
    item: row.item,
    name: row.lot ?? row.serial,
    place: row.place,
    site: siteOf(row.place),
    quantity: row.quantity,
    until: day(row.expiry),
  });
  const stock = new Set(traced.stock.map(({ row }) => row));
  const packs = new Set(traced.packs);
  const within = [
    ...fleet.packs.filter((row) => isNamed(row.device) && !packs.has(row)).map(packRow),
    ...fleet.datedStock.filter((row) => isNamed(row.place) && !stock.has(row)).map(stockRow),
  ];
  const staying = within.filter(({ kind }) => kind !== "retired pack");
  const counts = [...traced.places.map(({ units, packs }) => units + packs), ...staying.map((row) => row.quantity!)];
  return {
    rows: [
      ...[...packs].map(packRow),
      ...[...stock].map(stockRow),
      ...within,
      ...traced.orders.map((row) => ({
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
        .filter(({ device }) => isNamed(device))
        .map((row) => ({
          ...unknown,
          ...row.source,
          kind: "device" as const,
          item: row.type,
          name: row.device,
          place: row.site,
        })),
      ...setAside
        .filter(({ cells, reason }) => reason !== "repeat" && cells.map(String).some(isNamed))
        .map(({ file, sheet, line }) => ({ ...unknown, file, sheet, line, kind: "set aside" as const })),
    ],
    units: counts.reduce((sum, units) => sum + units, 0),
    places: new Set([...traced.places, ...staying].map(({ place }) => nameKey(place!))).size,
    without: traced.items.map((item) => ({ ...item, coveredOn: day(item.coveredOn) })),
    wrong: traced.ids[0]?.wrong ?? null,
  };
}
