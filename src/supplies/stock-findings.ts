import { isoFromDay } from "../calendar/day.ts";
import { counted } from "../fleet/count-text.ts";
import type { Finding } from "../fleet/finding.ts";
import { firstTold } from "../fleet/first-told.ts";
import { groupBy } from "../fleet/group-by.ts";
import type { Item } from "../fleet/item-book.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Policy } from "../fleet/policy.ts";
import type { DatedStockRow, Fleet, Source } from "../fleet/rows.ts";
import { STOCK_FINDING_CODES, type StockFindingCode } from "./finding-codes.ts";
import type { ItemPlaces, Needing } from "./item-places.ts";
import { hasLeft } from "./items-touched.ts";
import type { StockUnits } from "./stock-units.ts";
import { countsUntil } from "./unit-life.ts";

/** Names listed in one finding. */
const NAMES_SHOWN = 5;

/** Findings about stock and use that do not fit the fleet: counts, places, lacking items, bulk issues. */
export function stockFindings(fleet: Fleet, needing: Needing, policy: Policy): Finding[] {
  return [
    ...needing.items.flatMap((ofItem) => {
      const { item } = ofItem;
      return [
        ...findOtherThanCarried(ofItem, fleet, needing, policy),
        ...findDevicesWithout(ofItem),
        ...findBulkIssues(item, needing),
      ];
    }),
    ...findStockAtRetiredDevices(fleet, needing, policy),
    ...findPlacesUnknown(fleet, needing, policy),
  ];
}

/** Devices that hold more units than the catalogue says they carry (of packs, one that came out may be listed still), or fewer. */
function findOtherThanCarried(
  { item, stock, units, held: { over, under } }: ItemPlaces,
  { packs }: Fleet,
  { book, takes }: Needing,
  policy: Policy,
): Finding[] {
  const odd = [...over, ...under];
  // a catalogue that is wrong is wrong of every device: what they hold is looked up once for all
  if (odd.length === 0) return [];
  const rows = groupBy(rowsOf(units, stock), ({ place }) => nameKey(place ?? ""));
  const ofItem = packs.filter((pack) => book.find(pack.item!).key === item.key && !hasLeft(pack, policy));
  const packsAt = groupBy(ofItem, (pack) => nameKey(pack.device ?? ""));
  return odd.map(({ key, device: { device } }) => {
    const held = takes.holds(key, item);
    const carries = item.perDevice!;
    const message = `${device} holds ${counted(held, "unit")} of ${item.name}, but a device carries ${carries}.`;
    const here = [...(rows.get(key) ?? []), ...(packsAt.get(key) ?? [])];
    return finding(held > carries ? "more-than-carried" : "fewer-than-carried", here, String(held), message);
  });
}

/** Devices that take an item and have none, where most of their like have it or where their packs have left. */
function findDevicesWithout({ item, held: { without, byLike } }: ItemPlaces): Finding[] {
  if (without.length === 0) return [];
  const why = byLike ? "whose like have it" : "that should take it";
  const message = `The sheets have no ${item.name} at ${counted(without.length, "device")} ${why}: ${list(without.map(({ device }) => device.device))}.`;
  const devices = without.map(({ device }) => device);
  return [finding("device-without", devices, null, message)];
}

function findBulkIssues(item: Item, { uses }: Needing): Finding[] {
  const { bulk = [], usual } = uses.get(item.key) ?? {};
  return bulk.map((row) => {
    const message = `${row.quantity} units of ${item.name} on ${isoFromDay(row.date)} are far more than the usual ${usual} a use; the row is taken as a restock, not as use.`;
    return finding("bulk-issue", [row], String(row.quantity), message);
  });
}

/** Dated units and packs that the sheets still have at devices that have left service. */
function findStockAtRetiredDevices({ packs }: Fleet, { stock, takes }: Needing, { asOf }: Policy): Finding[] {
  const there = stock.elsewhere.filter(
    (at) => stock.placeOf(at).stranded && stock.quantity[at]! > 0 && stock.asPack[at] === 0,
  );
  const left = packs.flatMap(({ source, device: place, retired }) => {
    const isThere = takes.retired.has(nameKey(place ?? "")) && (retired === null || retired > asOf);
    return isThere ? [{ source, place, quantity: 1 }] : [];
  });
  return [...groupBy([...rowsOf(stock, there), ...left], ({ place }) => nameKey(place!)).values()].map((here) => {
    const device = here[0]!.place!.trim();
    const message = `${device} has left service; its ${unitCount(here)} will serve nothing.`;
    return finding("stock-at-retired", here, device, message);
  });
}

/** Places that are neither a device nor a site, and so are read as stores: a mistyped name would hide there. */
function findPlacesUnknown(fleet: Fleet, { stock }: Needing, policy: Policy): Finding[] {
  if (fleet.devices.length === 0) return [];
  const elsewhere = stock.elsewhere.filter((at) => {
    const { name, stranded } = stock.placeOf(at);
    return !stranded && name !== null && stock.quantity[at]! > 0;
  });
  if (elsewhere.length === 0) return [];
  const siteNames = [...fleet.devices, ...fleet.packs].flatMap(({ site }) => site ?? []);
  const sites = new Set([...new Set(siteNames)].map(nameKey));
  const unknown = elsewhere.filter((at) => !sites.has(stock.placeOf(at).key));
  return [...groupBy(unknown, (at) => stock.keyAt[at]).values()].map((units) => {
    const here = rowsOf(stock, units);
    const place = here[0]!.place!.trim();
    const message = `"${place}" is neither a device nor a site; it is read as a store, whose ${whatServes(stock, units, policy)}.`;
    return finding("place-read-as-store", here, place, message);
  });
}

/** Units held, past expiry or with too little life left to be fitted serve nothing, wherever they lie. */
function whatServes(stock: StockUnits, units: readonly number[], policy: Policy): string {
  const serving = units.filter((at) => {
    const row = stock.rows[at]!;
    return row.held === null && countsUntil(row, stock.itemOf(at), policy) >= policy.asOf;
  });
  if (serving.length > 0) return `${unitCount(rowsOf(stock, serving))} can serve every place`;
  return `${unitCount(rowsOf(stock, units))} cannot be fitted: held, past expiry or too short-dated`;
}

/** A finding on the line of its first row, with the lines of its others in the same sheet. */
function finding(
  code: StockFindingCode,
  rows: readonly { source: Source }[],
  value: string | null,
  message: string,
): Finding {
  const sources = rows.map((row) => row.source).sort((a, b) => a.line - b.line);
  const { file, sheet, line } = sources[0]!;
  const others = sources.filter((source) => source.file === file && source.sheet === sheet && source.line !== line);
  const lines = [...new Set(others.map((source) => source.line))];
  const { severity, fix } = STOCK_FINDING_CODES[code];
  return { code, severity, file, sheet, line, lines, column: null, value, message, fix };
}

/** Rows in the fleet's order. */
function rowsOf({ rows }: StockUnits, numbers: Iterable<number>): DatedStockRow[] {
  return [...numbers].sort((a, b) => a - b).map((at) => rows[at]!);
}

function unitCount(rows: readonly { quantity: number }[]): string {
  return counted(
    rows.reduce((sum, row) => sum + row.quantity, 0),
    "unit",
  );
}

function list(names: readonly string[]): string {
  return firstTold([...names].sort(), NAMES_SHOWN);
}
