import { addOutliving, chanceOfNone } from "./slot.ts";
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

/**
 * Needs of an item with few packs: per draw the exact sum of its slots (refined normal where that is close).
 * The distributions of all spans after one month are worked out together, as each builds on the one before.
 */
export function needsOfFewPacks(lives: SlotLives): SpanNeeds {
  const { slots, draws, months, due, newDue, ends } = lives;
  const outlivingAfter = outlivingTable(lives);
  const rows = new Map<number, Float64Array[]>();
  return {
    countsIn(after, through) {
      let row = rows.get(after);
      if (!row) {
        row = countsAfter(lives, after, outlivingAfter(after));
        rows.set(after, row);
      }
      return row[through]!;
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

/** Distributions of the needs in months after+1 .. through, by `through`. */
function countsAfter(lives: SlotLives, after: number, outliving: Float64Array): Float64Array[] {
  const { slots, draws, months, due, density, ends } = lives;
  const mixtures = Array.from(
    { length: months },
    (_, through) => new Float64Array(through <= after ? 1 : slots * (through - after) + 2),
  );
  const scratch = new Float64Array(mixtures[months - 1]!.length);
  const shapes = Array.from({ length: slots }, () => ({ low: 0, chanceLow: 1, chanceHigh: 0 }));
  const means = new Float64Array(slots);
  for (let draw = 0; draw < draws; draw++) {
    means.fill(0);
    for (let through = after + 1; through < months; through++) {
      for (let slot = 0; slot < slots; slot++) {
        // a slot whose device has left keeps the span's needs until then
        if (through >= ends[slot]! && through > after + 1) continue;
        const at = (slot * draws + draw) * months + through;
        const open = through < ends[slot]!;
        means[slot] = means[slot]! + (open ? density[at]! : 0);
        shapeSlot(open ? chanceOfNone(due[at]!, outliving[at]!) : 1, means[slot]!, shapes[slot]!);
      }
      addSlotSum(shapes, slots, 1 / draws, mixtures[through]!, scratch);
    }
  }
  return mixtures.map((mixture) => {
    let top = mixture.length - 1;
    while (top > 0 && mixture[top] === 0) top--;
    return mixture.slice(0, top + 1);
  });
}

/** The chances of `addOutliving` for packs that entered up to a month, carried on from the month asked for last. */
function outlivingTable({ slots, draws, months, density, newDue }: SlotLives): (after: number) => Float64Array {
  const outliving = new Float64Array(slots * draws * months);
  let reached = -1;
  return (after) => {
    if (after < reached) {
      outliving.fill(0);
      reached = -1;
    }
    while (reached < after) {
      reached++;
      for (let row = 0; row < slots * draws; row++) {
        const newAt = (row % draws) * (months + 1);
        addOutliving(density, row * months, newDue, newAt, months, reached, outliving);
      }
    }
    return outliving;
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
