import type { Day } from "../calendar/day.ts";
import { largest } from "../maths/largest.ts";
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
  /** By place, how many changes there had been with its last one. */
  readonly #changesThen: Int32Array;

  /** @param most  places wanted of a day at the most */
  constructor(state: readonly PlaceState[], most: number) {
    this.#state = state;
    this.#most = most;
    this.#changesThen = new Int32Array(state.length);
  }

  /** How often any place's units have changed. */
  get changes(): number {
    return this.#changed.length;
  }

  /** True where the units of one of some places have changed since there had been so many changes. */
  anyChangedSince(places: readonly number[], changes: number): boolean {
    for (let i = 0; i < places.length; i++) if (this.#changesThen[places[i]!]! > changes) return true;
    return false;
  }

  /** Notes that the units of a place have changed. */
  changed(index: number): void {
    this.#changesThen[index] = this.#changed.push(index);
  }

  /** Indices of places that hold a later unit, those with most uses by that day to spare first. */
  of(day: Day): readonly number[] {
    let found = this.#byDay.get(day);
    if (!found) {
      const slack = new Float64Array(this.#state.length);
      for (let index = 0; index < slack.length; index++) slack[index] = slackOf(this.#state[index]!, day);
      found = { slack, changesSeen: this.#changed.length, first: largest(slack, this.#most) };
      this.#byDay.set(day, found);
    }
    if (found.changesSeen < this.#changed.length) {
      const { slack, first } = found;
      let sameFirst = true;
      for (; found.changesSeen < this.#changed.length; found.changesSeen++) {
        const index = this.#changed[found.changesSeen]!;
        const now = slackOf(this.#state[index]!, day);
        // a place that was not among the first and comes behind the last of them changes nothing
        const behind = first.length === this.#most && now < slack[first[first.length - 1]!]!;
        sameFirst &&= now === slack[index] || (behind && !first.includes(index));
        slack[index] = now;
      }
      if (!sameFirst) found.first = largest(slack, this.#most);
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
