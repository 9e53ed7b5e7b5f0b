import type { Day } from "../calendar/day.ts";
import { monthOfDay } from "../calendar/month.ts";
import { groupBy } from "../fleet/group-by.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Policy } from "../fleet/policy.ts";
import { type Remembered, rememberStages } from "../fleet/policy-reads.ts";
import type { LifeForecast } from "../life/types.ts";
import type { DatedStockForecast } from "../supplies/forecast-dated-stock.ts";
import type { ItemPlaces, Needing } from "../supplies/item-places.ts";
import type { Lack } from "../supplies/lacking-units.ts";
import { monthIndex, swapDay } from "../supplies/unit-life.ts";
import type { ComingLot } from "./fitted-lives.ts";
import { fittedSpares } from "./fitted-spares.ts";
import { itemDemand } from "./item-demand.ts";
import { type EnteringPack, endMonth, type PackNeeds, packNeeds } from "./pack-needs.ts";
import { placeNeeds } from "./place-needs.ts";
import type { DemandCause, ItemDemand } from "./types.ts";

/**
 * Gross needs (before stock) of every item by month, as distributions: every item of the catalogue and every item
 * that packs, dated stock, routine or the use log name. Needs of an item with `replaced_by` are its replacement's.
 *
 * @param remember  needs from earlier plans: those of packs hang on the packs' lives and not on dated stock, and the others
 *                  the other way round
 * @param coming    what is to be bought, by item key, where units of it lie on a shelf before they are fitted
 * @returns by item key
 */
export function forecastDemand(
  policy: Policy,
  life: LifeForecast,
  dated: DatedStockForecast,
  remember: Remembered = rememberStages(),
  coming: ReadonlyMap<string, readonly ComingLot[]> = new Map(),
): ItemDemand[] {
  const { needing } = dated;
  const packs = groupBy(life.packs.keys(), (index) => needing.book.find(life.packs[index]!.item).key);
  return needing.items.map((ofItem) =>
    demandOfItem(ofItem, packs.get(ofItem.item.key) ?? [], { policy, life, needing, remember, coming }),
  );
}

/** What the demand of every item rests on. */
interface Basis {
  policy: Policy;
  life: LifeForecast;
  needing: Needing;
  remember: Remembered;
  coming: ReadonlyMap<string, readonly ComingLot[]>;
}

/** @param packIndices  the item's packs, into the forecast's */
function demandOfItem(ofItem: ItemPlaces, packIndices: readonly number[], basis: Basis): ItemDemand {
  const { item } = ofItem;
  const { policy, life, remember, coming } = basis;
  const lots = coming.get(item.key) ?? [];
  const again = lots.length > 0 ? " again" : "";
  // each from what it hangs on alone, so that another end of life leaves what lies at places as it was
  const atPlaces = remember(`places of ${item.key}${again}`, [ofItem, JSON.stringify(lots)], policy, (choices) =>
    placeNeeds(ofItem, choices, lots),
  );
  const ofPacks = needsOfPacks(ofItem, packIndices, basis);
  return remember(`demand of ${item.key}${again}`, [atPlaces, ofPacks], policy, ({ asOf, horizonMonths }) => {
    const causes: Partial<Record<DemandCause, Float64Array>> = { ...atPlaces.causes };
    for (const [cause, units] of Object.entries(ofPacks?.causes ?? {}) as [DemandCause, Float64Array][]) {
      causes[cause] = units.map((count, m) => count + (causes[cause]?.[m] ?? 0));
    }
    return itemDemand({
      item: item.name,
      from: monthOfDay(asOf),
      months: horizonMonths,
      draws: life.draws,
      certain: atPlaces.certain,
      random: [atPlaces.needs, ofPacks?.needs].flatMap((part) => part ?? []),
      causes,
    });
  });
}

/** Needs of an item's packs in service and of those that devices lack; null where there are none. */
function needsOfPacks(
  { item, asPacks, held, stock, units }: ItemPlaces,
  packIndices: readonly number[],
  { policy, life, needing: { book, takes }, remember }: Basis,
): PackNeeds | null {
  const enter = (choices: Policy) => (asPacks ? held.lacks.flatMap((lack) => packsLacking(lack, choices)) : []);
  if (packIndices.length + enter(policy).length === 0) return null;
  const key = (index: number) => nameKey(life.packs[index]!.pack.serial);
  const inOrder = [...packIndices].sort((a, b) => (key(a) < key(b) ? -1 : 1));
  // What the life forecast, who takes what and shelves rest on, the sheets and as-of, is the same where `life` is.
  return remember(`packs of ${item.key}`, [life, policy.buyLacking], policy, (choices) => {
    const first = monthOfDay(choices.asOf);
    const entering = enter(choices);
    const needs = (spares: readonly EnteringPack[]) =>
      packNeeds(item, life, { inService: inOrder, entering: [...entering, ...spares] }, takes, first);
    const alone = needs([]);
    const ofItem = life.stock.filter(({ pack }) => book.find(pack.item!).key === item.key);
    const lapses = units
      .onShelves(stock)
      .flatMap((at) => Array<Day>(units.quantity[at]!).fill(swapDay(units.rows[at]!, item, choices, false)));
    const dueIn = [...ofItem.flatMap(({ due }) => due ?? []), ...lapses].map((day) => monthOfDay(day) - first);
    const fitted = fittedSpares(dueIn, alone);
    return fitted.length === 0 ? alone : needs(fitted);
  });
}

/** Packs that a device lacks, where the plan comes to the day on which it needs them. */
function packsLacking({ device, units, from }: Lack, policy: Policy): EnteringPack[] {
  const enters = monthIndex(from, policy);
  if (enters >= policy.horizonMonths) return [];
  const end = endMonth(device.retired, monthOfDay(policy.asOf), policy.horizonMonths);
  return Array<EnteringPack>(units).fill({ enters, chance: 1, cause: "growth", end });
}
