/**
 * Expected needs by month of one slot: a pack in service whose first replacement falls in a month with chance
 * `first`, each replacement lasting as new packs do. u = first + u * life, solved forwards.
 *
 * @param due  chance that the first need has come by each month's end, non-decreasing
 * @param at  offset of the slot's first month in `due` and `into`
 * @param newDue  chance that a new pack is due within 0, 1, ... months of entering service
 * @param newAt  offset of its entry 0
 * @param end  month from which the slot needs nothing any more
 */
export function renewalDensity(
  due: Float64Array,
  at: number,
  newDue: Float64Array,
  newAt: number,
  months: number,
  end: number,
  into: Float64Array,
): void {
  let before = 0;
  for (let m = 0; m < months; m++) {
    let density = 0;
    if (m < end) {
      density = due[at + m]! - before;
      before = due[at + m]!;
      for (let k = 1; k <= m; k++) {
        const step = newDue[newAt + k]! - newDue[newAt + k - 1]!;
        if (step > 0) density += into[at + m - k]! * step;
      }
    }
    into[at + m] = density;
  }
}

/**
 * Chance of no need of one slot in months after+1 .. through. Exact: either the first need comes later, or the pack
 * that entered in some month up to `after` outlives the span (see `outliving`).
 */
export function chanceOfNone(due: number, outliving: number): number {
  return Math.min(1, Math.max(0, 1 - due + outliving));
}

/**
 * Chance that a slot holds, by the end of month `last`, a pack that entered in a month up to `after` and is not due yet.
 */
export function outliving(
  density: Float64Array,
  at: number,
  newDue: Float64Array,
  newAt: number,
  after: number,
  last: number,
): number {
  let chance = 0;
  for (let entered = 0; entered <= after; entered++) {
    chance += density[at + entered]! * (1 - newDue[newAt + last - entered]!);
  }
  return chance;
}
