import type { Day } from "../calendar/day.ts";
import type { Finding } from "../fleet/finding.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet } from "../fleet/rows.ts";
import { orderOf } from "../maths/order-of.ts";
import { unitsServed } from "./chance-served.ts";
import { usedByDay } from "./chance-used.ts";
import { crowdedMonths } from "./crowded-months.ts";
import type { ItemPlace } from "./item-place.ts";
import { type ItemPlaces, itemPlaces, type Needing } from "./item-places.ts";
import { proposeMoves } from "./moves.ts";
import { routineDays } from "./routine-days.ts";
import { stockFindings } from "./stock-findings.ts";
import type { StockUnit } from "./stock-units.ts";
import { swapCalendar, visitsDue } from "./swap-calendar.ts";
import { countDue, swapCapacity } from "./swap-capacity.ts";
import type { CrowdedMonth, DatedUnit, Move, SwapCapacity, SwapVisit } from "./types.ts";
import { fittableUntil } from "./unit-life.ts";
import { runsOf } from "./unit-runs.ts";
import { unneededStock } from "./unneeded-stock.ts";

/** Everything known ahead about dated stock. */
export interface DatedStockForecast {
  /** In the order of the fleet's rows. */
  units: readonly DatedUnit[];
  crowdedMonths: CrowdedMonth[];
  /** The latest visits that meet every expiry with `swaps_per_month`; empty where the policy does not say it. */
  swapCalendar: SwapVisit[];
  swapCapacity: SwapCapacity;
  /** Exchanges between places that save more units than they cost. */
  moves: Move[];
  /** Stock and use that do not fit the fleet. */
  findings: Finding[];
  /** What the planner must know of the swaps, and of stock that nothing needs. */
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
  for (const ofItem of needing.items) {
    shareInstalled(ofItem, policy.asOf);
    shareOnShelves(ofItem, policy);
  }
  const units = needing.stock;
  const moves = needing.items.flatMap((ofItem) => proposeMoves(ofItem, policy));
  const capacity = swapCapacity(countDue(needing.items, policy), policy.swapsPerMonth);
  return {
    units,
    crowdedMonths: crowdedMonths(units, moves, policy),
    swapCalendar:
      policy.swapsPerMonth === null ? [] : swapCalendar(visitsDue(units, policy), policy.swapsPerMonth, policy),
    swapCapacity: capacity,
    moves,
    findings: stockFindings(fleet, needing, policy),
    cautions: [...swapCautions(capacity), ...unneededStock(needing)],
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
function shareInstalled({ use, places }: ItemPlaces, asOf: Day): void {
  const unitsPerUse = use?.unitsPerUse ?? UNIT_USES;
  for (const place of places) {
    if (place.use === null && place.routinePerYear === 0) continue;
    const here: StockUnit[] = [];
    for (const unit of place.stock) {
      const { row, swapBy } = unit;
      if (swapBy >= asOf && row.held === null && row.quantity > 0) here.push(unit);
    }
    if (here.length > 0) shareOut(here, swapDayOf, (days, units) => usedByDay(days, units, place, unitsPerUse));
  }
}

function swapDayOf({ swapBy }: StockUnit): Day {
  return swapBy;
}

/** Units in stores, which serve every place, in FEFO order over all stores. */
function shareOnShelves({ item, use, places, stock }: ItemPlaces, policy: Policy): void {
  const lastDay = ({ row }: StockUnit) => fittableUntil(row, item, policy);
  const here = stock.filter(
    (unit) => !unit.installed && !unit.stranded && unit.row.held === null && lastDay(unit) >= policy.asOf,
  );
  if (here.length === 0) return;
  const end = here.reduce((last, { row }) => Math.max(last, row.expiry), policy.asOf);
  const onShelves = here.reduce((sum, { row }) => sum + row.quantity, 0);
  const needs = {
    from: policy.asOf,
    knownDays: places.flatMap((place) => knownNeeds(place, end, onShelves, policy)).sort((a, b) => a - b),
    usesPerMonth: places.reduce((sum, { use }) => sum + (use ? use.rate.shape / use.rate.exposure : 0), 0),
    unitsPerUse: use?.unitsPerUse ?? UNIT_USES,
  };
  shareOut(here, lastDay, (days, units) => unitsServed(runsOf(days, units), needs));
}

/** Days of needs at a place; of one row or of growth no more than the shelves' units, which is all they can serve. */
function knownNeeds(place: ItemPlace, end: number, onShelves: number, { asOf }: Policy): number[] {
  const days = new Array<number>(Math.min(place.lacking, onShelves)).fill(place.from);
  for (const { row, swapBy } of place.stock) {
    const day = row.held === null ? Math.max(asOf, swapBy) : asOf;
    if (day >= place.until) continue;
    for (let left = Math.min(row.quantity, onShelves); left > 0; left--) days.push(day);
  }
  return [...days, ...routineDays(place, end)];
}

/**
 * Gives each row the mean chance of its units.
 *
 * @param usedOf  units used of those of each last day, given the days, ascending, and the units of each
 */
function shareOut(
  rows: readonly StockUnit[],
  lastDay: (unit: StockUnit) => Day,
  usedOf: (days: readonly Day[], units: readonly number[]) => readonly number[],
): void {
  const lastDays = rows.map(lastDay);
  const order = orderOf(lastDays);
  const days: Day[] = [];
  const units: number[] = [];
  for (let at = 0; at < order.length; at++) {
    const day = lastDays[order[at]!]!;
    const { quantity } = rows[order[at]!]!.row;
    if (days[days.length - 1] === day) units[units.length - 1]! += quantity;
    else {
      days.push(day);
      units.push(quantity);
    }
  }
  const used = usedOf(days, units);
  // rows of one last day are alike: each gets the mean of all their units, whatever the order of rows
  let run = 0;
  for (let at = 0; at < order.length; at++) {
    if (days[run] !== lastDays[order[at]!]) run++;
    rows[order[at]!]!.chanceUsed = units[run] === 0 ? 0 : used[run]! / units[run]!;
  }
}
