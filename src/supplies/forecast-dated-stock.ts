import type { Day } from "../calendar/day.ts";
import type { Finding } from "../fleet/finding.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet } from "../fleet/rows.ts";
import { orderOf } from "../maths/order-of.ts";
import { type KnownNeed, unitsServed } from "./chance-served.ts";
import { unitsUsed } from "./chance-used.ts";
import { crowdedMonths } from "./crowded-months.ts";
import { endlessReplacements } from "./endless-replacements.ts";
import type { ItemPlace } from "./item-place.ts";
import { type ItemPlaces, itemPlaces, type Needing } from "./item-places.ts";
import { lackingLeft } from "./lacking-left.ts";
import { proposeMoves } from "./moves.ts";
import { routineDays } from "./routine-days.ts";
import { stockFindings } from "./stock-findings.ts";
import { type StockTally, tallyStock } from "./stock-tally.ts";
import type { StockUnits } from "./stock-units.ts";
import { swapCalendar, visitsDue } from "./swap-calendar.ts";
import { countDue, swapCapacity } from "./swap-capacity.ts";
import type { CrowdedMonth, Move, SwapCapacity, SwapVisit } from "./types.ts";
import { fittableUntil } from "./unit-life.ts";
import { unneededStock } from "./unneeded-stock.ts";
import { usesLeftOut } from "./uses-left-out.ts";

/** Everything known ahead about dated stock. */
export interface DatedStockForecast {
  tally: StockTally;
  crowdedMonths: CrowdedMonth[];
  /** The latest visits that meet every expiry with `swaps_per_month`; empty where the policy does not say it. */
  swapCalendar: SwapVisit[];
  swapCapacity: SwapCapacity;
  /** Exchanges between places that save more units than they cost. */
  moves: Move[];
  /** Stock and use that do not fit the fleet. */
  findings: Finding[];
  /** What the planner must know of the swaps, and of stock that nothing needs or tells the life of. */
  cautions: string[];
  /** Who needs what where: the ground of demand; and every row of dated stock with its forecast. */
  needing: Needing;
}

const UNIT_USES = Float64Array.of(0, 1);

/**
 * Forecasts each row of dated stock (when it is swapped, how likely it is used before) and finds crowded months.
 * Expired stock is listed and never counted; held stock serves nothing.
 */
export function forecastDatedStock(fleet: Fleet, policy: Policy): DatedStockForecast {
  const needing = itemPlaces(fleet, policy);
  for (const ofItem of needing.items) {
    shareInstalled(ofItem, policy.asOf);
    shareOnShelves(ofItem, policy);
  }
  const { stock } = needing;
  const tally = tallyStock(stock, policy);
  const moves = needing.items.flatMap((ofItem) => proposeMoves(ofItem, policy));
  const capacity = swapCapacity(countDue(tally, policy), policy.swapsPerMonth);
  return {
    tally,
    crowdedMonths: crowdedMonths(stock, tally, moves, policy),
    swapCalendar:
      policy.swapsPerMonth === null ? [] : swapCalendar(stock, visitsDue(stock, policy), policy.swapsPerMonth, policy),
    swapCapacity: capacity,
    moves,
    findings: stockFindings(fleet, needing, policy),
    cautions: [
      ...usesLeftOut(fleet, policy),
      ...swapCautions(capacity),
      ...lackingLeft(needing),
      ...unneededStock(needing),
      ...endlessReplacements(needing),
    ],
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
function shareInstalled({ use, places, units }: ItemPlaces, asOf: Day): void {
  const unitsPerUse = use?.unitsPerUse ?? UNIT_USES;
  const lastDay = (at: number) => units.swapBy[at]!;
  for (const place of places) {
    if (place.use === null && place.routinePerYear === 0) continue;
    const here = units.servingFrom(place.stock, asOf);
    if (here.length > 0) shareOut(units, here, lastDay, (days, counts) => unitsUsed(days, counts, place, unitsPerUse));
  }
}

/** Units in stores, which serve every place, in FEFO order over all stores. */
function shareOnShelves({ item, use, places, stock, units }: ItemPlaces, policy: Policy): void {
  const lastDay = (at: number) => fittableUntil(units.rows[at]!, item, policy);
  const onShelf = units.onShelves(stock).filter((at) => lastDay(at) >= policy.asOf);
  if (onShelf.length === 0) return;
  const here = Int32Array.from(orderOf(onShelf.map(lastDay)), (place) => onShelf[place]!);
  const end = here.reduce((last, at) => Math.max(last, units.expiry[at]!), policy.asOf);
  const onShelves = units.unitsOf(here);
  const needs = {
    from: policy.asOf,
    known: places.flatMap((place) => knownNeeds(place, units, end, onShelves, policy)).sort(([a], [b]) => a - b),
    usesPerMonth: places.reduce((sum, { use }) => sum + (use ? use.rate.shape / use.rate.exposure : 0), 0),
    unitsPerUse: use?.unitsPerUse ?? UNIT_USES,
  };
  shareOut(units, here, lastDay, (days, counts) => unitsServed(days, counts, needs));
}

/** Needs at a place; of one row, of growth or of routine no more than the shelves' units, all that they can serve. */
function knownNeeds(
  place: ItemPlace,
  units: StockUnits,
  end: number,
  onShelves: number,
  { asOf }: Policy,
): KnownNeed[] {
  const needs = routineDays(place, end, onShelves).map((day): KnownNeed => [day, 1]);
  const add = (need: KnownNeed, count: number) => {
    for (let left = Math.min(count, onShelves); left > 0; left--) needs.push(need);
  };
  add([place.from, 1], place.lacking);
  for (const at of place.stock) {
    const day = units.rows[at]!.held === null ? Math.max(asOf, units.swapBy[at]!) : asOf;
    if (day < place.until) add([day, 1 - units.chanceUsed[at]!], units.quantity[at]!);
  }
  return needs;
}

/**
 * Gives each row the mean chance of its units.
 *
 * @param rows  their numbers, in the order of their last days
 * @param usedOf  units used of those of each last day, given the days, ascending, and the units of each
 */
function shareOut(
  { quantity, chanceUsed }: StockUnits,
  rows: Int32Array,
  lastDay: (row: number) => Day,
  usedOf: (days: readonly Day[], units: readonly number[]) => Float64Array,
): void {
  const days: Day[] = [];
  const units: number[] = [];
  for (let i = 0; i < rows.length; i++) {
    const day = lastDay(rows[i]!);
    const count = quantity[rows[i]!]!;
    if (day === days[days.length - 1]) units[units.length - 1]! += count;
    else {
      days.push(day);
      units.push(count);
    }
  }
  const used = usedOf(days, units);
  // rows of one last day are alike: each gets the mean of all their units, whatever the order of rows
  let run = 0;
  for (let i = 0; i < rows.length; i++) {
    if (lastDay(rows[i]!) !== days[run]) run++;
    chanceUsed[rows[i]!] = units[run] === 0 ? 0 : used[run]! / units[run]!;
  }
}
