import {
  type Exchange,
  type Offer,
  offerOf,
  type PlaceState,
  ROUNDING,
  stateAfter,
  stateOf,
  tryOn,
} from "./exchange-state.ts";
import type { MovePlace, MovesFound } from "./move-place.ts";
import { TakersByDay } from "./takers-by-day.ts";

/** Exchanges proposed for an item at the most, the most valuable first: a round of visits has an end. */
const MOST_EXCHANGES = 60;
/** Offers looked at in each step, from the one with most to gain. */
const OFFERS_TRIED = 40;
/** Places, those that use most by the day in question, that are tried as takers of a unit. */
const TAKERS_TRIED = 12;

/**
 * Exchanges one unit for a later one at a time, each time the exchange that gains most for its two places together.
 * Places are gone through from the one that could gain most by giving, and no further than that bound reaches.
 */
export function exchangeSteps(places: readonly MovePlace[], costPerUnitMoved: number): MovesFound {
  const state = places.map(stateOf);
  const latest = state.reduce((last, { days }) => Math.max(last, days[days.length - 1] ?? last), 0);
  const takers = new TakersByDay(state, TAKERS_TRIED + 1);
  const cost = 2 * costPerUnitMoved;
  let saved = 0;
  const offers = state.flatMap((of, index) => offerOf(of, index, 0, latest, cost) ?? []).sort(mostBound);
  const follow = (offer: Offer) => {
    offer.followed = true;
    putIn(offers, offerOf(state[offer.from]!, offer.from, offer.at + 1, latest, cost));
  };
  for (let step = 0; step < MOST_EXCHANGES; step++) {
    const found = bestExchange(state, takers, offers, follow, cost);
    if (!found) break;
    saved += found.gain;
    const changed = [
      [found.from, found.day, found.given],
      [found.to, found.given, found.day],
    ] as const;
    for (const [index, out, into] of changed) {
      state[index] = stateAfter(state[index]!, out, into);
      takeOut(offers, index);
      putIn(offers, offerOf(state[index]!, index, 0, latest, cost));
      takers.changed(index);
    }
  }
  return { days: state.map(({ days }) => days), saved };
}

/** Takes out what a place offers. */
function takeOut(offers: Offer[], from: number): void {
  let others = 0;
  for (let at = 0; at < offers.length; at++) if (offers[at]!.from !== from) offers[others++] = offers[at]!;
  offers.length = others;
}

/** Puts an offer among others, in their order. */
function putIn(offers: Offer[], offer: Offer | null): void {
  if (offer === null) return;
  let at = offers.length;
  for (; at > 0 && mostBound(offer, offers[at - 1]!) < 0; at--) offers[at] = offers[at - 1]!;
  offers[at] = offer;
}

function mostBound(a: Offer, b: Offer): number {
  return b.bound - a.bound || a.from - b.from || a.day - b.day;
}

/**
 * The best exchange of those that the first offers allow; null where none saves more than it costs.
 *
 * @param follow  has the place of an offer that is tried offer its next unit, too, behind it
 */
function bestExchange(
  state: readonly PlaceState[],
  takers: TakersByDay,
  offers: readonly Offer[],
  follow: (offer: Offer) => void,
  cost: number,
): Exchange | null {
  // a hair more than the cost is rounding, which must not move anything
  let most = Math.max(cost, 0) + 1e-9;
  let best: Exchange | null = null;
  for (let at = 0; at < Math.min(OFFERS_TRIED, offers.length); at++) {
    if (offers[at]!.bound <= most) break;
    // by rounding, the next unit may come before the one that it follows
    while (!offers[at]!.followed) follow(offers[at]!);
    const offer = offers[at]!;
    const found = bestOf(offer, state, takers, most);
    if (found === null || found.gain <= most + ROUNDING) continue;
    most = found.gain;
    best = found;
  }
  return best;
}

/** The best exchange of an offer, if it gains more than `above`: from before, where all that might take it stay as they were. */
function bestOf(offer: Offer, state: readonly PlaceState[], takers: TakersByDay, above: number): Exchange | null {
  const { from, day, seen } = offer;
  const mayTake = takers.of(day);
  if (seen !== null && seen.takers === mayTake && !takers.anyChangedSince(mayTake, seen.changes))
    if (seen.best !== null || seen.above <= above) return seen.best;
  let most = above;
  let best: Exchange | null = null;
  let left = TAKERS_TRIED;
  for (let i = 0; i < mayTake.length; i++) {
    const to = mayTake[i]!;
    if (to === from) continue;
    if (left-- === 0) break;
    const { gain, given } = tryOn(offer, state[from]!, to, state[to]!, most);
    if (given === null || gain <= most + ROUNDING) continue;
    most = gain;
    best = { gain, from, to, day, given };
  }
  offer.seen = { takers: mayTake, changes: takers.changes, above, best };
  return best;
}
