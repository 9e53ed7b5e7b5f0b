/** Chances below this are dropped at the ends of a distribution: far under every service level's concern. */
const NEGLIGIBLE = 1e-14;

/**
 * Distribution of the number of successes among independent trials with their own chances, exact by convolution.
 *
 * @param chances  each 0 to 1
 * @returns chances of 0, 1, ... successes, without a negligible upper tail
 */
export function poissonBinomial(chances: ArrayLike<number>): Float64Array {
  const pmf = new Float64Array(chances.length + 1);
  pmf[0] = 1;
  let top = 0;
  for (let i = 0; i < chances.length; i++) {
    const p = chances[i]!;
    if (p <= 0) continue;
    top++;
    for (let n = top; n > 0; n--) pmf[n] = pmf[n]! * (1 - p) + pmf[n - 1]! * p;
    pmf[0] = pmf[0]! * (1 - p);
    while (top > 0 && pmf[top]! < NEGLIGIBLE) pmf[top--] = 0;
  }
  return pmf.slice(0, top + 1);
}
