import type { Day } from "../calendar/day.ts";
import { lastDayOfMonth, monthOfDay } from "../calendar/month.ts";
import { type ItemBook, itemBook } from "../fleet/item-book.ts";
import { nameKey } from "../fleet/name-key.ts";
import { listedAsPack } from "../fleet/packs-in-stock.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet } from "../fleet/rows.ts";
import { whoTakes } from "../fleet/who-takes.ts";
import type { StockPack } from "../life/types.ts";
import { sortBy } from "../maths/sort-by.ts";
import type { UsableLot } from "./types.ts";
import { countsUntil, lifeOfDelivery, packShelfEnd } from "./unit-life.ts";

/**
 * Units that can serve needs, under the item by which they are bought now: dated stock in stores, spare packs and
 * what is on order. Held, expired and short-dated units are left out, as is everything placed at a device.
 *
 * @param stockPacks  shelf stock of packs (LifeForecast.stock)
 * @returns by item, then the day on which they lapse
 */
export function usableLots(fleet: Fleet, policy: Policy, stockPacks: readonly StockPack[]): UsableLot[] {
  const book = itemBook(fleet);
  const lots = [
    ...lotsInStores(fleet, book, policy),
    ...sparePacks(stockPacks, book, policy),
    ...lotsOnOrder(fleet, book, policy),
  ];
  const usable = lots.filter((lot) => lot.usableUntil === null || lot.usableUntil >= lot.availableFrom);
  return sortBy(usable, lotKey);
}

function lotsInStores(fleet: Fleet, book: ItemBook, policy: Policy): UsableLot[] {
  const { devices, retired } = whoTakes(fleet, book, policy.asOf);
  const isPack = listedAsPack(fleet);
  const lots: UsableLot[] = [];
  for (const row of fleet.datedStock) {
    const place = row.place === null ? "" : nameKey(row.place);
    // what lies in a device out of service is in no store: nobody can count on finding it
    if (isPack(row) || row.held !== null || row.quantity <= 0 || devices.has(place) || retired.has(place)) continue;
    const item = book.find(row.item);
    lots.push({
      item: item.name,
      quantity: row.quantity,
      availableFrom: policy.asOf,
      usableUntil: countsUntil(row, item, policy),
      place: row.place,
      origin: "shelf",
      reference: row.lot ?? row.serial,
    });
  }
  return lots;
}

function sparePacks(stockPacks: readonly StockPack[], book: ItemBook, policy: Policy): UsableLot[] {
  return stockPacks.flatMap(({ pack, due }): UsableLot[] => {
    if (pack.item === null) return [];
    const item = book.find(pack.item);
    return [
      {
        item: item.name,
        quantity: 1,
        availableFrom: policy.asOf,
        // it takes the place of nothing that is due in the month in which it is due itself
        usableUntil: earlier(packShelfEnd(item, pack.made, policy), due && lastDayOfMonth(monthOfDay(due) - 1)),
        place: pack.site,
        origin: "shelf",
        reference: pack.serial,
      },
    ];
  });
}

function lotsOnOrder({ onOrder }: Fleet, book: ItemBook, policy: Policy): UsableLot[] {
  return onOrder.flatMap((row): UsableLot[] => {
    if (row.quantity <= 0) return [];
    const item = book.find(row.item);
    const { from, until } = lifeOfDelivery(row, item, policy);
    return [
      {
        item: item.name,
        quantity: row.quantity,
        availableFrom: from,
        usableUntil: until === Number.POSITIVE_INFINITY ? null : until,
        place: null,
        origin: "on-order",
        reference: row.order,
      },
    ];
  });
}

function lotKey(lot: UsableLot): (string | number)[] {
  const until = lot.usableUntil ?? Number.MAX_SAFE_INTEGER;
  return [
    lot.item,
    until,
    lot.availableFrom,
    lot.origin === "shelf" ? 0 : 1,
    lot.place ?? "",
    lot.reference ?? "",
    lot.quantity,
  ];
}

/** The earlier of two days, of which either may not be known. */
function earlier(one: Day | null, other: Day | null): Day | null {
  return one === null || other === null ? (one ?? other) : Math.min(one, other);
}
