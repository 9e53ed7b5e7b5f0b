import { seededRandom } from "../maths/random.ts";
import { type Cumulants, refinedNormalCdf } from "../maths/refined-normal.ts";
import { seedFromText } from "../maths/text-seed.ts";
import { addSlotPath } from "./few-packs.ts";
import { addOutliving, chanceOfNone, renewalDensity } from "./slot.ts";
import { addCumulants, shapeSlot } from "./slot-sum.ts";
import type { SpanNeeds } from "./span-needs.ts";

/** Slots of an item, delivered one at a time: thousands of them are never held at once. */
export interface SlotStream {
  slots: number;
  draws: number;
  months: number;
  /** Fills `into` (draws * months, draw-major) with the chance that the slot's first need has come. */
  dueOf(slot: number, into: Float64Array): void;
  /** A name of the slot that stays the same when rows are sorted otherwise. */
  nameOf(slot: number): string;
  endOf(slot: number): number;
  newDue: Float64Array;
}

/** Draws, and slots at the most, on which the spread within a draw is measured. */
const DRAWS_FOR_SPREAD = 16;
const SLOTS_FOR_SPREAD = 400;
/** Futures kept per draw. */
const PATHS_PER_DRAW = 2;

/**
 * Needs of an item with many packs. Per draw a refined normal: the mean is that draw's own; the further cumulants
 * are taken in the proportion to the mean that they have on some draws and slots (it varies little between draws, and
 * the spread between the draws' means rules the total). A future is one of a few kept per draw.
 */
export function needsOfManyPacks(stream: SlotStream): SpanNeeds & { density: Float64Array } {
  const { slots, draws, months, newDue } = stream;
  const due = new Float64Array(draws * months);
  const density = new Float64Array(draws * months);
  const dueByEnd = new Map<number, Float64Array>();
  const paths = new Int32Array(draws * PATHS_PER_DRAW * months);
  const spread = spreadTable(months);
  const everyDraw = Math.max(1, Math.floor(draws / DRAWS_FOR_SPREAD));
  const everySlot = Math.max(1, Math.ceil(slots / SLOTS_FOR_SPREAD));
  for (let slot = 0; slot < slots; slot++) {
    stream.dueOf(slot, due);
    const end = Math.min(months, stream.endOf(slot));
    const dueSum = dueByEnd.get(end) ?? new Float64Array(draws * months);
    for (let i = 0; i < due.length; i++) dueSum[i] = dueSum[i]! + due[i]!;
    dueByEnd.set(end, dueSum);
    const random = seededRandom(seedFromText(stream.nameOf(slot)));
    for (let draw = 0; draw < draws; draw++) {
      const newAt = draw * (months + 1);
      for (let path = 0; path < PATHS_PER_DRAW; path++) {
        const kept = (draw * PATHS_PER_DRAW + path) * months;
        const into = paths.subarray(kept, kept + months);
        addSlotPath(due, draw * months, newDue, newAt, months, end, random.uniform, into);
      }
      if (draw % everyDraw === 0 && slot % everySlot === 0) {
        renewalDensity(due, draw * months, newDue, newAt, months, end, density);
        spread.add(due, density, draw * months, newDue, newAt, end);
      }
    }
  }
  const total = totalDensity(dueByEnd, newDue, draws, months);
  const upTo = runningSums(total, draws, months);
  const momentsAt = (draw: number, after: number, through: number) => {
    const before = after < 0 ? 0 : upTo[draw * months + after]!;
    const mean = upTo[draw * months + through]! - before;
    const { variance, third, fourth } = spread.perNeed(after, through);
    return { mean, variance: mean * variance, third: mean * third, fourth: mean * fourth };
  };
  const chanceUpTo = (n: number, moments: readonly Cumulants[]) =>
    moments.reduce((sum, ofDraw) => sum + refinedNormalCdf(n, ofDraw), 0) / draws;
  const momentsIn = (after: number, through: number) =>
    Array.from({ length: draws }, (_, draw) => momentsAt(draw, after, through));
  return {
    density: total,
    countsIn(after, through) {
      const moments = momentsIn(after, through);
      const most = highest(moments);
      const pmf = new Float64Array(most + 1);
      let below = 0;
      for (let n = 0; n <= most; n++) {
        const to = n === most ? 1 : Math.max(below, chanceUpTo(n, moments));
        pmf[n] = to - below;
        below = to;
      }
      return pmf;
    },
    quantileIn(after, through, level) {
      const moments = momentsIn(after, through);
      let low = -1;
      let high = highest(moments);
      while (high - low > 1) {
        const middle = (low + high) >> 1;
        if (chanceUpTo(middle, moments) >= level) high = middle;
        else low = middle;
      }
      return high;
    },
    addPath(draw, random, into) {
      const path = Math.min(PATHS_PER_DRAW - 1, Math.floor(random() * PATHS_PER_DRAW));
      const kept = (draw * PATHS_PER_DRAW + path) * months;
      for (let m = 0; m < months; m++) into[m] = into[m]! + paths[kept + m]!;
    },
  };
}

function highest(moments: readonly Cumulants[]): number {
  return moments.reduce((most, { mean, variance }) => Math.max(most, Math.ceil(mean + 9 * Math.sqrt(variance) + 2)), 0);
}

/** Renewals are linear in the first needs, so slots with one end are summed before they are renewed. */
function totalDensity(
  dueByEnd: ReadonlyMap<number, Float64Array>,
  newDue: Float64Array,
  draws: number,
  months: number,
): Float64Array {
  const total = new Float64Array(draws * months);
  const density = new Float64Array(draws * months);
  for (const [end, due] of [...dueByEnd].sort(([a], [b]) => a - b)) {
    for (let draw = 0; draw < draws; draw++) {
      renewalDensity(due, draw * months, newDue, draw * (months + 1), months, end, density);
    }
    for (let i = 0; i < total.length; i++) total[i] = total[i]! + density[i]!;
  }
  return total;
}

/** Variance, third and fourth cumulant of the slots' needs in proportion to their mean, by span. */
function spreadTable(months: number) {
  const sums = Array.from({ length: months * (months + 1) }, () => ({ mean: 0, variance: 0, third: 0, fourth: 0 }));
  const outliving = new Float64Array(months);
  const cell = (after: number, through: number) => (after + 1) * months + through;
  const shape = { low: 0, chanceLow: 1, chanceHigh: 0 };
  return {
    add(due: Float64Array, density: Float64Array, at: number, newDue: Float64Array, newAt: number, end: number) {
      outliving.fill(0);
      for (let after = -1; after < end - 1; after++) {
        if (after >= 0) addOutliving(density.subarray(at, at + months), 0, newDue, newAt, months, after, outliving);
        let mean = 0;
        for (let through = after + 1; through < months; through++) {
          const last = Math.min(through, end - 1);
          if (through < end) mean += density[at + through]!;
          shapeSlot(chanceOfNone(due[at + last]!, outliving[last]!), mean, shape);
          addCumulants(shape, sums[cell(after, through)]!);
        }
      }
    },
    perNeed(after: number, through: number) {
      const sum = sums[cell(after, through)]!;
      if (sum.mean <= 0) return { variance: 0, third: 0, fourth: 0 };
      return { variance: sum.variance / sum.mean, third: sum.third / sum.mean, fourth: sum.fourth / sum.mean };
    },
  };
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
