import type { Day } from "../calendar/day.ts";
import { lastDayOfMonth, type Month, monthOfDay } from "../calendar/month.ts";
import { nameKey } from "../fleet/name-key.ts";
import { remembered } from "../fleet/remembered.ts";
import { SAMPLED_PATHS, samplePaths } from "../orders/sample-paths.ts";
import type { UsableLot } from "../supplies/types.ts";
import { countInService, deviceClasses } from "./device-classes.ts";
import { shortOnPaths } from "./short-on-paths.ts";
import type { Scheduled, Shortage } from "./types.ts";
import { type SupplyMonths, supplyMonths, unmetNeeds } from "./unmet-needs.ts";

/** Needs of an item that wait at the month's end, each of what one device lacks at once, at path * months + month. */
export type Waiting = Float64Array;

/** Counts devices short for any supply; see `forecastShort` for what is counted and how. */
export interface ShortModel {
  from: Month;
  months: number;
  /** Item keys, in the order of demand. */
  items: readonly string[];
  /** Devices in service at each month's end. */
  devices: readonly number[];
  /** Lots as months of the plan; those that serve none of them are left out. */
  spans(lots: readonly UsableLot[]): SupplyMonths[];
  /** What waits of one item (index) with the supply given. */
  waiting(item: number, supply: readonly SupplyMonths[]): Waiting;
  /** Devices short by month, with what waits of every item. */
  shortBy(waiting: readonly Waiting[]): Shortage[];
  /** Device-months short of one item alone, expected over all months. */
  deviceMonths(item: number, waiting: Waiting): number;
}

/** Prepares what does not hang on the supply: sampled needs, who takes what, units past their swap day still in date. */
export function shortModel(scheduled: Scheduled): ShortModel {
  const { policy, dated, demand } = scheduled;
  const { book, takes } = dated.needing;
  const from = monthOfDay(policy.asOf);
  const months = policy.horizonMonths;
  const items = demand.map((one) => book.find(one.item));
  const paths = demand.map((one) => samplePaths(one));
  const inDevices = unitsInDevices(scheduled);
  const sum = (units: Float64Array) => units.reduce((all, one) => all + one, 0);
  const atOnce = demand.map(({ mean, causes }, item) => {
    const { units, days } = inDevices(items[item]!.key);
    const spared = sum(causes.expiry) * (1 - days.size / units);
    return spared > 0 ? sum(mean) / (sum(mean) - spared) : 1;
  });
  const share = (item: number) => {
    const { packs, placed } = inDevices(items[item]!.key);
    return packs === 0 ? 1 : placed / packs;
  };
  /** The part of what waits of an item that does not go with its device, at path * months + month. */
  const staying = remembered((item: number) => {
    const { gone } = inDevices(items[item]!.key);
    const parts = new Float64Array(SAMPLED_PATHS * months);
    paths[item]!.forEach((path, at) => {
      let needs = 0;
      for (let month = 0; month < months; month++) {
        needs += path[month]!;
        parts[at * months + month] = needs === 0 ? 1 : Math.max(0, 1 - gone[month]! / needs);
      }
    });
    return parts;
  });
  const classes = deviceClasses(takes, items);
  const byMonth = Array.from({ length: months }, (_, month) => {
    const end = lastDayOfMonth(from + month);
    return classes.map((one) => ({ items: one.items, count: countInService(one, end) }));
  });
  const takers = items.map((_, item) =>
    byMonth.map((all) => all.reduce((sum, one) => sum + (one.items.includes(item) ? one.count : 0), 0)),
  );
  return {
    from,
    months,
    items: items.map((one) => one.key),
    devices: byMonth.map((all) => all.reduce((sum, one) => sum + one.count, 0)),
    spans: (lots) => lots.flatMap((lot) => supplyMonths(lot, policy, from, months) ?? []),
    waiting(item, supply) {
      const { good } = inDevices(items[item]!.key);
      const stays = staying(item);
      return unmetNeeds(paths[item]!, supply).map((units, at) => {
        // whole on each path, and in the mean of all what is expected
        const still = Math.floor(good[at % months]! + at / SAMPLED_PATHS / months);
        return Math.max(0, Math.ceil((units * stays[at]! - still) / atOnce[item]! - 1e-9));
      });
    },
    shortBy: (waiting) =>
      byMonth.map((all, month) =>
        shortOnPaths(
          waiting.map((one, item) => ({ share: share(item), unmet: (path: number) => one[path * months + month]! })),
          all,
        ),
      ),
    deviceMonths(item, waiting) {
      const ofItem = share(item);
      let sum = 0;
      for (let at = 0; at < waiting.length; at += months) {
        for (let m = 0; m < months; m++) sum += Math.min(takers[item]![m]!, waiting[at + m]! * ofItem);
      }
      return sum / SAMPLED_PATHS;
    },
  };
}

/** What is known of the units of an item in devices, by month's end where it is an array. */
interface InDevices {
  /** Past their swap day, not used before and still in date: expected. */
  good: Float64Array;
  /** Needs, expected, of devices that have left service since. */
  gone: Float64Array;
  /** Units, and their swap days device by device: what lapses in one on one day leaves one device short. */
  units: number;
  days: Set<string>;
  /** Packs that bring needs, and of these those that sit in a device. */
  packs: number;
  placed: number;
}

function unitsInDevices({ dated, life, policy }: Scheduled): (key: string) => InDevices {
  const { stock, takes, book } = dated.needing;
  const { asOf, horizonMonths } = policy;
  const from = monthOfDay(asOf);
  const ends = Array.from({ length: horizonMonths }, (_, month) => lastDayOfMonth(from + month));
  const ofItem = remembered(
    (_: string): InDevices => ({
      good: new Float64Array(horizonMonths),
      gone: new Float64Array(horizonMonths),
      units: 0,
      days: new Set(),
      packs: 0,
      placed: 0,
    }),
  );
  const leaves = (key: string) => takes.devices.get(key)?.retired ?? Infinity;
  const useBy = new Map<string, Day>();
  for (let at = 0; at < stock.size; at++) {
    const { held, opened, expiry, quantity, serial } = stock.rows[at]!;
    const place = stock.placeOf(at);
    if (!place.installed) continue;
    if (stock.asPack[at] === 1) {
      if (held === null) useBy.set(nameKey(serial!), expiry);
      continue;
    }
    const item = ofItem(stock.itemOf(at).key);
    const swapBy = stock.swapBy[at]!;
    item.units += quantity;
    item.days.add(`${place.key} ${swapBy}`);
    const until = leaves(place.key);
    const isNeed = (held === null ? Math.max(asOf, swapBy) : asOf) < until;
    // opened gel is good for its days after opening only; held units are good for nothing
    const last = held === null && opened === null ? expiry : 0;
    ends.forEach((end, month) => {
      if (end >= until) item.gone[month]! += isNeed ? quantity : 0;
      else if (swapBy <= end && last >= end) item.good[month]! += quantity * (1 - stock.chanceUsed[at]!);
    });
  }
  for (const { pack, item: name, dueChance, causes } of life.packs) {
    const key = nameKey(pack.device ?? "");
    const item = ofItem(book.find(name).key);
    item.packs++;
    if (pack.device !== null) item.placed++;
    const until = leaves(key);
    const last = useBy.get(nameKey(pack.serial));
    ends.forEach((end, month) => {
      if (end >= until) item.gone[month]! += dueChance[monthOfDay(until - 1) - from]!;
      // what is due by its use-by is good to the end of that day
      else if (end === last) item.good[month]! += causes.limit[month]!;
    });
  }
  return ofItem;
}
