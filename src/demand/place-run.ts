import type { ItemPlace } from "../supplies/item-places.ts";

/** A use at a place: a day (fraction allowed) and the units it takes. */
export interface UseEvent {
  day: number;
  units: number;
}

/** What makes a unit leave a place. */
export type LeaveCause = "expiry" | "use" | "routine" | "growth";

/** Facts that all places of an item share. */
export interface RunFacts {
  /** First day of each month of the horizon, as-of first, and the first day after it. */
  monthStarts: Float64Array;
  /** Swap day of the unit that replaces one that left in a month; Infinity = no limit. */
  swapDayOfReplacement: Float64Array;
}

/**
 * Runs one place through the horizon: uses and routine take the unit that expires first (FEFO), units left over leave
 * on their swap day, every unit that leaves is replaced at once by one with the life that new units have.
 *
 * @param uses  ascending by day
 * @param routine  days on which routine finishes a unit, ascending
 * @param need  told the cause and month index of each unit needed
 */
export function runPlace(
  place: Pick<ItemPlace, "from" | "until" | "swapDays" | "lacking">,
  uses: readonly UseEvent[],
  routine: readonly number[],
  facts: RunFacts,
  need: (cause: LeaveCause, month: number) => void,
): void {
  const { monthStarts, swapDayOfReplacement } = facts;
  const months = swapDayOfReplacement.length;
  const end = Math.min(place.until, monthStarts[months]!);
  if (place.from >= end) return;
  const queue = [...place.swapDays];
  let head = 0;
  let month = 0;
  let nextUse = 0;
  let nextRoutine = 0;
  const replace = (cause: LeaveCause, day: number) => {
    while (month + 1 < months && day >= monthStarts[month + 1]!) month++;
    need(cause, month);
    insert(queue, head, swapDayOfReplacement[month]!);
  };
  const take = (cause: LeaveCause, day: number) => {
    // a place that holds no unit needs one for the use itself and keeps none
    if (head < queue.length) {
      head++;
      replace(cause, day);
    } else {
      while (month + 1 < months && day >= monthStarts[month + 1]!) month++;
      need(cause, month);
    }
  };
  for (let unit = 0; unit < place.lacking; unit++) replace("growth", place.from);
  for (;;) {
    const swap = Math.max(place.from, queue[head] ?? Number.POSITIVE_INFINITY);
    const use = uses[nextUse]?.day ?? Number.POSITIVE_INFINITY;
    const scheduled = routine[nextRoutine] ?? Number.POSITIVE_INFINITY;
    const day = Math.min(swap, use, scheduled);
    if (day >= end) return;
    if (day === swap) take("expiry", day);
    else if (day === use) {
      for (let unit = 0; unit < uses[nextUse]!.units; unit++) take("use", day);
      nextUse++;
    } else {
      take("routine", day);
      nextRoutine++;
    }
  }
}

/** Keeps the queue ascending; new units nearly always expire last. */
function insert(queue: number[], head: number, swapDay: number): void {
  let at = queue.length;
  queue.push(swapDay);
  while (at > head && queue[at - 1]! > swapDay) {
    queue[at] = queue[at - 1]!;
    at--;
  }
  queue[at] = swapDay;
}
