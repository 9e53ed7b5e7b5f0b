import type { Day } from "../calendar/day.ts";

/** A place that can give and take units of one item. */
export interface MovePlace {
  /** Swap days of its movable units, ascending. */
  days: Day[];
  /** Expected units used before their swap days, for a set of swap days (ascending) of the place's size. */
  value(days: readonly Day[]): number;
  /** Expected uses by a day, to find places that use much. */
  expectedUses(day: Day): number;
}

/** What a search found: the swap days that each place ends with, and the units saved by it before costs. */
export interface MovesFound {
  days: Day[][];
  saved: number;
}

/** Allocations up to which all are looked at: the result is then the best there is. */
const MOST_ALLOCATIONS = 20_000;
/** Exchanges proposed for an item at the most, the most valuable first: a round of visits has an end. */
const MOST_EXCHANGES = 60;
/** Offers looked at in each step, from the one with most to gain. */
const OFFERS_TRIED = 40;
/** Places, those that use most by the day in question, that are tried as takers of a unit. */
const TAKERS_TRIED = 12;

/**
 * Exchanges of units between places, every place keeping its count, that raise the units expected to be used before
 * they lapse by more than their cost. Exact where the allocations are few; else step by step (see `exchangeSteps`),
 * whose gap to the best is measured in the tests.
 *
 * @param costPerUnitMoved  in units; an exchange moves two
 */
export function searchMoves(places: readonly MovePlace[], costPerUnitMoved: number): MovesFound {
  return (bestAllocation(places, costPerUnitMoved) ?? exchangeSteps(places, costPerUnitMoved)) as MovesFound;
}

/** The best allocation of all, or null where there are too many of them. */
export function bestAllocation(places: readonly MovePlace[], costPerUnitMoved: number): MovesFound | null {
  const all = places.flatMap((place) => place.days).sort((a, b) => a - b);
  const distinct = [...new Set(all)];
  const left = distinct.map((day) => all.filter((other) => other === day).length);
  if (allocations(places, left) > MOST_ALLOCATIONS) return null;
  const before = places.map((place) => distinct.map((day) => place.days.filter((other) => other === day).length));
  const start = places.reduce((sum, place) => sum + place.value(place.days), 0);
  const memo = places.map(() => new Map<string, number>());
  const chosen: Day[][] = places.map(() => []);
  let best: MovesFound & { net: number } = { days: places.map((place) => [...place.days]), saved: 0, net: 0 };
  const give = (index: number, value: number, moved: number) => {
    if (index === places.length) {
      const saved = value - start;
      const net = saved - moved * costPerUnitMoved;
      // a hair more is rounding, which must not move anything
      if (net > best.net + 1e-9) best = { days: chosen.map((days) => [...days]), saved, net };
      return;
    }
    const place = places[index]!;
    forEachChoice(left, place.days.length, (counts) => {
      const days = distinct.flatMap((day, d) => new Array<Day>(counts[d]!).fill(day));
      const key = counts.join(",");
      const known = memo[index]!.get(key) ?? place.value(days);
      memo[index]!.set(key, known);
      const arrived = counts.reduce((sum, count, d) => sum + Math.max(0, count - before[index]![d]!), 0);
      chosen[index] = days;
      for (let d = 0; d < left.length; d++) left[d] = left[d]! - counts[d]!;
      give(index + 1, value + known, moved + arrived);
      for (let d = 0; d < left.length; d++) left[d] = left[d]! + counts[d]!;
    });
  };
  give(0, 0, 0);
  return best;
}

/** Number of ways to share the units among the places, or more than the limit. */
function allocations(places: readonly MovePlace[], left: readonly number[]): number {
  let ways = 1;
  let remaining = left.reduce((a, b) => a + b, 0);
  for (const { days } of places) {
    ways *= Math.min(choose(remaining, days.length), (days.length + 1) ** Math.max(0, left.length - 1));
    remaining -= days.length;
    if (ways > MOST_ALLOCATIONS) break;
  }
  return ways;
}

function choose(n: number, k: number): number {
  let ways = 1;
  for (let i = 1; i <= k; i++) ways = (ways * (n - k + i)) / i;
  return ways;
}

/** Every way to take `size` units from the classes left. */
function forEachChoice(left: readonly number[], size: number, take: (counts: number[]) => void): void {
  const counts = new Array<number>(left.length).fill(0);
  const fill = (at: number, remaining: number) => {
    if (at === left.length - 1) {
      if (remaining > left[at]!) return;
      counts[at] = remaining;
      take([...counts]);
      return;
    }
    for (let count = Math.min(left[at]!, remaining); count >= 0; count--) {
      counts[at] = count;
      fill(at + 1, remaining - count);
    }
    counts[at] = 0;
  };
  if (left.length > 0) fill(0, size);
}

/**
 * Exchanges one unit for a later one at a time, each time the exchange that gains most for its two places together.
 * Places are gone through from the one that could gain most by giving, and no further than that bound reaches.
 */
export function exchangeSteps(places: readonly MovePlace[], costPerUnitMoved: number): MovesFound {
  const state = places.map((place) => ({ place, days: [...place.days], value: place.value(place.days) }));
  const latest = state.reduce((last, { days }) => Math.max(last, days[days.length - 1] ?? last), 0);
  const cost = 2 * costPerUnitMoved;
  let saved = 0;
  let offers = state.flatMap((_, index) => offersOf(state, index, latest));
  for (let step = 0; step < MOST_EXCHANGES; step++) {
    const found = bestExchange(state, offers, cost);
    if (!found) break;
    saved += found.gain;
    for (const { index, days, value } of found.after) {
      state[index]!.days = days;
      state[index]!.value = value;
      offers = [...offers.filter((offer) => offer.from !== index), ...offersOf(state, index, latest)];
    }
  }
  return { days: state.map(({ days }) => days), saved };
}

interface PlaceState {
  place: MovePlace;
  days: Day[];
  value: number;
}

/** A unit that its place might give, with the most that its place can gain by that. */
interface Offer {
  from: number;
  day: Day;
  bound: number;
}

function offersOf(state: readonly PlaceState[], from: number, latest: Day): Offer[] {
  const { place, days, value } = state[from]!;
  return [...new Set(days)]
    .filter((day) => day < latest)
    .map((day) => ({ from, day, bound: place.value(replaced(days, day, latest)) - value }));
}

interface Exchange {
  gain: number;
  after: { index: number; days: Day[]; value: number }[];
}

function bestExchange(state: readonly PlaceState[], offers: readonly Offer[], cost: number): Exchange | null {
  const inOrder = [...offers].sort((a, b) => b.bound - a.bound || a.from - b.from || a.day - b.day);
  let best: Exchange | null = null;
  let most = Math.max(cost, 0);
  for (const { from, day, bound } of inOrder.slice(0, OFFERS_TRIED)) {
    if (bound <= most) break;
    // a hair more than the cost is rounding, which must not move anything
    const found = bestTaker(state, from, day, most + 1e-9);
    if (found === null) continue;
    best = found;
    most = found.gain;
  }
  return best;
}

/** The exchange of a unit that gains most for both places; null where none gains more than `above`. */
function bestTaker(state: readonly PlaceState[], from: number, day: Day, above: number): Exchange | null {
  const giver = state[from]!;
  const takers = state
    .map((taker, index) => {
      const sooner = taker.days.filter((other) => other <= day).length;
      return { index, slack: taker.place.expectedUses(day) - sooner };
    })
    .filter(({ index }) => index !== from && state[index]!.days[state[index]!.days.length - 1]! > day)
    .sort((a, b) => b.slack - a.slack || a.index - b.index)
    .slice(0, TAKERS_TRIED);
  let best: Exchange | null = null;
  let most = above;
  for (const { index } of takers) {
    const taker = state[index]!;
    const later = [...new Set(taker.days)].filter((given) => given > day);
    for (const given of later.reverse()) {
      const fromDays = replaced(giver.days, day, given);
      const fromValue = giver.place.value(fromDays);
      // all the gain is the giver's, since the taker's unit expires sooner, and it grows with the day given
      if (fromValue - giver.value <= most) break;
      const toDays = replaced(taker.days, given, day);
      const toValue = taker.place.value(toDays);
      const gain = fromValue - giver.value + toValue - taker.value;
      if (gain <= most + 1e-12) continue;
      most = gain;
      const after = [
        { index: from, days: fromDays, value: fromValue },
        { index, days: toDays, value: toValue },
      ];
      best = { gain, after };
    }
  }
  return best;
}

/** The days, ascending, with one `out` replaced by `into`. */
function replaced(days: readonly Day[], out: Day, into: Day): Day[] {
  const next = [...days];
  next[next.indexOf(out)] = into;
  return next.sort((a, b) => a - b);
}
