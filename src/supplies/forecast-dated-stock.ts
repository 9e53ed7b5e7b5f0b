import type { Finding } from "../fleet/finding.ts";
import { groupBy } from "../fleet/group-by.ts";
import type { Item } from "../fleet/item-book.ts";
import type { Policy } from "../fleet/policy.ts";
import { type DatedStockRow, type Fleet, nameKey } from "../fleet/rows.ts";
import { chancesServed } from "./chance-served.ts";
import { chancesUsed } from "./chance-used.ts";
import { crowdedMonths } from "./crowded-months.ts";
import { type ItemPlace, type ItemPlaces, itemPlaces, type Needing } from "./item-places.ts";
import { proposeMoves } from "./moves.ts";
import { routineDays } from "./routine-days.ts";
import { stockFindings } from "./stock-findings.ts";
import { swapCalendar, swapCapacity, visitsDue } from "./swap-calendar.ts";
import type { CrowdedMonth, DatedUnit, Move, SwapCapacity, SwapVisit } from "./types.ts";
import { fittableUntil, swapDay } from "./unit-life.ts";

/** Everything known ahead about dated stock. */
export interface DatedStockForecast {
  /** In the order of the fleet's rows. */
  units: DatedUnit[];
  crowdedMonths: CrowdedMonth[];
  /** The latest visits that meet every expiry with `swaps_per_month`; empty where the policy does not say it. */
  swapCalendar: SwapVisit[];
  swapCapacity: SwapCapacity;
  /** Exchanges between places that save more units than they cost. */
  moves: Move[];
  /** Stock and use that do not fit the fleet. */
  findings: Finding[];
  /** What the planner must know of the swaps. */
  cautions: string[];
  /** Who needs what where: the ground of demand. */
  needing: Needing;
}

const UNIT_USES = Float64Array.of(0, 1);

/**
 * Forecasts each row of dated stock (when it is swapped, how likely it is used before) and finds crowded months.
 * Expired stock is listed and never counted; held stock serves nothing.
 */
export function forecastDatedStock(fleet: Fleet, policy: Policy): DatedStockForecast {
  const needing = itemPlaces(fleet, policy);
  const shareUsed = new Map<DatedStockRow, number>();
  const rowsOf = groupBy(fleet.datedStock, (row) => needing.book.find(row.item).key);
  for (const ofItem of needing.items) {
    shareInstalled(ofItem, rowsOf.get(ofItem.item.key) ?? [], policy, shareUsed);
    shareOnShelves(ofItem, rowsOf.get(ofItem.item.key) ?? [], needing, policy, shareUsed);
  }
  const units = fleet.datedStock.map((row) => {
    const installed = row.place !== null && needing.takes.devices.has(nameKey(row.place));
    const swapBy = swapDay(row, needing.book.find(row.item), policy);
    return { row, installed, swapBy, chanceUsed: shareUsed.get(row) ?? 0 };
  });
  const visits = visitsDue(units, policy);
  const capacity = swapCapacity(visits, policy.swapsPerMonth);
  return {
    units,
    crowdedMonths: crowdedMonths(units, needing.book, policy),
    swapCalendar: policy.swapsPerMonth === null ? [] : swapCalendar(visits, policy.swapsPerMonth, policy),
    swapCapacity: capacity,
    moves: needing.items.flatMap((ofItem) => proposeMoves(ofItem, rowsOf.get(ofItem.item.key) ?? [], policy)),
    findings: stockFindings(fleet, needing, policy),
    cautions: swapCautions(capacity),
    needing,
  };
}

function swapCautions({ perMonth, smallest, enough }: SwapCapacity): string[] {
  if (enough) return [];
  return [
    `With ${perMonth} swap ${perMonth === 1 ? "visit" : "visits"} a month not every expiry can be met: it takes ${smallest}. ` +
      "The swap calendar puts the visits over the limit into as-of's month.",
  ];
}

/** Units at devices, in FEFO order at each. */
function shareInstalled(
  { item, use, places }: ItemPlaces,
  rows: readonly DatedStockRow[],
  policy: Policy,
  shareUsed: Map<DatedStockRow, number>,
): void {
  const byPlace = groupBy(rows, (row) => nameKey(row.place ?? ""));
  for (const place of places) {
    const here = (byPlace.get(place.key) ?? []).filter((row) => place.device !== null && isGood(row, item, policy));
    if (here.length === 0 || (place.use === null && place.routinePerYear === 0)) continue;
    shareOut(
      here,
      (row) => swapDay(row, item, policy),
      shareUsed,
      (days) => chancesUsed(days, place, use?.unitsPerUse ?? UNIT_USES),
    );
  }
}

/** Units in stores, which serve every place, in FEFO order over all stores. */
function shareOnShelves(
  { item, use, places }: ItemPlaces,
  rows: readonly DatedStockRow[],
  { takes }: Needing,
  policy: Policy,
  shareUsed: Map<DatedStockRow, number>,
): void {
  const inStore = rows.filter((row) => {
    const key = nameKey(row.place ?? "");
    return !takes.devices.has(key) && !takes.retired.has(key) && fittableUntil(row, item, policy) >= policy.asOf;
  });
  const here = inStore.filter((row) => row.held === null);
  if (here.length === 0) return;
  const end = here.reduce((last, row) => Math.max(last, row.expiry), policy.asOf);
  const needs = {
    from: policy.asOf,
    knownDays: places.flatMap((place) => knownNeeds(place, end)).sort((a, b) => a - b),
    usesPerMonth: places.reduce((sum, { use }) => sum + (use ? use.rate.shape / use.rate.exposure : 0), 0),
    unitsPerUse: use?.unitsPerUse ?? UNIT_USES,
  };
  shareOut(
    here,
    (row) => fittableUntil(row, item, policy),
    shareUsed,
    (days) => chancesServed(days, needs),
  );
}

function knownNeeds(place: ItemPlace, end: number): number[] {
  const growth = new Array<number>(place.lacking).fill(place.from);
  return [...place.swapDays.filter((day) => day < place.until), ...growth, ...routineDays(place, end)];
}

function isGood(row: DatedStockRow, item: Item, policy: Policy): boolean {
  return row.held === null && row.quantity > 0 && swapDay(row, item, policy) >= policy.asOf;
}

/** Gives each row the mean chance of its units, where `chancesOf` takes the last days of all units, ascending. */
function shareOut(
  rows: readonly DatedStockRow[],
  lastDay: (row: DatedStockRow) => number,
  shareUsed: Map<DatedStockRow, number>,
  chancesOf: (lastDays: number[]) => Float64Array,
): void {
  const inOrder = [...rows].sort((a, b) => lastDay(a) - lastDay(b));
  const chances = chancesOf(inOrder.flatMap((row) => new Array<number>(row.quantity).fill(lastDay(row))));
  // rows of one last day are alike: each gets the mean of all their units, whatever the order of rows
  let from = 0;
  for (const [, alike] of groupBy(inOrder, lastDay)) {
    const count = alike.reduce((sum, row) => sum + row.quantity, 0);
    const mean = count === 0 ? 0 : chances.subarray(from, from + count).reduce((a, b) => a + b, 0) / count;
    for (const row of alike) shareUsed.set(row, mean);
    from += count;
  }
}
