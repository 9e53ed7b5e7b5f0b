import type { Day } from "../calendar/day.ts";
import type { MovePlace } from "./move-search.ts";

/** A place in the course of a search by steps. */
export interface PlaceState {
  place: MovePlace;
  /** Swap days of its units, ascending. */
  days: readonly Day[];
  /** The same days, each once. */
  distinct: readonly Day[];
  value: number;
  /** Gains already asked for, by the day given away, then the day taken instead. */
  gains: Map<Day, Map<Day, number>>;
}

/** A unit that its place might give, with the most that its place can gain by that. */
export interface Offer {
  from: number;
  day: Day;
  bound: number;
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
  return { place, days, distinct: [...new Set(days)], value: place.value(days), gains: new Map() };
}

/** Units more that a place is expected to use where one of its units has another day. */
export function gainOf({ place, days, value, gains }: PlaceState, out: Day, into: Day): number {
  let ofDay = gains.get(out);
  if (!ofDay) {
    ofDay = new Map();
    gains.set(out, ofDay);
  }
  let gain = ofDay.get(into);
  if (gain === undefined) {
    gain = place.value(replaced(days, out, into)) - value;
    ofDay.set(into, gain);
  }
  return gain;
}

/** What a place might give: any unit but those that expire last of all. */
export function offersOf(of: PlaceState, from: number, latest: Day): Offer[] {
  return of.distinct.filter((day) => day < latest).map((day) => ({ from, day, bound: gainOf(of, day, latest) }));
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
