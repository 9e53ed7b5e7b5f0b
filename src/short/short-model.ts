import { lastDayOfMonth, type Month, monthOfDay } from "../calendar/month.ts";
import type { ItemDemand } from "../demand/types.ts";
import { remembered } from "../fleet/remembered.ts";
import { SAMPLED_PATHS, samplePaths } from "../orders/sample-paths.ts";
import type { UsableLot } from "../supplies/types.ts";
import { countInService, deviceClasses } from "./device-classes.ts";
import { shareShort, shortOnPaths } from "./short-on-paths.ts";
import type { Scheduled, Shortage } from "./types.ts";
import { type InDevices, unitsInDevices } from "./units-in-devices.ts";
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
  const ofItem = unitsInDevices(scheduled);
  const inDevices = items.map(({ key }) => ofItem(key));
  const atOnce = demand.map((one, item) => lackedAtOnce(one, inDevices[item]!));
  const each = items.map((item, at) => {
    const all = takes.takers(item);
    const units = all.reduce((sum, one) => sum + one.units, 0) / all.length;
    return atOnce[at]!.map((together) => Math.max(1, Math.round(units / together)));
  });
  const share = (item: number) => {
    const { packs, placed } = inDevices[item]!;
    return packs === 0 ? 1 : placed / packs;
  };
  const staying = remembered((item: number) => partsStaying(paths[item]!, inDevices[item]!.gone));
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
      const { good } = inDevices[item]!;
      const stays = staying(item);
      return unmetNeeds(paths[item]!, supply).map((units, at) => {
        // whole on each path, and in the mean of all what is expected
        const still = Math.floor(good[at % months]! + at / SAMPLED_PATHS / months);
        return Math.max(0, Math.ceil((units * stays[at]! - still) / atOnce[item]![at % months]! - 1e-9));
      });
    },
    shortBy: (waiting) =>
      byMonth.map((all, month) =>
        shortOnPaths(
          waiting.map((one, item) => ({
            share: share(item),
            each: each[item]![month]!,
            unmet: (path: number) => one[path * months + month]!,
          })),
          all,
        ),
      ),
    deviceMonths(item, waiting) {
      const ofItem = share(item);
      let sum = 0;
      for (let at = 0; at < waiting.length; at += months) {
        for (let m = 0; m < months; m++)
          if (waiting[at + m]! > 0 && takers[item]![m]! > 0)
            sum += takers[item]![m]! * shareShort(waiting[at + m]! * ofItem, takers[item]![m]!, each[item]![m]!);
      }
      return sum / SAMPLED_PATHS;
    },
  };
}

/**
 * Needs of an item up to each month that one device lacks at once, in the mean: what lapses in it on one day, or what it needs
 * when it is new, leaves it short once.
 */
function lackedAtOnce({ mean, causes }: ItemDemand, { units, lapses }: InDevices): Float64Array {
  let needs = 0;
  let together = 0;
  return mean.map((ofMonth, month) => {
    needs += ofMonth;
    together += causes.expiry[month]! + causes.growth[month]!;
    const spared = together * (1 - lapses[month]! / units[month]!);
    return spared > 0 ? needs / (needs - spared) : 1;
  });
}

/** The part of what waits of an item that does not go with its device, at path * months + month. */
function partsStaying(paths: readonly Int32Array[], gone: Float64Array): Float64Array {
  const months = gone.length;
  const parts = new Float64Array(SAMPLED_PATHS * months);
  paths.forEach((path, at) => {
    let needs = 0;
    for (let month = 0; month < months; month++) {
      needs += path[month]!;
      parts[at * months + month] = needs === 0 ? 1 : Math.max(0, 1 - gone[month]! / needs);
    }
  });
  return parts;
}
