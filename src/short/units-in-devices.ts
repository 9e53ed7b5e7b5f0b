import type { Day } from "../calendar/day.ts";
import { lastDayOfMonth, monthOfDay } from "../calendar/month.ts";
import { nameKey } from "../fleet/name-key.ts";
import { remembered } from "../fleet/remembered.ts";
import type { Scheduled } from "./types.ts";

/** What is known of the units of an item in devices, by month's end where it is an array. */
export interface InDevices {
  /** Past their swap day, not used before and still in date: expected. */
  good: Float64Array;
  /** Needs, expected, of devices that have left service since. */
  gone: Float64Array;
  /**
   * Units needed on set days and by devices that lack them so far, on how many days, device by device, as those of one day leave one
   * short, and in how many devices.
   */
  units: Float64Array;
  lapses: Float64Array;
  devices: Float64Array;
  /** First needs so far, expected, of packs without a device. */
  pooled: Float64Array;
}

/** Tells of an item, by its key, what is known of its units in devices. */
export function unitsInDevices({ dated, life, policy }: Scheduled): (key: string) => InDevices {
  const { stock, takes, book, items } = dated.needing;
  const { asOf, horizonMonths } = policy;
  const from = monthOfDay(asOf);
  const ends = Array.from({ length: horizonMonths }, (_, month) => lastDayOfMonth(from + month));
  const none = new Float64Array(horizonMonths);
  const ofItem = remembered(
    (_: string): InDevices => ({
      good: none.slice(),
      gone: none.slice(),
      units: none.slice(),
      lapses: none.slice(),
      devices: none.slice(),
      pooled: none.slice(),
    }),
  );
  /** Days of which a lapse is counted, by item and device. */
  const daysOf = remembered((_: string) => new Set<Day>());
  const leaves = (key: string) => takes.devices.get(key)?.retired ?? Infinity;
  /** Use-by days of packs, by their serials: until then a pack in a device is good. */
  const useBy = new Map<string, Day>();
  for (let at = 0; at < stock.size; at++) {
    if (!stock.placeOf(at).installed) continue;
    const { held, expiry, serial } = stock.rows[at]!;
    if (stock.asPack[at] !== 1) addUnits(at);
    else if (held === null) useBy.set(nameKey(serial!), expiry);
  }
  for (const pack of life.packs) addPack(pack);
  for (const { item, held } of items)
    for (const { key, from, units } of held.lacks) addLapse(item.key, key, from, units);
  return ofItem;

  /** @param goes  units that go with the device */
  function addLapse(itemKey: string, key: string, day: Day, units: number, goes = units): void {
    if (units <= 0) return;
    const item = ofItem(itemKey);
    const days = daysOf(`${itemKey}\n${key}`);
    const first = Math.min(...days);
    const isNew = days.has(day) ? 0 : 1;
    days.add(day);
    const until = leaves(key);
    ends.forEach((end, month) => {
      if (day > end) return;
      item.units[month]! += units;
      item.lapses[month]! += isNew;
      if (first > end) item.devices[month]! += 1;
      if (day < until && end >= until) item.gone[month]! += goes;
    });
  }

  function addUnits(at: number): void {
    const { held, opened, expiry, quantity } = stock.rows[at]!;
    const { key } = stock.placeOf(at);
    const itemKey = stock.itemOf(at).key;
    const item = ofItem(itemKey);
    const swapBy = stock.swapBy[at]!;
    const needed = held === null ? Math.max(asOf, swapBy) : asOf;
    addLapse(itemKey, key, needed, quantity);
    const until = leaves(key);
    // opened gel is good for its days after opening only; held units are good for nothing
    const last = held === null && opened === null ? expiry : 0;
    ends.forEach((end, month) => {
      if (end < until && swapBy <= end && last >= end) item.good[month]! += quantity * (1 - stock.chanceUsed[at]!);
    });
  }

  function addPack({ pack, item: name, dueChance, causes, replaceBy }: Scheduled["life"]["packs"][number]): void {
    const itemKey = book.find(name).key;
    const item = ofItem(itemKey);
    const key = nameKey(pack.device ?? "");
    const until = leaves(key);
    const last = useBy.get(nameKey(pack.serial));
    const { kind, because, p50 } = replaceBy;
    // what is due by now is so at once, like what is due on a set day
    const isSet = kind === "already-due" || (because !== "fade" && because !== "failure");
    if (key && p50 !== null && isSet) addLapse(itemKey, key, p50, 1, 0);
    ends.forEach((end, month) => {
      if (!key) item.pooled[month]! += dueChance[month]!;
      if (end >= until) item.gone[month]! += dueChance[monthOfDay(until - 1) - from]!;
      // what is due by its use-by is good to the end of that day
      else if (end === last) item.good[month]! += causes.limit[month]!;
    });
  }
}
