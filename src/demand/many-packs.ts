import { seededRandom } from "../maths/random.ts";
import { refinedNormalCdf } from "../maths/refined-normal.ts";
import { seedFromText } from "../maths/text-seed.ts";
import { addSlotPath } from "./few-packs.ts";
import { renewalDensity, slotInSpan } from "./slot.ts";
import { slotMoments } from "./slot-sum.ts";
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
 * Needs of an item with many packs. Per draw a refined normal: the mean is that draw's own; second and third moments
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
    const { variance, third } = spread.perNeed(after, through);
    return { mean, variance: mean * variance, third: mean * third };
  };
  const chanceUpTo = (n: number, moments: readonly Moments[]) =>
    moments.reduce((sum, { mean, variance, third }) => sum + refinedNormalCdf(n, mean, variance, third), 0) / draws;
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

interface Moments {
  mean: number;
  variance: number;
  third: number;
}

function highest(moments: readonly Moments[]): number {
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

/** Variance and third central moment of the slots' needs in proportion to their mean, by span. */
function spreadTable(months: number) {
  const size = months * (months + 1);
  const means = new Float64Array(size);
  const variances = new Float64Array(size);
  const thirds = new Float64Array(size);
  const cell = (after: number, through: number) => (after + 1) * months + through;
  return {
    add(due: Float64Array, density: Float64Array, at: number, newDue: Float64Array, newAt: number, end: number) {
      for (let after = -1; after < end - 1; after++) {
        for (let through = after + 1; through < months; through++) {
          const slot = slotInSpan(due, density, at, newDue, newAt, after, Math.min(through, end - 1));
          const { mean, variance, third } = slotMoments(slot);
          const into = cell(after, through);
          means[into] = means[into]! + mean;
          variances[into] = variances[into]! + variance;
          thirds[into] = thirds[into]! + third;
        }
      }
    },
    perNeed(after: number, through: number) {
      const at = cell(after, through);
      const mean = means[at]!;
      if (mean <= 0) return { variance: 0, third: 0 };
      return { variance: variances[at]! / mean, third: thirds[at]! / mean };
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
