import { groupBy } from "../fleet/group-by.ts";
import { seededRandom } from "../maths/random.ts";
import { shuffled } from "../maths/shuffled.ts";
import { addManyPath, FirstNeeds, type NewPackLife, type SlotGroup } from "./many-paths.ts";
import { highestCount, mixedCdf, mixedQuantile } from "./mixed-quantile.ts";
import { renewalDensity, stepsOf } from "./slot.ts";
import type { SlotStream } from "./slot-stream.ts";
import type { SpanNeeds } from "./span-needs.ts";
import { SpanSpread } from "./span-spread.ts";

/** Draws, and slots at the most, on which spreads are measured. */
const DRAWS_FOR_SPREAD = 5;
const SLOTS_FOR_SPREAD = 250;
const SEED = 20_261_129;

/**
 * Needs of an item with many packs. Per draw a refined normal: the mean is that draw's own; the further cumulants
 * are taken in the proportion to the mean that they have on some draws and slots (it varies little between draws, and
 * the spread between the draws' means rules the total).
 */
export function needsOfManyPacks(stream: SlotStream): SpanNeeds & { density: Float64Array } {
  const { slots, draws, months, newDue } = stream;
  const spread = new SpanSpread(months);
  const first = new FirstNeeds(months);
  // draws stand on curves in turn: with one more than an even step, each of these stands on another
  const everyDraw = Math.floor(draws / DRAWS_FOR_SPREAD) + 1;
  const due = new Float64Array(Math.ceil(draws / everyDraw) * months);
  const endOf = (slot: number) => Math.min(months, stream.endOf(slot));
  const newDueOf = (draw: number) => newDue.subarray(draw * (months + 1), (draw + 1) * (months + 1));
  // not every tenth or so: serials may take turns in something
  for (const slot of shuffled(slots, seededRandom(SEED)).slice(0, SLOTS_FOR_SPREAD)) {
    stream.addDueOf([slot], due.fill(0), everyDraw);
    for (let at = 0; at < due.length; at += months) {
      const ofDraw = due.subarray(at, at + months);
      first.add(ofDraw);
      spread.add(ofDraw, newDueOf((at / months) * everyDraw), endOf(slot));
    }
  }
  const inOrder = [...groupBy(Array(slots).keys(), endOf)]
    .map(([end, ofEnd]): SlotGroup => {
      const sum = new Float64Array(draws * months);
      stream.addDueOf(ofEnd, sum);
      return { end, due: sum };
    })
    .sort((a, b) => a.end - b.end);
  const total = totalDensity(inOrder, newDue, draws, months);
  const upTo = runningSums(total, draws, months);
  const lives = Array.from({ length: draws }, (_, draw) => lifeOfNew(newDueOf(draw)));
  const meansIn = (after: number, through: number) =>
    Float64Array.from({ length: draws }, (_, draw) => {
      return upTo[draw * months + through]! - (after < 0 ? 0 : upTo[draw * months + after]!);
    });
  return {
    density: total,
    countsIn(after, through) {
      const means = meansIn(after, through);
      const perNeed = spread.perNeed(after, through);
      const counts = new Float64Array(highestCount(means, perNeed) + 1);
      let below = 0;
      for (let n = 0; n < counts.length; n++) {
        const to = n === counts.length - 1 ? 1 : Math.max(below, mixedCdf(n, means, perNeed));
        counts[n] = to - below;
        below = to;
      }
      return counts;
    },
    quantileIn: (after, through, level) =>
      mixedQuantile(level, meansIn(after, through), spread.perNeed(after, through)),
    addPath(draw, random, into) {
      for (const group of inOrder) addManyPath({ group, at: draw * months, first, life: lives[draw]! }, random, into);
    },
  };
}

function lifeOfNew(due: Float64Array): NewPackLife {
  const steps = stepsOf(due, due.length);
  const shortest = steps.findIndex((step) => step > 0);
  return { due, steps, shortest: shortest < 0 ? due.length : shortest };
}

/** Renewals are linear in the first needs, so slots with one end are summed before they are renewed. */
function totalDensity(groups: readonly SlotGroup[], newDue: Float64Array, draws: number, months: number): Float64Array {
  const total = new Float64Array(draws * months);
  const density = new Float64Array(draws * months);
  const newSteps = stepsOf(newDue, months + 1);
  for (const { end, due } of groups) {
    for (let draw = 0; draw < draws; draw++) {
      const slots = { due, at: draw * months, newDue, newSteps, newAt: draw * (months + 1), end };
      renewalDensity(slots, months, density);
    }
    for (let i = 0; i < total.length; i++) total[i] = total[i]! + density[i]!;
  }
  return total;
}

function runningSums(values: Float64Array, rows: number, length: number): Float64Array {
  const sums = new Float64Array(values.length);
  for (let row = 0; row < rows; row++) {
    let sum = 0;
    for (let i = row * length; i < (row + 1) * length; i++) {
      sum += values[i]!;
      sums[i] = sum;
    }
  }
  return sums;
}
