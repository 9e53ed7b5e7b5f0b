import type { Day } from "../calendar/day.ts";
import { DAYS_PER_MONTH } from "../calendar/mean-year.ts";
import { groupBy } from "../fleet/group-by.ts";
import type { Item, ItemBook } from "../fleet/item-book.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Policy } from "../fleet/policy.ts";
import { remembered } from "../fleet/remembered.ts";
import type { DeviceRow, Fleet, UseLogRow } from "../fleet/rows.ts";
import type { Taker, WhoTakes } from "../fleet/who-takes.ts";
import { fitGammaPoisson, type GammaRate } from "../maths/gamma-poisson.ts";
import { type SplitUses, splitBulk } from "./bulk-issues.ts";
import { SharedUses } from "./shared-uses.ts";

/** Uses of an item at a place, as a forecast. A use is one event of the log; it may take several units. */
export interface PlaceUse {
  key: string;
  /** As the sheets write it; of several ways, the first in order. */
  name: string;
  /** null where the place is a store. */
  device: DeviceRow | null;
  /** Events logged at the place; an event at a site is shared among its devices. */
  events: number;
  /** Device-months observed. */
  months: number;
  /** Posterior of events a month. */
  rate: GammaRate;
  /** Places with the same text have one common, uncertain rate; null = a rate of the place's own. */
  common: string | null;
  /** What places with rates of their own have in common; null where the rate is common, or the prior certain. */
  prior: SharedPrior | null;
}

/** A gamma distribution over the places of a duty, whose mean is itself uncertain. */
export interface SharedPrior {
  duty: string;
  exposure: number;
  /** Standard deviation of the logarithm of its mean. */
  logSpread: number;
}

/** How an item is used. */
export interface ItemUse {
  /** By key ascending. */
  places: readonly PlaceUse[];
  /** Chance that a use takes 0, 1, 2 ... units (entry 0 is 0). */
  unitsPerUse: Float64Array;
  meanUnitsPerUse: number;
}

/** Places needed before the spread of their rates is estimated; fewer are taken as one rate. */
const PLACES_FOR_A_SPREAD = 3;
/** Events assumed where none was seen, in all the months observed (Jeffreys' prior of a Poisson rate). */
const EVENTS_WHEN_NONE = 0.5;

/** The rate of a place whose log is counted and whose duty is still to be looked at. */
const NO_RATE: GammaRate = { shape: 0, exposure: 0 };

/**
 * The log's uses by item key, parted from bulk issues, from the day on which the log is complete up to as-of, and that
 * day. Earlier uses are left out: nobody knows how many there were. What was carried from place to place does not start a
 * log: it may stand in a list of its own.
 */
export function usesByItem(fleet: Fleet, book: ItemBook, policy: Policy): { from: Day; uses: Map<string, SplitUses> } {
  const { useLog } = fleet;
  const { asOf } = policy;
  const from =
    policy.useLogFrom ??
    useLog.reduce((first, { date, reason }) => (reason === "restock" ? first : Math.min(first, date)), asOf);
  const uses = useLog.filter(
    ({ reason, quantity, date }) => reason === "use" && quantity > 0 && date >= from && date <= asOf,
  );
  const byItem = groupBy(uses, (row) => book.find(row.item).key);
  return { from, uses: new Map([...byItem].map(([key, rows]) => [key, splitBulk(rows)])) };
}

/**
 * Use rates of an item by place: a gamma prior over the places of one duty, fitted by empirical Bayes, updated by
 * each place's own log. A place without a log has its duty's rate; a duty without one, that of all.
 *
 * Only blank and `use` rows up to as-of count. A use logged at a site is shared among the devices there that take
 * the item, one without a place among all; any other place is a store with a rate of its own. An item that the log
 * never names is taken not to be used: the result is null.
 *
 * Uses at devices that have left service are left out.
 *
 * @param logged  the item's uses without bulk issues, from `usesByItem`
 * @param from  the day from which the log is complete
 */
export function itemUse(
  logged: readonly UseLogRow[],
  from: Day,
  takes: WhoTakes,
  item: Item,
  asOf: Day,
): ItemUse | null {
  const hasLeft = remembered((place: string) => takes.retired.has(nameKey(place)));
  const rows = takes.retired.size === 0 ? logged : logged.filter(({ place }) => place === null || !hasLeft(place));
  if (rows.length === 0) return null;
  const observed = observePlaces(rows, takes, item, from, asOf);
  const dutyKey = remembered((duty: string) => `duty ${nameKey(duty)}`);
  const dutyOf = ({ key, device }: PlaceUse) =>
    device === null ? key : device.duty === null ? "" : dutyKey(device.duty);
  for (const [duty, group] of groupBy(observed, dutyOf)) rateGroup(duty, group, observed);
  const sizes = new Float64Array(rows.reduce((most, row) => Math.max(most, row.quantity), 0) + 1);
  for (const row of rows) sizes[row.quantity] = sizes[row.quantity]! + 1 / rows.length;
  return {
    places: observed.filter(({ rate }) => rate !== NO_RATE).sort((a, b) => (a.key < b.key ? -1 : 1)),
    unitsPerUse: sizes,
    meanUnitsPerUse: sizes.reduce((sum, chance, units) => sum + chance * units, 0),
  };
}

/** The places with their events and months; rates are still to come. */
function observePlaces(rows: readonly UseLogRow[], takes: WhoTakes, item: Item, from: Day, asOf: Day): PlaceUse[] {
  const observed = new Map<string, PlaceUse>();
  const see = (key: string, device: DeviceRow | null, name = device?.device ?? "") => {
    let place = observed.get(key);
    if (!place) {
      const start = Math.max(from, device?.inService ?? from);
      const months = Math.max(0, asOf - start) / DAYS_PER_MONTH;
      place = { key, name, device, events: 0, months, rate: NO_RATE, common: null, prior: null };
      observed.set(key, place);
    }
    return place;
  };
  const takers = takes.takers(item);
  for (const { key, device } of takers) see(key, device);
  const siteKey = remembered((site: string | null) => (site === null ? "" : nameKey(site)));
  // most logs name devices only
  let bySite: Map<string, Taker[]> | null = null;
  let stations: Map<string, Taker[]> | null = null;
  const atSite = (key: string) => {
    bySite ??= groupBy(takers, ({ device }) => siteKey(device.site));
    stations ??= groupBy(takers, ({ device }) => stationOf(siteKey(device.site)));
    return bySite.get(key) ?? stations.get(key) ?? [];
  };
  const sharedAt = remembered((site: string) => {
    const sharers = site === "" ? takers : atSite(site);
    return new SharedUses(
      sharers.map(({ key, device }) => ({ device, place: see(key, device) })),
      from,
    );
  });
  const keyOf = remembered((place: string | null) => (place === null ? "" : nameKey(place)));
  const sharedKeys = new Set<string>();
  for (const row of rows) {
    const key = keyOf(row.place);
    const device = takes.devices.get(key);
    if (device) see(key, device).events += 1;
    else if (sharedAt(key).add(row.date)) sharedKeys.add(key);
    else {
      const name = row.place ?? "";
      // no device's key has two blanks together
      const store = see(takes.devices.has(`store ${key}`) ? `store  ${key}` : `store ${key}`, null, name);
      store.events += 1;
      if (name < store.name) store.name = name;
    }
  }
  // in one order, so that sums do not hang on the order of rows
  for (const key of [...sharedKeys].sort()) sharedAt(key).deal();
  return [...observed.values()];
}

/** Of a site such as "north, ambulance 7", a vehicle at its station, the station. */
function stationOf(site: string): string {
  return site.includes(", ") ? site.slice(0, site.indexOf(", ")) : "";
}

/** Gives the places of a duty their rates, where there is something to tell them by. */
function rateGroup(duty: string, group: readonly PlaceUse[], all: readonly PlaceUse[]): void {
  const watched = (places: readonly PlaceUse[]) => places.filter((place) => place.months > 0);
  const own = watched(group);
  // a duty that was never watched borrows from all devices
  const lenders = own.length > 0 ? own : watched(all.filter((place) => place.device !== null));
  if (lenders.length === 0) return;
  const prior =
    lenders.length < PLACES_FOR_A_SPREAD
      ? null
      : fitGammaPoisson(
          lenders.map((place) => place.events),
          lenders.map((place) => place.months),
        );
  const events = lenders.reduce((sum, place) => sum + place.events, 0);
  const pooled = {
    shape: events > 0 ? events : EVENTS_WHEN_NONE,
    exposure: lenders.reduce((sum, place) => sum + place.months, 0),
  };
  const shared = prior ? { duty, exposure: prior.exposure, logSpread: spreadOfMean(prior, lenders) } : null;
  // most places of a large fleet have one of few counts: they share the rate
  const rateOf = remembered((months: number) =>
    remembered(
      (events: number): GammaRate =>
        prior ? { shape: prior.shape + events, exposure: prior.exposure + months } : pooled,
    ),
  );
  for (const place of group) {
    place.rate = rateOf(place.months)(place.events);
    place.common = prior ? null : duty;
    place.prior = shared;
  }
}

/**
 * Standard deviation of the logarithm of a prior's mean: from its expected information, that of negative binomial counts
 * with means m and shape a being the sum of m a / (a + m).
 */
function spreadOfMean({ shape, exposure }: GammaRate, lenders: readonly PlaceUse[]): number {
  const information = lenders.reduce((sum, { months }) => {
    const mean = (shape / exposure) * months;
    return sum + (mean * shape) / (shape + mean);
  }, 0);
  return 1 / Math.sqrt(information);
}
