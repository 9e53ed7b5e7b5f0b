import { firstAbove } from "../maths/first-above.ts";
import { chanceOfNone, renewalDensity, type SlotInDraw, stepsOf } from "./slot.ts";
import type { SlotStream } from "./slot-stream.ts";
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
  newSteps: Float64Array;
  /** By slot: month from which it needs nothing any more. */
  ends: Int32Array;
  /** Mean needs of the span asked for last, at draw * slots + slot: the next often begins with it, and goes on. */
  lately: { after: number; through: number; mean: Float64Array };
}

/** Takes all slots of a stream. */
export function heldLives({ slots, draws, months, newDue, addDueOf, endOf }: SlotStream): SlotLives {
  const due = new Float64Array(slots * draws * months);
  const density = new Float64Array(slots * draws * months);
  const ends = Int32Array.from({ length: slots }, (_, slot) => endOf(slot));
  const newSteps = stepsOf(newDue, months + 1);
  for (let slot = 0; slot < slots; slot++) {
    addDueOf([slot], due.subarray(slot * draws * months, (slot + 1) * draws * months));
    const one: SlotInDraw = { due, at: slot * draws * months, newDue, newSteps, newAt: 0, end: ends[slot]! };
    for (let draw = 0; draw < draws; draw++) {
      renewalDensity(one, months, density);
      one.at += months;
      one.newAt += months + 1;
    }
  }
  const lately = { after: 0, through: 0, mean: new Float64Array(draws * slots) };
  return { slots, draws, months, due, density, newDue, newSteps, ends, lately };
}

/** Needs of an item with few packs: per draw the exact sum of its slots (refined normal where that is close). */
export function needsOfFewPacks(lives: SlotLives): SpanNeeds {
  return {
    countsIn: (after, through) => countsIn(lives, after, through),
    quantileIn: () => null,
    addPath(draw, random, into) {
      const { slots, draws, months, due, newDue, ends } = lives;
      const newAt = draw * (months + 1);
      for (let slot = 0; slot < slots; slot++) {
        const at = (slot * draws + draw) * months;
        addSlotPath({ due, at, newDue, newAt, end: ends[slot]! }, random, into);
      }
    },
  };
}

/** Distribution of the needs in months after+1 .. through. */
function countsIn(lives: SlotLives, after: number, through: number): Float64Array {
  const { slots, draws } = lives;
  const { none, mean } = spanOf(lives, after, through);
  const mixture = new Float64Array(slots * (through - after) + 2);
  const scratch = new Float64Array(mixture.length);
  const shapes = Array.from({ length: slots }, () => ({ low: 0, chanceLow: 1, chanceHigh: 0 }));
  for (let draw = 0; draw < draws; draw++) {
    for (let slot = 0; slot < slots; slot++) {
      shapeSlot(none[draw * slots + slot]!, mean[draw * slots + slot]!, shapes[slot]!);
    }
    addSlotSum(shapes, slots, 1 / draws, mixture, scratch);
  }
  let top = mixture.length - 1;
  while (top > 0 && mixture[top] === 0) top--;
  return mixture.slice(0, top + 1);
}

/**
 * Chance of no need in months after+1 .. through, and their mean, at draw * slots + slot. Slot by slot, as the tables
 * lie: they are too long to be gone through across their rows.
 */
function spanOf(lives: SlotLives, after: number, through: number): { none: Float64Array; mean: Float64Array } {
  const { slots, draws, months, due, density, newDue, newSteps, ends, lately } = lives;
  const goesOn = lately.after === after && lately.through <= through;
  const mean = goesOn ? lately.mean : lately.mean.fill(0);
  const known = goesOn ? lately.through : after;
  Object.assign(lately, { after, through });
  const none = new Float64Array(draws * slots).fill(1);
  const one: SlotInDraw = { due, at: 0, newDue, newSteps, newAt: 0, end: 0 };
  for (let slot = 0; slot < slots; slot++) {
    // a slot whose device has left keeps the span's needs until then
    const last = Math.min(through, ends[slot]! - 1);
    if (last <= after) continue;
    for (let draw = 0; draw < draws; draw++) {
      one.at = (slot * draws + draw) * months;
      one.newAt = draw * (months + 1);
      none[draw * slots + slot] = chanceOfNone(one, density, after, last);
      let sum = mean[draw * slots + slot]!;
      for (let month = known + 1; month <= last; month++) sum += density[one.at + month]!;
      mean[draw * slots + slot] = sum;
    }
  }
  return { none, mean };
}

/**
 * Adds one future of a slot: its first need, then one whenever a replacement is due.
 *
 * @param into  needs by month of the horizon
 */
function addSlotPath(
  { due, at, newDue, newAt, end }: Omit<SlotInDraw, "newSteps">,
  random: () => number,
  into: Int32Array,
): void {
  const months = into.length;
  let month = firstAbove(due, at, months, random());
  while (month < Math.min(months, end)) {
    into[month] = into[month]! + 1;
    month += firstAbove(newDue, newAt, months + 1, random());
  }
}
