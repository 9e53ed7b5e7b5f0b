import { lastDayOfMonth, monthOfDay } from "../calendar/month.ts";
import type { ItemDemand } from "../demand/types.ts";
import { groupBy } from "../fleet/group-by.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet } from "../fleet/rows.ts";
import type { LifeForecast } from "../life/types.ts";
import { lotsOfSchedule } from "../orders/lots-of-schedule.ts";
import { SAMPLED_PATHS, samplePaths } from "../orders/sample-paths.ts";
import type { OrderSchedule } from "../orders/types.ts";
import type { DatedStockForecast } from "../supplies/forecast-dated-stock.ts";
import type { UsableLot } from "../supplies/types.ts";
import { countInService, deviceClasses } from "./device-classes.ts";
import { shortOnPaths } from "./short-on-paths.ts";
import type { ShortMonth } from "./types.ts";
import { supplyMonths, unmetNeeds } from "./unmet-needs.ts";

/**
 * Devices without a good pack or in-date supplies at each month's end: how many are expected, and the chance that any
 * is, if nothing is bought and if the schedule is followed as it stands.
 *
 * Per item, over sampled joint futures (SAMPLED_PATHS, the fleet's draws shared by all items): needs that stock and what
 * is on order cannot serve, first expired, first out, wait until something arrives. A unit that is past its swap day but
 * in date at the month's end is still good. Of needs that wait, those of packs without a device (a site's pool) leave
 * no device short, in proportion. Waiting needs are spread over different devices among those that take the item, and
 * items fall on devices independently: a device is short if it lacks any of its items.
 */
export function forecastShort(
  fleet: Fleet,
  policy: Policy,
  life: LifeForecast,
  dated: DatedStockForecast,
  demand: readonly ItemDemand[],
  lots: readonly UsableLot[],
  schedule: OrderSchedule,
): ShortMonth[] {
  const { book, takes } = dated.needing;
  const from = monthOfDay(policy.asOf);
  const months = policy.horizonMonths;
  const items = demand.map((one) => book.find(one.item));
  const keyOf = (lot: UsableLot) => book.find(lot.item).key;
  const onHand = groupBy(lots, keyOf);
  const bought = groupBy(lotsOfSchedule(schedule.orders, fleet, policy), keyOf);
  const inDate = stillInDate(dated, policy);
  const inDevices = shareInDevices(life, (name) => book.find(name).key);

  const unmet = demand.map((one, index) => {
    const { key } = items[index]!;
    const paths = samplePaths(one);
    const stock = onHand.get(key) ?? [];
    const waiting = (supply: readonly UsableLot[]) => {
      const span = supplyMonths(supply, policy, from, months);
      const all = new Float64Array(SAMPLED_PATHS * months);
      paths.forEach((needs, path) => {
        const ofPath = all.subarray(path * months, (path + 1) * months);
        unmetNeeds(needs, span, ofPath);
        for (let month = 0; month < months; month++) {
          ofPath[month] = Math.max(0, ofPath[month]! - (inDate.get(key)?.[month] ?? 0));
        }
      });
      return all;
    };
    return {
      withoutBuying: waiting(stock),
      withSchedule: waiting([...stock, ...(bought.get(key) ?? [])]),
      share: inDevices.get(key) ?? 1,
    };
  });

  const classes = deviceClasses(takes, items);
  return Array.from({ length: months }, (_, month) => {
    const end = lastDayOfMonth(from + month);
    const counted = classes.map((one) => ({ items: one.items, count: countInService(one, end) }));
    const at = (which: "withoutBuying" | "withSchedule") =>
      shortOnPaths(
        unmet.map((one) => ({ share: one.share, unmet: (path: number) => one[which][path * months + month]! })),
        counted,
      );
    return {
      month: from + month,
      devices: counted.reduce((sum, one) => sum + one.count, 0),
      withoutBuying: at("withoutBuying"),
      withSchedule: at("withSchedule"),
    };
  });
}

/** Installed units by item and month that are past their swap day at the month's end and still in date. */
function stillInDate(
  { units, needing }: DatedStockForecast,
  { asOf, horizonMonths }: Policy,
): Map<string, Float64Array> {
  const ends = Array.from({ length: horizonMonths }, (_, month) => lastDayOfMonth(monthOfDay(asOf) + month));
  const found = new Map<string, Float64Array>();
  for (const { row, installed, swapBy } of units) {
    // opened gel is good for its days after opening only; held units are good for nothing
    if (!installed || row.held !== null || row.opened !== null || row.expiry < asOf) continue;
    const { key } = needing.book.find(row.item);
    const byMonth = found.get(key) ?? new Float64Array(horizonMonths);
    found.set(key, byMonth);
    ends.forEach((end, month) => {
      if (swapBy <= end && row.expiry >= end) byMonth[month]! += row.quantity;
    });
  }
  return found;
}

/** Of the packs of each item in service, the share that sit in a device. */
function shareInDevices(life: LifeForecast, keyOf: (item: string) => string): Map<string, number> {
  const groups = groupBy(life.packs, (one) => keyOf(one.item));
  return new Map(
    [...groups].map(([key, packs]) => [key, packs.filter((one) => one.pack.device !== null).length / packs.length]),
  );
}
