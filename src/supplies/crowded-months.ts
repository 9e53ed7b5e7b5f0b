import { ckmeans } from "simple-statistics";
import { type Month, monthOfDay } from "../calendar/month.ts";
import { groupBy } from "../fleet/group-by.ts";
import type { Item } from "../fleet/item-book.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Policy } from "../fleet/policy.ts";
import { fullestCellChance, widestClusterChance } from "../maths/scan-statistic.ts";
import { describeCrowd } from "./describe-crowd.ts";
import type { StockTally } from "./stock-tally.ts";
import type { StockUnits } from "./stock-units.ts";
import type { CrowdedMonth, Move } from "./types.ts";

/** A crowd is at least this many times the even share (our rule; common practice has no figure). */
const TIMES_EVEN_SHARE = 2;
/** Fewer units are no crowd, however uneven. */
const LEAST_UNITS = 5;
/** Chance under an even spread below which a crowd is no accident. */
const SIGNIFICANT = 0.01;
/** An even spread is judged over at least a year, so that a fleet with one purchase still shows its crowd. */
const LEAST_MONTHS = 12;
/** Clusters are added until they leave less than this share of the spread of due months. */
const SPREAD_LEFT = 0.1;
const MOST_CLUSTERS = 12;
/** Months are clustered from about this many points: more deliveries sharpen nothing. */
const POINTS_CLUSTERED = 400;

/**
 * Months in which far more units of an item fall due than an even spread would bring, by item and month.
 *
 * The even spread runs from as-of's month to the last month of the horizon in which a unit falls due (a year at
 * least). Points of the scan are deliveries, not units: units of one lot and expiry at one place came together and
 * lapse together, which is no crowd by itself.
 */
export function crowdedMonths(
  stock: StockUnits,
  { due }: StockTally,
  moves: readonly Move[],
  policy: Policy,
): CrowdedMonth[] {
  const first = monthOfDay(policy.asOf);
  const unitsOf = new Map<Item, Map<Month, number>>();
  stock.names.forEach(({ item }, number) => {
    const unitsIn = unitsOf.get(item) ?? new Map<Month, number>();
    unitsOf.set(item, unitsIn);
    due[number]!.slice(1, -1).forEach((units, month) => {
      if (units > 0) unitsIn.set(first + month, (unitsIn.get(first + month) ?? 0) + units);
    });
  });
  const isDue = (at: number) =>
    stock.serves[at] === 1 && stock.swapBy[at]! >= policy.asOf && stock.swapMonth[at]! < first + policy.horizonMonths;
  return [...unitsOf]
    .sort(([a], [b]) => (a.key < b.key ? -1 : 1))
    .flatMap(([item, unitsIn]) => {
      // hardly an item has a crowd, and so its rows are looked up late
      const dueRows = () => stock.where((at) => stock.itemOf(at) === item && isDue(at));
      return crowdsOfItem(item, unitsIn, { stock, dueRows }, moves, policy);
    });
}

function crowdsOfItem(
  item: Item,
  unitsIn: ReadonlyMap<Month, number>,
  { stock, dueRows }: { stock: StockUnits; dueRows: () => number[] },
  moves: readonly Move[],
  policy: Policy,
): CrowdedMonth[] {
  const first = monthOfDay(policy.asOf);
  const last = Math.max(first, ...unitsIn.keys());
  const months = Math.min(policy.horizonMonths, Math.max(LEAST_MONTHS, last - first + 1));
  const evenShare = [...unitsIn.values()].reduce((a, b) => a + b, 0) / months;
  const mayBeCrowded = (count: number) => count >= LEAST_UNITS && count >= TIMES_EVEN_SHARE * evenShare;
  if (![...unitsIn.values()].some(mayBeCrowded)) return [];
  const byMonth = new Map([...groupBy(dueRows(), (at) => stock.swapMonth[at]!)].sort(([a], [b]) => a - b));
  const deliveries = new Map([...byMonth].map(([month, ofMonth]) => [month, deliveriesOf(stock, ofMonth)]));
  const points = [...deliveries.values()].reduce((a, b) => a + b, 0);
  let clusters: Month[][] | null = null;
  const crowded: CrowdedMonth[] = [];
  for (const [month, ofMonth] of byMonth) {
    const count = unitsIn.get(month)!;
    if (!mayBeCrowded(count)) continue;
    const pValue = fullestCellChance(points, months, deliveries.get(month)!);
    if (pValue >= SIGNIFICANT) continue;
    clusters ??= clusterMonths(deliveries, points);
    const cluster = clusters.find((members) => members.includes(month)) ?? [month];
    const span = { from: cluster[0]!, to: cluster[cluster.length - 1]! };
    const lots = new Map(ofMonth.flatMap((at) => lotAt(stock, at)));
    const places = new Set(ofMonth.map((at) => stock.keyAt[at])).size;
    const [name = item.name, ...otherNames] = new Set(ofMonth.map((at) => stock.names[stock.nameAt[at]!]!.name));
    const found = {
      // who looks for what lapses must find it, also where something else is bought in its place
      item: otherNames.length > 0 ? item.name : name,
      month,
      units: count,
      evenShare,
      pValue,
      span,
      lots: [...lots.values()].sort(),
      places,
    };
    const inSpan = cluster.reduce((sum, member) => sum + (deliveries.get(member) ?? 0), 0);
    // one unit fewer than a crowd
    const most = Math.max(LEAST_UNITS, Math.ceil(TIMES_EVEN_SHARE * evenShare)) - 1;
    const roomBefore = [1, 2, 3]
      .filter((back) => month - back >= first)
      .reduce((room, back) => room + Math.max(0, most - (unitsIn.get(month - back) ?? 0)), 0);
    const spanChance = widestClusterChance(points, cluster.length / months, inSpan);
    crowded.push({
      ...found,
      says: describeCrowd(found, {
        item,
        spanChance,
        used: ofMonth.reduce((sum, at) => sum + stock.quantity[at]! * stock.chanceUsed[at]!, 0),
        moved: unitsMoved(stock, ofMonth, moves),
        tooMany: count - most,
        roomBefore,
      }),
    });
  }
  return crowded;
}

/** Units of a month that moves carry away from where they stand. */
function unitsMoved(stock: StockUnits, ofMonth: readonly number[], moves: readonly Move[]): number {
  const here = new Set(
    ofMonth.map((at) => {
      const { item, lot } = stock.rows[at]!;
      return `${item}\n${stock.placeOf(at).key}\n${lot ?? ""}\n${stock.swapBy[at]}`;
    }),
  );
  return moves.reduce((sum, { item, from, lot, swapBy, quantity }) => {
    return here.has(`${item}\n${nameKey(from)}\n${lot ?? ""}\n${swapBy}`) ? sum + quantity : sum;
  }, 0);
}

function deliveriesOf(stock: StockUnits, due: readonly number[]): number {
  return new Set(due.map((at) => `${stock.keyAt[at]}\n${lotAt(stock, at)[0]?.[0] ?? ""}\n${stock.expiry[at]}`)).size;
}

/** A row's lot by its key and as it is spelled; empty where it names none. */
function lotAt({ rows }: StockUnits, at: number): [key: string, lot: string][] {
  const lot = rows[at]!.lot;
  return lot === null ? [] : [[nameKey(lot), lot.trim()]];
}

/** Due months in natural groups, each ascending. */
function clusterMonths(deliveries: ReadonlyMap<Month, number>, points: number): Month[][] {
  const scale = Math.min(1, POINTS_CLUSTERED / points);
  const months = [...deliveries].flatMap(([month, count]) =>
    new Array<Month>(Math.max(1, Math.round(count * scale))).fill(month),
  );
  const total = spread([months]);
  let clusters = [months];
  for (let k = 2; k <= Math.min(MOST_CLUSTERS, deliveries.size) && spread(clusters) > SPREAD_LEFT * total; k++) {
    clusters = ckmeans(months, k);
  }
  return clusters.map((cluster) => [...new Set(cluster)].sort((a, b) => a - b));
}

function spread(clusters: readonly Month[][]): number {
  return clusters.reduce((sum, cluster) => {
    const mean = cluster.reduce((a, b) => a + b, 0) / cluster.length;
    return sum + cluster.reduce((a, month) => a + (month - mean) ** 2, 0);
  }, 0);
}
