import { logGamma } from "./log-gamma.ts";

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

/** Smallest x with gammaCdf(shape, x) >= p, by bisection on the logarithm; relative error about 1e-14. */
export function gammaQuantile(shape: number, p: number): number {
  if (p <= 0) return 0;
  let low = -800;
  let high = Math.log(shape + 10 * Math.sqrt(shape) + 800);
  for (let step = 0; step < 90; step++) {
    const middle = (low + high) / 2;
    if (gammaCdf(shape, Math.exp(middle)) < p) low = middle;
    else high = middle;
  }
  return Math.exp(high);
}
