import type { Day } from "../calendar/day.ts";
import { groupBy } from "./group-by.ts";
import { type Item, type ItemBook, packItemKeys } from "./item-book.ts";
import { nameKey } from "./name-key.ts";
import { listedAsPack } from "./packs-in-stock.ts";
import { remembered } from "./remembered.ts";
import type { DeviceRow, Fleet } from "./rows.ts";

/** A device that takes an item, with the units it needs. */
export interface Taker {
  device: DeviceRow;
  key: string;
  units: number;
}

/** Which device takes what. Devices that have left service by as-of take nothing. */
export interface WhoTakes {
  /** Devices of the fleet that are in service at as-of or will be, by key; a pack's device counts as one. */
  devices: ReadonlyMap<string, DeviceRow>;
  /** Keys of devices that have left service by as-of. */
  retired: ReadonlySet<string>;
  /** Devices that take the item, in service now or later, by key ascending. */
  takers(item: Item): readonly Taker[];
  /** Units of the item that the device holds at as-of. */
  holds(deviceKey: string, item: Item): number;
  /** Items that serve as well as this one. */
  alternativesOf(item: Item): readonly Item[];
}

/** Of like devices, the share that must carry an item today before all of them are taken to need it. */
const SHARE_THAT_MAKES_A_HABIT = 0.5;

/** True where the device is in service on the day: a blank in_service is "already", a blank retired "not yet". */
export function inServiceOn(device: DeviceRow, day: Day): boolean {
  return (device.inService === null || device.inService <= day) && (device.retired === null || device.retired > day);
}

/**
 * Settles which devices take which item.
 *
 * A device takes an item if its type stands in `fits`; without `fits`, if its duty stands in `carried_by`; without
 * both, if it or half of its like (same type, else same duty) carry the item today. Of items that serve as well
 * (`alternatives`) a device takes those it carries, or else the one most carried by its like.
 */
export function whoTakes(fleet: Fleet, book: ItemBook, asOf: Day): WhoTakes {
  const { devices, retired } = devicesInService(fleet, asOf);
  const packItems = packItemKeys(fleet, book);
  const carried = unitsCarried(fleet, book, devices, asOf);
  const holds = (deviceKey: string, item: Item) => carried.get(item.key)?.get(deviceKey) ?? 0;
  const habit = habitsOfLike(devices, holds, asOf);
  const mayTake = (key: string, device: DeviceRow, item: Item) => {
    if (holds(key, item) > 0) return true;
    if (item.fits.size > 0) return device.type !== null && item.fits.has(nameKey(device.type));
    if (item.carriedBy.size > 0) return device.duty !== null && item.carriedBy.has(nameKey(device.duty));
    return habit(device, item).share >= SHARE_THAT_MAKES_A_HABIT;
  };
  const alternativesOf = linkAlternatives(book);
  const takes = (key: string, device: DeviceRow, item: Item) => {
    if (holds(key, item) > 0) return true;
    if (!mayTake(key, device, item)) return false;
    const others = alternativesOf(item).filter((other) => mayTake(key, device, other));
    if (others.some((other) => holds(key, other) > 0)) return false;
    const { share } = habit(device, item);
    return others.every((other) => {
      const otherShare = habit(device, other).share;
      return share > otherShare || (share === otherShare && item.key < other.key);
    });
  };
  const unitsFor = (device: DeviceRow, item: Item) => {
    if (item.perDevice !== null) return item.perDevice;
    const asPacks = item.kind === "pack" || item.kind === "primary" || packItems.has(item.key);
    if (!asPacks) return 1;
    return Math.max(1, Math.round(habit(device, item).unitsEach));
  };
  const memo = new Map<string, Taker[]>();
  return {
    devices,
    retired,
    holds,
    alternativesOf,
    takers: (item) => {
      let found = memo.get(item.key);
      if (!found) {
        found = [];
        for (const [key, device] of devices)
          if (takes(key, device, item)) found.push({ device, key, units: unitsFor(device, item) });
        memo.set(item.key, found);
      }
      return found;
    },
  };
}

/** What the devices like one carry today: the share that hold the item, and how many units those hold each. */
function habitsOfLike(
  devices: ReadonlyMap<string, DeviceRow>,
  holds: (deviceKey: string, item: Item) => number,
  asOf: Day,
): (device: DeviceRow, item: Item) => { share: number; unitsEach: number } {
  const inService = [...devices].filter(([, device]) => inServiceOn(device, asOf));
  const likes = groupBy(inService, ([, device]) => likeness(device));
  const memo = new Map<string, { share: number; unitsEach: number }>();
  return (device, item) => {
    const memoKey = `${item.key}\n${likeness(device)}`;
    let habit = memo.get(memoKey);
    if (!habit) {
      const units = (likes.get(likeness(device)) ?? []).map(([key]) => holds(key, item));
      const holders = units.filter((held) => held > 0);
      habit = {
        share: units.length === 0 ? 0 : holders.length / units.length,
        unitsEach: holders.length === 0 ? 0 : holders.reduce((a, b) => a + b, 0) / holders.length,
      };
      memo.set(memoKey, habit);
    }
    return habit;
  };
}

/** Devices in service at as-of or later, by key ascending, and the keys of those that have left it. */
function devicesInService(fleet: Fleet, asOf: Day): Pick<WhoTakes, "devices" | "retired"> {
  const found = new Map<string, DeviceRow>();
  const all = new Set<string>();
  for (const row of fleet.devices) {
    const key = nameKey(row.device);
    all.add(key);
    if (row.retired === null || row.retired > asOf) found.set(key, row);
  }
  for (const pack of fleet.packs) {
    if (pack.device === null || (pack.retired !== null && pack.retired <= asOf)) continue;
    const key = nameKey(pack.device);
    // a register of packs without a register of devices still says where the packs sit
    if (!all.has(key) && !found.has(key)) found.set(key, deviceOfPack(pack.device, pack.site, pack.source));
  }
  const retired = [...all].filter((key) => !found.has(key));
  return {
    devices: new Map([...found].sort(([a], [b]) => (a < b ? -1 : 1))),
    retired: new Set(retired),
  };
}

function deviceOfPack(device: string, site: string | null, source: DeviceRow["source"]): DeviceRow {
  return {
    device,
    type: null,
    site,
    duty: null,
    inService: null,
    temperatureC: null,
    usesPerYear: null,
    retired: null,
    source,
  };
}

/** Units by item key and device key, from packs in devices and dated stock placed at devices. */
function unitsCarried(
  fleet: Fleet,
  book: ItemBook,
  devices: ReadonlyMap<string, DeviceRow>,
  asOf: Day,
): Map<string, Map<string, number>> {
  const keys = [...devices.keys()];
  const numbers = new Map(keys.map((key, number) => [key, number]));
  // few names stand in many rows: counts lie under the number of the device until all are counted
  const deviceAt = remembered((place: string) => numbers.get(nameKey(place)) ?? -1);
  const counts = new Map<string, number[]>();
  const ofItem = remembered((itemName: string) => {
    const item = book.find(itemName).key;
    const byDevice = counts.get(item) ?? new Array<number>(keys.length).fill(0);
    counts.set(item, byDevice);
    return byDevice;
  });
  for (const pack of fleet.packs) {
    if (pack.item === null || pack.device === null || (pack.retired !== null && pack.retired <= asOf)) continue;
    const device = deviceAt(pack.device);
    if (device !== -1) ofItem(pack.item)[device]! += 1;
  }
  const isPack = listedAsPack(fleet);
  for (const row of fleet.datedStock) {
    const device = row.place === null ? -1 : deviceAt(row.place);
    if (device !== -1 && !isPack(row)) ofItem(row.item)[device]! += row.quantity;
  }
  const held = (byDevice: readonly number[]) => {
    const found = new Map<string, number>();
    byDevice.forEach((units, device) => {
      if (units !== 0) found.set(keys[device]!, units);
    });
    return found;
  };
  return new Map([...counts].map(([item, byDevice]) => [item, held(byDevice)]));
}

function likeness(device: DeviceRow): string {
  if (device.type !== null) return `type ${nameKey(device.type)}`;
  return device.duty === null ? "" : `duty ${nameKey(device.duty)}`;
}

/** `alternatives` work both ways, whichever of two items names the other. */
function linkAlternatives(book: ItemBook): (item: Item) => Item[] {
  return (item) =>
    book.items.filter(
      (other) => other !== item && (item.alternatives.has(other.key) || other.alternatives.has(item.key)),
    );
}
