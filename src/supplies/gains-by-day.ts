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
    // nearly always one of few, put in by hand: a splice makes a list of what it takes out
    let place = this.#days.length;
    for (; place > 0 && this.#days[place - 1]! >= day; place--) {
      this.#days[place] = this.#days[place - 1]!;
      this.#gains[place] = this.#gains[place - 1]!;
    }
    this.#days[place] = day;
    this.#gains[place] = gain;
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
