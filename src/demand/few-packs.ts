import { type SlotCounts, slotInSpan } from "./slot.ts";
import { addSlotSum } from "./slot-sum.ts";
import type { SpanNeeds } from "./span-needs.ts";

/** Lives of an item's slots, draw by draw. Index = (slot * draws + draw) * months + month. */
export interface SlotLives {
  slots: number;
  draws: number;
  months: number;
  /** Chance that the first need has come by the month's end. */
  due: Float64Array;
  /** Expected needs in the month, renewals included. */
  density: Float64Array;
  /** Index = draw * (months + 1) + months in service. */
  newDue: Float64Array;
  /** By slot: month from which it needs nothing any more. */
  ends: Int32Array;
}

/** Needs of an item with few packs: per draw the exact sum of its slots (refined normal where that is close). */
export function needsOfFewPacks(lives: SlotLives): SpanNeeds {
  const { slots, draws, months, due, density, newDue, ends } = lives;
  const slotAt = (slot: number, draw: number, after: number, through: number): SlotCounts => {
    const last = Math.min(through, ends[slot]! - 1);
    if (last <= after) return { none: 1, mean: 0 };
    return slotInSpan(due, density, (slot * draws + draw) * months, newDue, draw * (months + 1), after, last);
  };
  return {
    countsIn(after, through) {
      const most = slots * (through - after) + 1;
      const mixture = new Float64Array(most + 1);
      const scratch = new Float64Array(most + 1);
      const counts = new Array<SlotCounts>(slots);
      for (let draw = 0; draw < draws; draw++) {
        for (let slot = 0; slot < slots; slot++) counts[slot] = slotAt(slot, draw, after, through);
        addSlotSum(counts, 1 / draws, mixture, scratch);
      }
      let top = most;
      while (top > 0 && mixture[top] === 0) top--;
      return mixture.slice(0, top + 1);
    },
    quantileIn: () => null,
    addPath(draw, random, into) {
      for (let slot = 0; slot < slots; slot++) {
        addSlotPath(
          due,
          (slot * draws + draw) * months,
          newDue,
          draw * (months + 1),
          months,
          ends[slot]!,
          random,
          into,
        );
      }
    },
  };
}

/** Adds one future of a slot: its first need, then one whenever a replacement is due. */
export function addSlotPath(
  due: Float64Array,
  at: number,
  newDue: Float64Array,
  newAt: number,
  months: number,
  end: number,
  random: () => number,
  into: Int32Array,
): void {
  let month = firstAbove(due, at, months, random());
  while (month < Math.min(months, end)) {
    into[month] = into[month]! + 1;
    month += firstAbove(newDue, newAt, months + 1, random());
  }
}

/** First index whose chance exceeds u; `length` where none does. */
function firstAbove(chances: Float64Array, at: number, length: number, u: number): number {
  let low = 0;
  let high = length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (chances[at + middle]! > u) high = middle;
    else low = middle + 1;
  }
  return low;
}
