import type { Day } from "../calendar/day.ts";
import type { PlaceState } from "./exchange-state.ts";

/** A place that can take a unit of some day, with the uses there that no earlier unit meets. */
interface Taker {
  index: number;
  slack: number;
}

/** Places that can take a unit in exchange for a later one, by the day of that unit; kept while places change. */
export class TakersByDay {
  readonly #state: readonly PlaceState[];
  readonly #byDay = new Map<Day, { inOrder: Taker[]; indices: number[] | null }>();

  constructor(state: readonly PlaceState[]) {
    this.#state = state;
  }

  /** Indices of the places that hold a later unit, those with most uses by that day to spare first. */
  of(day: Day): readonly number[] {
    let found = this.#byDay.get(day);
    if (!found) {
      const inOrder = this.#state
        .map((_, index) => this.#taker(index, day))
        .filter((taker) => taker !== null)
        .sort(moreSlack);
      found = { inOrder, indices: null };
      this.#byDay.set(day, found);
    }
    found.indices ??= found.inOrder.map(({ index }) => index);
    return found.indices;
  }

  /** Puts a place whose units have changed where it now belongs. */
  changed(index: number): void {
    for (const [day, found] of this.#byDay) {
      const { inOrder } = found;
      const before = inOrder.findIndex((taker) => taker.index === index);
      if (before !== -1) inOrder.splice(before, 1);
      const taker = this.#taker(index, day);
      if (taker !== null) {
        const at = inOrder.findIndex((other) => moreSlack(taker, other) < 0);
        inOrder.splice(at === -1 ? inOrder.length : at, 0, taker);
      }
      found.indices = null;
    }
  }

  #taker(index: number, day: Day): Taker | null {
    const { days, place } = this.#state[index]!;
    if (days[days.length - 1]! <= day) return null;
    let sooner = 0;
    while (days[sooner]! <= day) sooner++;
    return { index, slack: place.expectedUses(day) - sooner };
  }
}

function moreSlack(a: Taker, b: Taker): number {
  return b.slack - a.slack || a.index - b.index;
}
