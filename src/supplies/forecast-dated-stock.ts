import type { Day } from "../calendar/day.ts";
import type { Finding } from "../fleet/finding.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet } from "../fleet/rows.ts";
import { chancesServed } from "./chance-served.ts";
import { chancesUsed } from "./chance-used.ts";
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
  for (const ofItem of needing.items) {
    shareInstalled(ofItem, policy.asOf);
    shareOnShelves(ofItem, policy);
  }
  const units = [...needing.stock];
  const moves = needing.items.flatMap((ofItem) => proposeMoves(ofItem, policy));
  const capacity = swapCapacity(countDue(units, policy), policy.swapsPerMonth);
  return {
    units,
    crowdedMonths: crowdedMonths(units, moves, policy),
    swapCalendar:
      policy.swapsPerMonth === null ? [] : swapCalendar(visitsDue(units, policy), policy.swapsPerMonth, policy),
    swapCapacity: capacity,
    moves,
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
function shareInstalled({ use, places }: ItemPlaces, asOf: Day): void {
  for (const place of places) {
    if (place.use === null && place.routinePerYear === 0) continue;
    const here = place.stock.filter(({ row, swapBy }) => swapBy >= asOf && row.held === null && row.quantity > 0);
    if (here.length === 0) continue;
    shareOut(
      here,
      here.map(({ swapBy }) => swapBy),
      (days) => chancesUsed(days, place, use?.unitsPerUse ?? UNIT_USES),
    );
  }
}

/** Units in stores, which serve every place, in FEFO order over all stores. */
function shareOnShelves({ item, use, places, stock }: ItemPlaces, policy: Policy): void {
  const lastDay = ({ row }: StockUnit) => fittableUntil(row, item, policy);
  const here = stock.filter(
    (unit) => !unit.installed && !unit.stranded && unit.row.held === null && lastDay(unit) >= policy.asOf,
  );
  if (here.length === 0) return;
  const end = here.reduce((last, { row }) => Math.max(last, row.expiry), policy.asOf);
  const needs = {
    from: policy.asOf,
    knownDays: places.flatMap((place) => knownNeeds(place, end)).sort((a, b) => a - b),
    usesPerMonth: places.reduce((sum, { use }) => sum + (use ? use.rate.shape / use.rate.exposure : 0), 0),
    unitsPerUse: use?.unitsPerUse ?? UNIT_USES,
  };
  shareOut(here, here.map(lastDay), (days) => chancesServed(days, needs));
}

function knownNeeds(place: ItemPlace, end: number): number[] {
  const growth = new Array<number>(place.lacking).fill(place.from);
  return [...place.swapDays.filter((day) => day < place.until), ...growth, ...routineDays(place, end)];
}

/**
 * Gives each row the mean chance of its units.
 *
 * @param lastDay  by row
 * @param chancesOf  takes the last days of all units, ascending
 */
function shareOut(
  units: readonly StockUnit[],
  lastDay: readonly Day[],
  chancesOf: (lastDays: number[]) => Float64Array,
): void {
  const rows = [...units.keys()].sort((a, b) => lastDay[a]! - lastDay[b]!);
  const lastDays: number[] = [];
  for (const row of rows) for (let left = units[row]!.row.quantity; left > 0; left--) lastDays.push(lastDay[row]!);
  const chances = chancesOf(lastDays);
  // rows of one last day are alike: each gets the mean of all their units, whatever the order of rows
  for (let at = 0, from = 0; at < rows.length; ) {
    const first = at;
    const day = lastDay[rows[at]!]!;
    let to = from;
    while (at < rows.length && lastDay[rows[at]!] === day) to += units[rows[at++]!]!.row.quantity;
    let total = 0;
    for (let unit = from; unit < to; unit++) total += chances[unit]!;
    const mean = to === from ? 0 : total / (to - from);
    for (let alike = first; alike < at; alike++) units[rows[alike]!]!.chanceUsed = mean;
    from = to;
  }
}
