import { logGamma } from "./log-gamma.ts";
import { normalQuantile } from "./normal.ts";

/**
 * Chance that a gamma variable of unit scale is at most x (the regularised lower incomplete gamma function).
 *
 * @param shape  > 0
 * @param x  >= 0
 * @see Press et al. (2007), Numerical Recipes, 3rd ed., 6.2: series below shape + 1, continued fraction above
 */
export function gammaCdf(shape: number, x: number): number {
  if (x <= 0) return 0;
  const front = Math.exp(shape * Math.log(x) - x - logGamma(shape));
  if (x < shape + 1) {
    let term = 1 / shape;
    let sum = term;
    for (let n = 1; n < 10_000 && term > sum * 1e-17; n++) {
      term *= x / (shape + n);
      sum += term;
    }
    return Math.min(1, front * sum);
  }
  const tiny = 1e-300;
  let b = x + 1 - shape;
  let c = 1 / tiny;
  let d = 1 / b;
  let fraction = d;
  for (let n = 1; n < 10_000; n++) {
    const a = -n * (n - shape);
    b += 2;
    d = a * d + b;
    if (Math.abs(d) < tiny) d = tiny;
    c = b + a / c;
    if (Math.abs(c) < tiny) c = tiny;
    d = 1 / d;
    const step = d * c;
    fraction *= step;
    if (Math.abs(step - 1) < 1e-16) break;
  }
  return Math.max(0, 1 - front * fraction);
}

/**
 * The x with gammaCdf(shape, x) = p, by Newton's rule kept between bounds; relative error about 1e-14.
 *
 * @param p  below 1
 *
 * @see Wilson, E. B. and Hilferty, M. M. (1931), The distribution of chi-square, PNAS 17, 684-688, for where it starts
 */
export function gammaQuantile(shape: number, p: number): number {
  if (p <= 0) return 0;
  const cube = 1 - 1 / (9 * shape) + normalQuantile(p) / (3 * Math.sqrt(shape));
  // where little can lie below, the distribution is a power of x
  let x = cube > 0.2 ? shape * cube * cube * cube : Math.exp((Math.log(p) + logGamma(shape + 1)) / shape);
  let low = 0;
  let high = Number.POSITIVE_INFINITY;
  for (let step = 0; step < 200; step++) {
    const above = gammaCdf(shape, x) - p;
    if (above < 0) low = x;
    else high = x;
    const density = Math.exp((shape - 1) * Math.log(x) - x - logGamma(shape));
    let next = x - above / density;
    if (!(next > low && next < high)) next = high === Number.POSITIVE_INFINITY ? 2 * x : (low + high) / 2;
    if (Math.abs(next - x) <= 1e-15 * x) return next;
    x = next;
  }
  return x;
}
