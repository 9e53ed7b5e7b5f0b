import type { Day } from "../calendar/day.ts";

/** What a place gains where a unit of it has another day, for the days that have been asked. */
export class GainsByDay {
  /** Ascending. */
  readonly #days: Day[] = [];
  readonly #gains: number[] = [];

  /** The gain of a day; null where it has not been asked. */
  at(day: Day): number | null {
    const place = this.#placeOf(day);
    return this.#days[place] === day ? this.#gains[place]! : null;
  }

  /** The gain of the first day asked that is no earlier; Infinity where there is none. */
  ofLater(day: Day): number {
    return this.#gains[this.#placeOf(day)] ?? Number.POSITIVE_INFINITY;
  }

  add(day: Day, gain: number): void {
    const place = this.#placeOf(day);
    this.#days.splice(place, 0, day);
    this.#gains.splice(place, 0, gain);
  }

  /** Place of the first day that is no earlier, by halving. */
  #placeOf(day: Day): number {
    let from = 0;
    let to = this.#days.length;
    while (from < to) {
      const middle = (from + to) >> 1;
      if (this.#days[middle]! < day) from = middle + 1;
      else to = middle;
    }
    return from;
  }
}
