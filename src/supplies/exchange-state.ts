import type { Day } from "../calendar/day.ts";
import { GainsByDay } from "./gains-by-day.ts";
import type { MovePlace } from "./move-place.ts";

/** Gains closer than this are equal. */
export const ROUNDING = 1e-12;

/** A place in the course of a search by steps. */
export interface PlaceState {
  place: MovePlace;
  /** Swap days of its units, ascending. */
  days: readonly Day[];
  /** The same days, each once. */
  distinct: readonly Day[];
  value: number;
  /** Gains already asked for, by the place of the day given away among the distinct ones. */
  gains: GainsByDay[];
}

/** A unit that its place might give, with the most that its place can gain by that. */
export interface Offer {
  from: number;
  /** The place of its day among the distinct ones of its place. */
  at: number;
  day: Day;
  bound: number;
  /** True once the next unit of its place is offered too. */
  followed: boolean;
  /**
   * What came of trying it on other places, by their index; it holds as long as the other place stays as it is. null until
   * it is tried: few offers ever are.
   */
  tried: Map<number, Tried> | null;
  /** What came of trying it on all that might take it. */
  seen: Seen | null;
}

/** The best exchange of an offer with any of its takers; null where none gains more than `above`. */
interface Seen {
  takers: readonly number[];
  /** Changes of places known by then. */
  changes: number;
  above: number;
  best: Exchange | null;
}

/** An exchange of two units: the giver's, of an earlier day, and the one it is given, of a later day. */
export interface Exchange {
  gain: number;
  from: number;
  to: number;
  day: Day;
  given: Day;
}

/** The most that two places gain together by one unit of the first, and the day of the unit that comes back for it. */
interface Tried {
  taker: PlaceState;
  /** Where `given` is null, a bound that the gain does not exceed. */
  gain: number;
  given: Day | null;
}

/** How a place stands before the first step. */
export function stateOf(place: MovePlace): PlaceState {
  return standing(place, place.days);
}

/** How a place stands once it has given a unit of one day for one of another. */
export function stateAfter({ place, days }: PlaceState, out: Day, into: Day): PlaceState {
  return standing(place, replaced(days, out, into));
}

function standing(place: MovePlace, days: readonly Day[]): PlaceState {
  return { place, days, distinct: [...new Set(days)], value: place.value(days), gains: [] };
}

/** Units more that a place is expected to use where one of its units has another day; `gains` are its own of that unit. */
function gainOf(of: PlaceState, gains: GainsByDay, out: Day, into: Day): number {
  const known = gains.at(into);
  if (known !== null) return known;
  const gain = of.place.value(replaced(of.days, out, into)) - of.value;
  gains.add(into, gain);
  return gain;
}

/** The most that a place can gain so, from what has been asked before: a unit of an earlier day gains it no more. */
function mostGained(gains: GainsByDay, out: Day, into: Day): number {
  return Math.min(gains.ofLater(into), into <= out ? 0 : Number.POSITIVE_INFINITY);
}

function gainsOf({ gains }: PlaceState, at: number): GainsByDay {
  gains[at] ??= new GainsByDay();
  return gains[at];
}

/**
 * What a place might give: any unit but those that expire last of all, as long as it can gain more than `cost`. The later
 * the unit given away, the less is gained by a still later one: each offer's bound is no more than that of the one before.
 *
 * @param at  which of the place's distinct days
 */
export function offerOf(of: PlaceState, from: number, at: number, latest: Day, cost: number): Offer | null {
  const day = of.distinct[at];
  if (day === undefined || day >= latest) return null;
  const bound = gainOf(of, gainsOf(of, at), day, latest);
  return bound <= cost ? null : { from, at, day, bound, followed: false, tried: null, seen: null };
}

/** The best exchange of an offered unit with a place, if it gains more than `above`. */
export function tryOn(offer: Offer, giver: PlaceState, to: number, taker: PlaceState, above: number): Tried {
  offer.tried ??= new Map();
  const known = offer.tried.get(to);
  if (known?.taker === taker && (known.given !== null || known.gain <= above)) return known;
  const { day } = offer;
  const ofGiver = gainsOf(giver, offer.at);
  const best: Tried = { taker, gain: above, given: null };
  for (let at = taker.distinct.length - 1; at >= 0 && taker.distinct[at]! > day; at--) {
    const given = taker.distinct[at]!;
    const ofTaker = gainsOf(taker, at);
    const mostLost = mostGained(ofTaker, given, day);
    // all the gain is the giver's, since the taker's unit expires sooner, and it grows with the day given
    const mostByGiver = mostGained(ofGiver, day, given);
    if (mostByGiver <= best.gain) break;
    if (mostByGiver + mostLost <= best.gain) continue;
    const gained = gainOf(giver, ofGiver, day, given);
    if (gained <= best.gain) break;
    if (gained + mostLost <= best.gain) continue;
    const gain = gained + gainOf(taker, ofTaker, given, day);
    // a hair more is rounding, which must not move anything
    if (gain <= best.gain + ROUNDING) continue;
    best.gain = gain;
    best.given = given;
  }
  offer.tried.set(to, best);
  return best;
}

/** The days, ascending, with one `out` replaced by `into`. */
function replaced(days: readonly Day[], out: Day, into: Day): Day[] {
  const next: Day[] = [];
  let waiting = true;
  let gone = false;
  for (const day of days) {
    if (day === out && !gone) {
      gone = true;
      continue;
    }
    if (waiting && day > into) {
      next.push(into);
      waiting = false;
    }
    next.push(day);
  }
  if (waiting) next.push(into);
  return next;
}
