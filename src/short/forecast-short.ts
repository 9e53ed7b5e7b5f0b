import { groupBy } from "../fleet/group-by.ts";
import { lotsOfSchedule } from "../orders/lots-of-schedule.ts";
import type { DatedStockForecast } from "../supplies/forecast-dated-stock.ts";
import type { UsableLot } from "../supplies/types.ts";
import { shortModel } from "./short-model.ts";
import type { Scheduled, ShortMonth } from "./types.ts";

/**
 * Devices without a good pack or in-date supplies at each month's end: how many are expected, and the chance that any
 * is, if nothing is bought and if the schedule is followed as it stands.
 *
 * Per item, over sampled joint futures (SAMPLED_PATHS, the fleet's draws shared by all items): needs that stock and what
 * is on order cannot serve, first expired, first out, wait until something arrives. A unit that is past its swap day but
 * in date at the month's end is still good. Of needs that wait, those of packs without a device (a site's pool) leave
 * no device short, in proportion, and those of a device that leaves service go with it. Units that lapse in a device on
 * one day, its packs that are due on one day, or what a new one needs, leave one device short; what else waits is spread over
 * the units of all devices that take the item, of which one may lack several, and items fall on devices independently: a
 * device is short if it lacks any of its items.
 */
export function forecastShort(scheduled: Scheduled): ShortMonth[] {
  const { fleet, policy, dated, lots, schedule } = scheduled;
  const model = shortModel(scheduled);
  const onHand = lotsByItem(lots, dated);
  const bought = lotsByItem(lotsOfSchedule(schedule.orders, fleet, policy), dated);
  const short = (supplyOf: (key: string) => readonly UsableLot[]) =>
    model.shortBy(model.items.map((key, item) => model.waiting(item, model.spans(supplyOf(key)))));
  const withoutBuying = short((key) => onHand.get(key) ?? []);
  const withSchedule = short((key) => [...(onHand.get(key) ?? []), ...(bought.get(key) ?? [])]);
  return model.devices.map((devices, month) => ({
    month: model.from + month,
    devices,
    withoutBuying: withoutBuying[month]!,
    withSchedule: withSchedule[month]!,
  }));
}

/** Lots by the key of the item that they serve. */
export function lotsByItem(lots: readonly UsableLot[], { needing }: DatedStockForecast): Map<string, UsableLot[]> {
  return groupBy(lots, (lot) => needing.book.find(lot.item).key);
}
