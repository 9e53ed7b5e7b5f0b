/*
 * Gamma function family by Stirling's series after shifting the argument up, where the series holds to double
 * precision. See Abramowitz and Stegun (1964), Handbook of Mathematical Functions, 6.1.41 and 6.3.18.
 */

const SERIES_HOLDS_FROM = 12;
const HALF_LOG_2_PI = 0.9189385332046728;

/** Natural logarithm of the gamma function, x > 0; absolute error about 1e-14 near its zeros. */
export function logGamma(x: number): number {
  let product = 1;
  let at = x;
  while (at < SERIES_HOLDS_FROM) product *= at++;
  const r = 1 / (at * at);
  const series = (1 / 12 - r * (1 / 360 - r * (1 / 1260 - r * (1 / 1680 - r * (1 / 1188 - (r * 691) / 360360))))) / at;
  return (at - 0.5) * Math.log(at) - at + HALF_LOG_2_PI + series - Math.log(product);
}

/** Derivative of logGamma, x > 0. */
export function digamma(x: number): number {
  let shift = 0;
  let at = x;
  while (at < SERIES_HOLDS_FROM) shift += 1 / at++;
  const r = 1 / (at * at);
  const series = r * (1 / 12 - r * (1 / 120 - r * (1 / 252 - r * (1 / 240 - r * (1 / 132 - (r * 691) / 32760)))));
  return Math.log(at) - 0.5 / at - series - shift;
}
