import { refinedNormalCdf } from "../maths/refined-normal.ts";
import type { SlotCounts } from "./slot.ts";

/**
 * Above this variance a sum of slots is taken as refined normal: the error of its distribution function is then below
 * 1e-3 (measured against exact convolution in the tests).
 */
export const VARIANCE_OF_A_NORMAL = 25;
const NEGLIGIBLE = 1e-13;

/**
 * Adds, with a weight, the distribution of the total needs of independent slots to `mixture`.
 *
 * A slot has no need, or one, or more: its chance of none and its mean are kept exactly; where the mean shows that
 * several needs fall in the span they are taken as the two whole numbers around their mean.
 *
 * @param mixture  index = count; long enough for the sum's largest count
 * @param scratch  as long as mixture
 */
export function addSlotSum(
  slots: readonly SlotCounts[],
  weight: number,
  mixture: Float64Array,
  scratch: Float64Array,
): void {
  let certain = 0;
  let mean = 0;
  let variance = 0;
  let third = 0;
  const open: SlotShape[] = [];
  for (const slot of slots) {
    const shape = slotShape(slot);
    if (shape.certain) {
      certain += shape.low;
      continue;
    }
    open.push(shape);
    const moments = momentsOf(shape);
    mean += moments.mean;
    variance += moments.variance;
    third += moments.third;
  }
  if (variance > VARIANCE_OF_A_NORMAL) addNormal(certain + mean, variance, third, weight, mixture);
  else addExact(open, certain, weight, mixture, scratch);
}

/** Mean, variance and third central moment of a slot's needs. */
export function slotMoments(slot: SlotCounts): { mean: number; variance: number; third: number } {
  return momentsOf(slotShape(slot));
}

/** No need, `low` needs with chance `least`, or low + 1 with chance `high`. */
interface SlotShape {
  low: number;
  least: number;
  high: number;
  certain: boolean;
}

function slotShape({ none, mean }: SlotCounts): SlotShape {
  const some = 1 - none;
  if (some < NEGLIGIBLE) return { low: 0, least: 0, high: 0, certain: true };
  const given = Math.max(1, mean / some);
  const low = Math.floor(given + 1e-9);
  const high = some * Math.max(0, given - low);
  return { low, least: some - high, high, certain: none < NEGLIGIBLE && high < NEGLIGIBLE };
}

function momentsOf({ low, least, high }: SlotShape): { mean: number; variance: number; third: number } {
  const mean = least * low + high * (low + 1);
  const square = least * low ** 2 + high * (low + 1) ** 2;
  const cube = least * low ** 3 + high * (low + 1) ** 3;
  return { mean, variance: square - mean * mean, third: cube - 3 * mean * square + 2 * mean ** 3 };
}

function addExact(
  open: readonly SlotShape[],
  certain: number,
  weight: number,
  mixture: Float64Array,
  sum: Float64Array,
): void {
  sum[0] = 1;
  let top = 0;
  for (const { low, least, high } of open) {
    const none = 1 - least - high;
    const reach = top + low + (high > 0 ? 1 : 0);
    for (let n = top + 1; n <= reach; n++) sum[n] = 0;
    for (let n = reach; n >= 0; n--) {
      let chance = sum[n]! * none;
      if (n >= low) chance += sum[n - low]! * least;
      if (n > low) chance += sum[n - low - 1]! * high;
      sum[n] = chance;
    }
    top = reach;
    while (top > 0 && sum[top]! < NEGLIGIBLE) top--;
  }
  for (let n = 0; n <= top; n++) mixture[certain + n] = mixture[certain + n]! + weight * sum[n]!;
}

function addNormal(mean: number, variance: number, third: number, weight: number, mixture: Float64Array): void {
  const reach = 8 * Math.sqrt(variance) + 2;
  const from = Math.max(0, Math.floor(mean - reach));
  const to = Math.min(mixture.length - 1, Math.ceil(mean + reach));
  let below = 0;
  for (let n = from; n <= to; n++) {
    const upTo = n === to ? 1 : Math.max(below, refinedNormalCdf(n, mean, variance, third));
    mixture[n] = mixture[n]! + weight * (upTo - below);
    below = upTo;
  }
}
