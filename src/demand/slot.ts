/** One slot in one draw: where its chances stand in tables that hold those of many. */
export interface SlotInDraw {
  /** Chance that the first need has come by each month's end, non-decreasing, from `at` on. */
  due: Float64Array;
  at: number;
  /** Chance that a new pack is due within 0, 1, ... months of entering service, from `newAt` on. */
  newDue: Float64Array;
  /** Steps of that chance, `stepsOf` it. */
  newSteps: Float64Array;
  newAt: number;
  /** Month from which the slot needs nothing any more. */
  end: number;
}

/**
 * How much a chance rises from one entry to the next, never less than 0; a run's first entry has no step.
 *
 * @param chances  one or more runs of entries
 */
export function stepsOf(chances: Float64Array, run: number): Float64Array {
  return chances.map((chance, i) => (i % run === 0 ? 0 : Math.max(0, chance - chances[i - 1]!)));
}

/**
 * Expected needs by month of one slot: a pack in service whose first replacement falls in a month with chance
 * `first`, each replacement lasting as new packs do. u = first + u * life, solved forwards.
 *
 * @param into  filled from the slot's `at` on
 */
export function renewalDensity(
  { due, at, newSteps, newAt, end }: SlotInDraw,
  months: number,
  into: Float64Array,
): void {
  let before = 0;
  for (let m = 0; m < months; m++) {
    let density = 0;
    if (m < end) {
      density = due[at + m]! - before;
      before = due[at + m]!;
      for (let k = 1; k <= m; k++) density += into[at + m - k]! * newSteps[newAt + k]!;
    }
    into[at + m] = density;
  }
}

/**
 * Chance of no need of one slot in months after+1 .. last. Exact: either the first need comes later, or the pack that
 * entered in some month up to `after` outlives the span.
 *
 * @param density  the slot's expected needs by month, from its `at` on
 * @param last     a month after `after` and before the slot's end
 */
export function chanceOfNone(slot: SlotInDraw, density: Float64Array, after: number, last: number): number {
  return Math.min(1, Math.max(0, 1 - slot.due[slot.at + last]! + outliving(slot, density, after, last)));
}

/**
 * Chance that a slot holds, by the end of month `last`, a pack that entered in a month up to `after` and is not due yet.
 */
function outliving({ at, newDue, newAt }: SlotInDraw, density: Float64Array, after: number, last: number): number {
  let chance = 0;
  for (let entered = 0; entered <= after; entered++) {
    chance += density[at + entered]! * (1 - newDue[newAt + last - entered]!);
  }
  return chance;
}
