import { type Cumulants, refinedNormalCdf } from "../maths/refined-normal.ts";

/**
 * From this variance on a sum of slots is taken as refined normal: the error of its distribution function is then below
 * 3e-4 (measured against exact convolution in the tests), and convolution would take ten times as long.
 */
export const VARIANCE_OF_A_NORMAL = 12;
const NEGLIGIBLE = 1e-13;

/**
 * A slot's needs in a span: none, or `low`, or low + 1, from the chance of none and the mean, both of which are kept
 * exactly. Where one need at the most can fall in the span this is all there is to know; where a slot needs several
 * in turn, their number is taken as one of the two whole numbers around its mean.
 */
export interface SlotShape {
  low: number;
  chanceLow: number;
  chanceHigh: number;
}

/** Fills `shape` for a slot. */
export function shapeSlot(none: number, mean: number, shape: SlotShape): void {
  const some = 1 - none;
  if (some < NEGLIGIBLE) {
    shape.low = 0;
    shape.chanceLow = 1;
    shape.chanceHigh = 0;
    return;
  }
  const given = mean > some ? mean / some : 1;
  // a hair above a whole number is rounding
  shape.low = Math.floor(given + 1e-9);
  shape.chanceHigh = given - shape.low > 1e-9 ? some * (given - shape.low) : 0;
  shape.chanceLow = some - shape.chanceHigh;
}

/** Adds a slot's cumulants to a sum. */
export function addCumulants({ low, chanceLow, chanceHigh }: SlotShape, sum: Cumulants): void {
  const none = 1 - chanceLow - chanceHigh;
  const mean = chanceLow * low + chanceHigh * (low + 1);
  const below = -mean;
  const near = low - mean;
  const above = low + 1 - mean;
  const belows = below * below;
  const nears = near * near;
  const aboves = above * above;
  // products, not powers: this runs for every slot, draw and span
  const variance = none * belows + chanceLow * nears + chanceHigh * aboves;
  const third = none * belows * below + chanceLow * nears * near + chanceHigh * aboves * above;
  const fourth = none * belows * belows + chanceLow * nears * nears + chanceHigh * aboves * aboves;
  sum.mean += mean;
  sum.variance += variance;
  sum.third += third;
  sum.fourth += fourth - 3 * variance * variance;
}

/**
 * Adds, with a weight, the distribution of the total needs of independent slots to `mixture`: exact by convolution, or
 * refined normal from VARIANCE_OF_A_NORMAL on.
 *
 * @param shapes  the first `slots` are read
 * @param mixture  index = count; long enough for the sum's largest count
 * @param scratch  as long as mixture
 */
export function addSlotSum(
  shapes: readonly SlotShape[],
  slots: number,
  weight: number,
  mixture: Float64Array,
  scratch: Float64Array,
): void {
  let variance = 0;
  for (let i = 0; i < slots && variance < VARIANCE_OF_A_NORMAL; i++) {
    const { low, chanceLow, chanceHigh } = shapes[i]!;
    const mean = low * chanceLow + (low + 1) * chanceHigh;
    variance += low * low * chanceLow + (low + 1) * (low + 1) * chanceHigh - mean * mean;
  }
  if (variance < VARIANCE_OF_A_NORMAL) {
    addExact(shapes, slots, weight, mixture, scratch);
    return;
  }
  const sum = { mean: 0, variance: 0, third: 0, fourth: 0 };
  for (let i = 0; i < slots; i++) addCumulants(shapes[i]!, sum);
  addNormal(sum, weight, mixture);
}

function addExact(
  shapes: readonly SlotShape[],
  slots: number,
  weight: number,
  mixture: Float64Array,
  sum: Float64Array,
): void {
  sum[0] = 1;
  let top = 0;
  let certain = 0;
  for (let i = 0; i < slots; i++) {
    const { low, chanceLow, chanceHigh } = shapes[i]!;
    if (low === 0) continue;
    if (chanceHigh === 0 && chanceLow >= 1 - NEGLIGIBLE) {
      certain += low;
      continue;
    }
    const none = 1 - chanceLow - chanceHigh;
    const reach = top + low + (chanceHigh > 0 ? 1 : 0);
    for (let n = top + 1; n <= reach; n++) sum[n] = 0;
    if (low === 1 && chanceHigh === 0) {
      for (let n = reach; n > 0; n--) sum[n] = sum[n]! * none + sum[n - 1]! * chanceLow;
      sum[0] = sum[0]! * none;
    } else {
      for (let n = reach; n >= 0; n--) {
        let chance = sum[n]! * none;
        if (n >= low) chance += sum[n - low]! * chanceLow;
        if (n > low) chance += sum[n - low - 1]! * chanceHigh;
        sum[n] = chance;
      }
    }
    top = reach;
    while (top > 0 && sum[top]! < NEGLIGIBLE) top--;
  }
  for (let n = 0; n <= top; n++) mixture[certain + n] = mixture[certain + n]! + weight * sum[n]!;
}

function addNormal(sum: Cumulants, weight: number, mixture: Float64Array): void {
  const reach = 8 * Math.sqrt(sum.variance) + 2;
  const from = Math.max(0, Math.floor(sum.mean - reach));
  const to = Math.min(mixture.length - 1, Math.ceil(sum.mean + reach));
  let below = 0;
  for (let n = from; n <= to; n++) {
    const upTo = n === to ? 1 : Math.max(below, refinedNormalCdf(n, sum));
    mixture[n] = mixture[n]! + weight * (upTo - below);
    below = upTo;
  }
}
