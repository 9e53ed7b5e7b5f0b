import type { Day } from "../calendar/day.ts";
import { groupBy } from "../fleet/group-by.ts";
import type { Item } from "../fleet/item-book.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Policy } from "../fleet/policy.ts";
import type { DeviceRow, Fleet } from "../fleet/rows.ts";
import { inServiceOn, type Taker, type WhoTakes } from "../fleet/who-takes.ts";
import { hasLeft } from "./items-touched.ts";

/** A device must lack an item that this share of the devices that take it hold, before the lack is worth a word. */
const SHARE_THAT_HOLD = 0.5;
/** The same where no catalogue says who takes it, but only what devices of a kind hold. */
const SHARE_OF_A_KIND = 0.9;

/** Units of an item that a device lacks, and the day on which it needs them. */
export interface Lack extends Taker {
  from: Day;
}

/** What devices hold of an item beside what they should. `units` are those too many or too few. */
export interface Holdings {
  /** Devices that hold more than the catalogue says they carry, or fewer and yet some. */
  over: readonly Taker[];
  under: readonly Taker[];
  /** Devices that take the item and have none, and whether it is their like alone that tells. */
  without: readonly Taker[];
  byLike: boolean;
  /** What is needed: by new devices on their first day and, where the planner has it bought, by devices in service. */
  lacks: readonly Lack[];
  /** What devices in service lack and the planner leaves. */
  left: readonly Lack[];
}

/** Keys of devices of which every pack that the sheets list has left. */
export function devicesEmptied({ packs }: Fleet, policy: Policy): Set<string> {
  const byDevice = groupBy(packs, ({ device }) => nameKey(device ?? ""));
  return new Set([...byDevice].flatMap(([key, here]) => (here.every((pack) => hasLeft(pack, policy)) ? key : [])));
}

/**
 * Compares what devices hold of an item with what they should.
 *
 * @param emptied  of packs: devices of which all packs have left; else null
 */
export function holdings(item: Item, emptied: ReadonlySet<string> | null, takes: WhoTakes, policy: Policy): Holdings {
  const { asOf } = policy;
  const newcomers = takes.takers(item).flatMap(({ device, key, units }) => {
    const lacking = units - takes.holds(key, item);
    return !inServiceOn(device, asOf) && lacking > 0 ? [{ device, key, units: lacking, from: device.inService! }] : [];
  });
  const beside = otherThanCarried(item, takes, asOf);
  const none = devicesWithout(item, emptied, takes, asOf);
  // where two items that serve as well make up too few, the one of which there is more is lacking
  const isFirst = ({ key }: Taker) =>
    takes.alternativesOf(item).every((other) => {
      const more = takes.holds(key, item) - takes.holds(key, other);
      return more > 0 || (more === 0 && item.key < other.key);
    });
  const today = [...beside.under.filter(isFirst), ...none.without].map((lack) => ({ ...lack, from: asOf }));
  const isBought = policy.buyLacking === "yes";
  return {
    ...beside,
    ...none,
    lacks: isBought ? [...newcomers, ...today] : newcomers,
    left: isBought ? [] : today,
  };
}

/**
 * Devices that hold more or fewer than they carry: too few only where at least half of the holders hold all that they
 * should, and what serves as well makes up for it.
 */
function otherThanCarried(item: Item, takes: WhoTakes, asOf: Day): Pick<Holdings, "over" | "under"> {
  const carries = item.perDevice;
  if (carries === null) return { over: [], under: [] };
  const alike = [item, ...takes.alternativesOf(item)];
  const holders = [...takes.devices].filter(([key]) => takes.holds(key, item) > 0);
  const beside = (unitsAt: (key: string, device: DeviceRow) => number) =>
    holders.flatMap(([key, device]) => {
      const units = unitsAt(key, device);
      return units > 0 ? [{ key, device, units }] : [];
    });
  const under = beside((key, device) =>
    inServiceOn(device, asOf) ? carries - alike.reduce((sum, one) => sum + takes.holds(key, one), 0) : 0,
  );
  return {
    over: beside((key) => takes.holds(key, item) - carries),
    under: under.length > holders.length * (1 - SHARE_THAT_HOLD) ? [] : under,
  };
}

/**
 * Devices that take an item and have none, where most of their like have it: half of them where the catalogue says who
 * takes it, else nearly all. Of packs also those of which all packs have left.
 */
function devicesWithout(
  item: Item,
  emptied: ReadonlySet<string> | null,
  takes: WhoTakes,
  asOf: Day,
): Pick<Holdings, "without" | "byLike"> {
  const takers = takes.takers(item).filter(({ device }) => inServiceOn(device, asOf));
  const lacking = takers.filter(({ key }) => takes.holds(key, item) === 0);
  const byCatalogue = item.fits.size + item.carriedBy.size > 0;
  const share = byCatalogue ? SHARE_THAT_HOLD : SHARE_OF_A_KIND;
  const isOdd = takers.length - lacking.length >= takers.length * share;
  return {
    without: lacking.filter(({ key }) => isOdd || emptied?.has(key)),
    byLike: isOdd && !byCatalogue,
  };
}
