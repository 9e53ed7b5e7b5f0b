/** Distribution of the sum of two independent counts from their distributions (index = count). */
export function convolve(a: Float64Array, b: Float64Array): Float64Array {
  if (a.length === 1 && a[0] === 1) return b;
  if (b.length === 1 && b[0] === 1) return a;
  const sum = new Float64Array(a.length + b.length - 1);
  for (let i = 0; i < a.length; i++) {
    const chance = a[i]!;
    if (chance === 0) continue;
    for (let j = 0; j < b.length; j++) sum[i + j] = sum[i + j]! + chance * b[j]!;
  }
  return sum;
}

/** Rounding of sums of chances: a level is met if it is missed by no more than this. */
export const ROUNDING = 1e-12;

/** Smallest count n with chance of at most n >= level; the last count where the level is never met. */
export function quantileOfCounts(pmf: Float64Array, level: number): number {
  let sum = 0;
  for (let n = 0; n < pmf.length; n++) {
    sum += pmf[n]!;
    if (sum >= level - ROUNDING) return n;
  }
  return pmf.length - 1;
}
