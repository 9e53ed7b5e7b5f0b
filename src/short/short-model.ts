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
  const lacks = items.map((item, at) => {
    const all = takes.takers(item);
    const units = all.reduce((sum, one) => sum + one.units, 0) / all.length;
    return lacksOf(demand[at]!, inDevices[at]!, units);
  });
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
        // a part of a unit is left out, so that a few needs that come alone do not part all that come together
        return Math.max(0, Math.ceil((units * stays[at]! - still - 0.4) / lacks[item]![at % months]!.atOnce));
      });
    },
    shortBy: (waiting) =>
      byMonth.map((all, month) =>
        shortOnPaths(
          waiting.map((one, item) => ({ ...lacks[item]![month]!, unmet: (path) => one[path * months + month]! })),
          all,
        ),
      ),
    deviceMonths(item, waiting) {
      let sum = 0;
      waiting.forEach((needs, at) => {
        const devices = takers[item]![at % months]!;
        const { share, each } = lacks[item]![at % months]!;
        if (needs > 0 && devices > 0) sum += devices * shareShort(needs * share, devices, each);
      });
      return sum / SAMPLED_PATHS;
    },
  };
}

/**
 * Of the needs of an item up to each month: how many one device lacks at once, in the mean, as what it needs on one day, like
 * packs of one age limit, leaves it short once; how often a device can have been short, for each of its units, or, where most
 * needs come on set days, for each of those days; and the share that falls on devices.
 */
function lacksOf({ mean, causes }: ItemDemand, { units, lapses, devices, pooled }: InDevices, unitsEach: number) {
  let needs = 0;
  // what is due by now is so at once
  let together = causes.fade[0]!;
  return Array.from(mean, (ofMonth, month) => {
    needs += ofMonth;
    together += causes.expiry[month]! + causes.growth[month]! + causes.limit[month]!;
    const days = lapses[month]!;
    const ofSetDays = (days > 0 && together / needs) || 0;
    const atOnce = 1 / (1 - ofSetDays * (1 - days / units[month]! || 0));
    const each = Math.min(unitsEach / atOnce, ofSetDays > 0.5 ? days / devices[month]! : Infinity);
    return { atOnce, each: Math.max(1, Math.round(each)), share: 1 - (pooled[month]! / needs || 0) };
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
