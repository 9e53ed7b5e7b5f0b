import type { Day } from "../calendar/day.ts";
import { monthOfDay } from "../calendar/month.ts";
import { groupBy } from "../fleet/group-by.ts";
import type { Item, ItemBook } from "../fleet/item-book.ts";
import { nameKey } from "../fleet/name-key.ts";
import { listedAsPack } from "../fleet/packs-in-stock.ts";
import type { Policy } from "../fleet/policy.ts";
import type { DatedStockRow, Fleet } from "../fleet/rows.ts";
import { type WhoTakes, whoTakes } from "../fleet/who-takes.ts";
import type { PackLife } from "../life/types.ts";
import { goodUntil } from "../supplies/unit-life.ts";

/** A pack stands in only where it is unlikely to be due itself before the order arrives. */
const MOST_CHANCE_DUE = 0.1;

/** Why units could stand in: a site's pool, a device out of service, one that holds too many, one about to leave. */
export type StandInFrom = "pool" | "idle" | "surplus" | "leaving";

/** Good units of an item that stand elsewhere and could help out. */
export interface StandIn {
  from: StandInFrom;
  /** As the sheet writes it. */
  place: string;
  units: number;
  /** Where from a device about to leave: its last day. */
  leaves: Day | null;
}

/** What stand-ins are looked for in. */
export interface StandInGround {
  fleet: Fleet;
  policy: Policy;
  book: ItemBook;
  takes: WhoTakes;
  /** Rows of dated stock that are no packs, and packs in service with their lives, by item key. */
  stockOf: ReadonlyMap<string, readonly DatedStockRow[]>;
  packsOf: ReadonlyMap<string, readonly PackLife[]>;
}

/** Sorts by item what stand-ins are looked for in: every late line looks. */
export function standInGround(fleet: Fleet, policy: Policy, book: ItemBook, packs: readonly PackLife[]): StandInGround {
  const isPack = listedAsPack(fleet);
  return {
    fleet,
    policy,
    book,
    takes: whoTakes(fleet, book, policy.asOf),
    stockOf: groupBy(
      fleet.datedStock.filter((row) => !isPack(row)),
      (row) => book.find(row.item).key,
    ),
    packsOf: groupBy(packs, (one) => book.find(one.item).key),
  };
}

/**
 * Units of the same item that no plan counts on before an order arrives and that stay good until then, by place.
 * A device gives up units only where the catalogue says how many it needs, or where it leaves service by that day.
 */
export function standIns(item: Item, arrives: Day, ground: StandInGround): StandIn[] {
  const { takes } = ground;
  const needs = new Map(takes.takers(item).map(({ key, units }) => [key, units]));
  const found: StandIn[] = [];
  for (const [key, good] of groupBy(goodUnits(item, arrives, ground), ({ key }) => key)) {
    const { place, inPool } = good[0]!;
    const units = good.reduce((sum, one) => sum + one.units, 0);
    const leaves = takes.devices.get(key)?.retired ?? null;
    const surplus = item.perDevice === null ? 0 : units - (needs.get(key) ?? item.perDevice);
    if (inPool) found.push({ from: "pool", place, units, leaves: null });
    else if (takes.retired.has(key)) found.push({ from: "idle", place, units, leaves: null });
    else if (leaves !== null && leaves <= arrives) found.push({ from: "leaving", place, units, leaves });
    else if (surplus > 0) found.push({ from: "surplus", place, units: surplus, leaves: null });
  }
  return found.sort((a, b) => b.units - a.units || (a.place < b.place ? -1 : 1));
}

interface GoodUnits {
  key: string;
  place: string;
  inPool: boolean;
  units: number;
}

function goodUnits(item: Item, arrives: Day, { policy, takes, stockOf, packsOf }: StandInGround): GoodUnits[] {
  const dated = (stockOf.get(item.key) ?? []).flatMap((row) => {
    const { place, quantity } = row;
    if (place === null || row.held !== null || quantity <= 0 || goodUntil(row, item) < arrives) return [];
    const key = nameKey(place);
    // what lies in a store is supply already
    return takes.devices.has(key) || takes.retired.has(key) ? [{ key, place, inPool: false, units: quantity }] : [];
  });
  const month = monthOfDay(arrives) - monthOfDay(policy.asOf);
  const lasting = (packsOf.get(item.key) ?? []).flatMap(({ pack, site, dueChance }) => {
    if (pack.held !== null || (dueChance[month] ?? 1) >= MOST_CHANCE_DUE) return [];
    if (pack.device !== null) return [{ key: nameKey(pack.device), place: pack.device, inPool: false, units: 1 }];
    // a pool's name may be a device's too
    return site === null ? [] : [{ key: `pool of ${nameKey(site)}`, place: site, inPool: true, units: 1 }];
  });
  return [...dated, ...lasting];
}
