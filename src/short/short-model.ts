import { lastDayOfMonth, type Month, monthOfDay } from "../calendar/month.ts";
import type { ItemDemand } from "../demand/types.ts";
import { groupBy } from "../fleet/group-by.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Policy } from "../fleet/policy.ts";
import type { WhoTakes } from "../fleet/who-takes.ts";
import type { LifeForecast } from "../life/types.ts";
import { SAMPLED_PATHS, samplePaths } from "../orders/sample-paths.ts";
import type { DatedStockForecast } from "../supplies/forecast-dated-stock.ts";
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
export function shortModel({ policy, life, dated, demand }: Scheduled): ShortModel {
  const { book, takes } = dated.needing;
  const from = monthOfDay(policy.asOf);
  const months = policy.horizonMonths;
  const items = demand.map((one) => book.find(one.item));
  const paths = demand.map((one) => samplePaths(one));
  const inDate = stillInDate(dated, policy);
  const atOnce = unitsAtOnce(dated, demand);
  const inDevices = shareInDevices(life, takes, (name) => book.find(name).key);
  const share = (item: number) => inDevices.get(items[item]!.key) ?? 1;
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
      const good = inDate.get(items[item]!.key);
      return unmetNeeds(paths[item]!, supply).map((units, at) =>
        Math.ceil(Math.max(0, units - (good?.[at % months] ?? 0)) / atOnce[item]! - 1e-9),
      );
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

/** Installed units by item and month that are past their swap day at the month's end and still in date. */
function stillInDate(
  { needing: { stock } }: DatedStockForecast,
  { asOf, horizonMonths }: Policy,
): Map<string, Float64Array> {
  const ends = Array.from({ length: horizonMonths }, (_, month) => lastDayOfMonth(monthOfDay(asOf) + month));
  const found = new Map<string, Float64Array>();
  for (let at = 0; at < stock.size; at++) {
    const { held, opened, expiry, quantity } = stock.rows[at]!;
    // opened gel is good for its days after opening only; held units are good for nothing
    if (!stock.placeOf(at).installed || held !== null || opened !== null || expiry < asOf) continue;
    const { key } = stock.itemOf(at);
    const byMonth = found.get(key) ?? new Float64Array(horizonMonths);
    found.set(key, byMonth);
    ends.forEach((end, month) => {
      if (stock.swapBy[at]! <= end && expiry >= end) byMonth[month]! += quantity;
    });
  }
  return found;
}

/** By item, how many units a device needs at once on average: what lapses there on one day leaves one device short. */
function unitsAtOnce({ needing: { stock, book } }: DatedStockForecast, demand: readonly ItemDemand[]): number[] {
  const lapses = new Map<string, { units: number; days: Set<number> }>();
  for (let at = 0; at < stock.size; at++) {
    if (!stock.placeOf(at).installed || stock.asPack[at] === 1) continue;
    const { key } = stock.itemOf(at);
    const ofItem = lapses.get(key) ?? { units: 0, days: new Set() };
    lapses.set(key, ofItem);
    ofItem.units += stock.quantity[at]!;
    ofItem.days.add(stock.keyAt[at]! * 100_000 + stock.swapBy[at]!);
  }
  const sum = (units: Float64Array) => units.reduce((all, one) => all + one, 0);
  return demand.map(({ item, mean, causes }) => {
    const { units, days } = lapses.get(book.find(item).key) ?? { units: 0, days: new Set() };
    const spared = sum(causes.expiry) * (1 - days.size / units);
    return spared > 0 ? sum(mean) / (sum(mean) - spared) : 1;
  });
}

/** Of the packs of each item that bring needs, the share that sit in a device. */
function shareInDevices(
  life: LifeForecast,
  { retired }: WhoTakes,
  keyOf: (item: string) => string,
): Map<string, number> {
  const needing = life.packs.filter(({ pack }) => !retired.has(nameKey(pack.device ?? "")));
  const groups = groupBy(needing, (one) => keyOf(one.item));
  return new Map(
    [...groups].map(([key, packs]) => [key, packs.filter((one) => one.pack.device !== null).length / packs.length]),
  );
}
