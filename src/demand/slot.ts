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
 * that entered in some month up to `after` outlives the span (see `addOutliving`).
 */
export function chanceOfNone(due: number, outliving: number): number {
  return Math.min(1, Math.max(0, 1 - due + outliving));
}

/**
 * Adds to `outliving`, for every later month, the chance that a pack enters a slot in month `entered` and is not due by
 * that month's end.
 */
export function addOutliving(
  density: Float64Array,
  at: number,
  newDue: Float64Array,
  newAt: number,
  months: number,
  entered: number,
  outliving: Float64Array,
): void {
  const chance = density[at + entered]!;
  if (chance === 0) return;
  for (let m = entered + 1; m < months; m++) {
    outliving[at + m] = outliving[at + m]! + chance * (1 - newDue[newAt + m - entered]!);
  }
}
