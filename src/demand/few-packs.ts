import { firstAbove } from "../maths/first-above.ts";
import { chanceOfNone, outliving } from "./slot.ts";
import { addSlotSum, shapeSlot } from "./slot-sum.ts";
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
  const { slots, draws, months, due, newDue, ends } = lives;
  return {
    countsIn: (after, through) => countsIn(lives, after, through),
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

/** Distribution of the needs in months after+1 .. through. */
function countsIn(lives: SlotLives, after: number, through: number): Float64Array {
  const { slots, draws, months, due, density, newDue, ends } = lives;
  const mixture = new Float64Array(slots * (through - after) + 2);
  const scratch = new Float64Array(mixture.length);
  const shapes = Array.from({ length: slots }, () => ({ low: 0, chanceLow: 1, chanceHigh: 0 }));
  for (let draw = 0; draw < draws; draw++) {
    const newAt = draw * (months + 1);
    for (let slot = 0; slot < slots; slot++) {
      // a slot whose device has left keeps the span's needs until then
      const last = Math.min(through, ends[slot]! - 1);
      const at = (slot * draws + draw) * months;
      let mean = 0;
      for (let month = after + 1; month <= last; month++) mean += density[at + month]!;
      const none = last > after ? chanceOfNone(due[at + last]!, outliving(density, at, newDue, newAt, after, last)) : 1;
      shapeSlot(none, mean, shapes[slot]!);
    }
    addSlotSum(shapes, slots, 1 / draws, mixture, scratch);
  }
  let top = mixture.length - 1;
  while (top > 0 && mixture[top] === 0) top--;
  return mixture.slice(0, top + 1);
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
