import type { Day } from "../calendar/day.ts";
import type { PlaceState } from "./exchange-state.ts";

/** Uses by a day that no earlier unit meets, by place; minus infinity where the place holds no later unit. */
interface SlackOnDay {
  slack: Float64Array;
  /** How many of the changes it knows of. */
  changesSeen: number;
  /** Places with most slack, by index. */
  first: readonly number[];
}

/** Places that can take a unit in exchange for a later one, by the day of that unit; kept while places change. */
export class TakersByDay {
  readonly #state: readonly PlaceState[];
  readonly #most: number;
  readonly #byDay = new Map<Day, SlackOnDay>();
  readonly #changed: number[] = [];

  /** @param most  places wanted of a day at the most */
  constructor(state: readonly PlaceState[], most: number) {
    this.#state = state;
    this.#most = most;
  }

  /** Notes that the units of a place have changed. */
  changed(index: number): void {
    this.#changed.push(index);
  }

  /** Indices of places that hold a later unit, those with most uses by that day to spare first. */
  of(day: Day): readonly number[] {
    let found = this.#byDay.get(day);
    if (!found) {
      const slack = Float64Array.from(this.#state, (of) => slackOf(of, day));
      found = { slack, changesSeen: this.#changed.length, first: largest(slack, this.#most) };
      this.#byDay.set(day, found);
    }
    if (found.changesSeen < this.#changed.length) {
      const { slack } = found;
      for (; found.changesSeen < this.#changed.length; found.changesSeen++) {
        const index = this.#changed[found.changesSeen]!;
        slack[index] = slackOf(this.#state[index]!, day);
      }
      found.first = largest(slack, this.#most);
    }
    return found.first;
  }
}

function slackOf({ days, place }: PlaceState, day: Day): number {
  if (days[days.length - 1]! <= day) return Number.NEGATIVE_INFINITY;
  let sooner = 0;
  while (days[sooner]! <= day) sooner++;
  return place.expectedUses(day) - sooner;
}

/** Indices of the largest values, descending; of equals the first. Minus infinity does not count. */
function largest(values: Float64Array, most: number): number[] {
  const found: number[] = [];
  for (let index = 0; index < values.length; index++) {
    const value = values[index]!;
    if (value === Number.NEGATIVE_INFINITY) continue;
    if (found.length === most && value <= values[found[most - 1]!]!) continue;
    let at = found.length < most ? found.length : most - 1;
    for (; at > 0 && values[found[at - 1]!]! < value; at--) found[at] = found[at - 1]!;
    found[at] = index;
  }
  return found;
}
