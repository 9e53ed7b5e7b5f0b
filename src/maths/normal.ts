/*
 * The normal distribution to double precision. simple-statistics has a table lookup (error 2e-3) and a coarse
 * quantile, which service levels and first-passage chances cannot rest on.
 */

const SQRT_2_PI = Math.sqrt(2 * Math.PI);

/** Standard normal density at x. */
export function normalDensity(x: number): number {
  return Math.exp(-0.5 * x * x) / SQRT_2_PI;
}

/**
 * Standard normal distribution function, absolute error below 1e-15.
 *
 * @param x  any number; infinities give 0 and 1
 * @see Hart, J. F. et al. (1968), Computer Approximations, Wiley, no. 5666; continued fraction beyond 7.07
 */
export function normalCdf(x: number): number {
  const size = Math.abs(x);
  if (size > 38) return x > 0 ? 1 : 0;
  const weight = Math.exp(-0.5 * size * size);
  let tail: number;
  if (size < 7.07106781186547) {
    const above =
      (((((0.0352624965998911 * size + 0.700383064443688) * size + 6.37396220353165) * size + 33.912866078383) * size +
        112.079291497871) *
        size +
        221.213596169931) *
        size +
      220.206867912376;
    const below =
      ((((((0.0883883476483184 * size + 1.75566716318264) * size + 16.064177579207) * size + 86.7807322029461) * size +
        296.564248779674) *
        size +
        637.333633378831) *
        size +
        793.826512519948) *
        size +
      440.413735824752;
    tail = (weight * above) / below;
  } else {
    const fraction = size + 1 / (size + 2 / (size + 3 / (size + 4 / (size + 0.65))));
    tail = weight / fraction / SQRT_2_PI;
  }
  return x > 0 ? 1 - tail : tail;
}

/**
 * Natural logarithm of the standard normal distribution function; stays finite where the function underflows.
 *
 * @param x  any finite number
 */
export function logNormalCdf(x: number): number {
  if (x > -20) return Math.log(normalCdf(x));
  // Mills ratio, first terms of its asymptotic series: relative error below 1e-7 there
  const square = x * x;
  return -0.5 * square - Math.log(-x * SQRT_2_PI) + Math.log1p(-1 / square + 3 / (square * square));
}

/** Horner's scheme, coefficients from the constant term up. */
function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (let i = coefficients.length - 1; i >= 0; i--) sum = sum * x + coefficients[i]!;
  return sum;
}

const CENTRE_ABOVE = [
  3.387132872796366608, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125, 45921.953931549871457,
  67265.770927008700853, 33430.575583588128105, 2509.0809287301226727,
];
const CENTRE_BELOW = [
  1, 42.313330701600911252, 687.1870074920579083, 5394.1960214247511077, 21213.794301586595867, 39307.89580009271061,
  28729.085735721942674, 5226.495278852854561,
];
const MIDDLE_ABOVE = [
  1.42343711074968357734, 4.6303378461565452959, 5.7694972214606914055, 3.64784832476320460504, 1.27045825245236838258,
  0.24178072517745061177, 0.0227238449892691845833, 7.7454501427834140764e-4,
];
const MIDDLE_BELOW = [
  1, 2.05319162663775882187, 1.6763848301838038494, 0.68976733498510000455, 0.14810397642748007459,
  0.0151986665636164571966, 5.475938084995344946e-4, 1.05075007164441684324e-9,
];
const TAIL_ABOVE = [
  6.6579046435011037772, 5.4637849111641143699, 1.7848265399172913358, 0.29656057182850489123, 0.026532189526576123093,
  0.0012426609473880784386, 2.71155556874348757815e-5, 2.01033439929228813265e-7,
];
const TAIL_BELOW = [
  1, 0.59983220655588793769, 0.13692988092273580531, 0.0148753612908506148525, 7.868691311456132591e-4,
  1.8463183175100546818e-5, 1.4215117583164458887e-7, 2.04426310338993978564e-15,
];

/**
 * Standard normal quantile, relative error about 1e-16.
 *
 * @param p  chance, 0 to 1; 0 and 1 give infinities
 * @throws RangeError outside 0 to 1
 * @see Wichura, M. J. (1988), Algorithm AS 241, Applied Statistics 37, 477-484
 */
export function normalQuantile(p: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`normalQuantile: a chance lies between 0 and 1, not ${p}`);
  const fromHalf = p - 0.5;
  if (Math.abs(fromHalf) <= 0.425) {
    const r = 0.180625 - fromHalf * fromHalf;
    return (fromHalf * polynomial(CENTRE_ABOVE, r)) / polynomial(CENTRE_BELOW, r);
  }
  const smaller = fromHalf < 0 ? p : 1 - p;
  if (smaller === 0) return fromHalf < 0 ? -Infinity : Infinity;
  const r = Math.sqrt(-Math.log(smaller));
  const size =
    r <= 5
      ? polynomial(MIDDLE_ABOVE, r - 1.6) / polynomial(MIDDLE_BELOW, r - 1.6)
      : polynomial(TAIL_ABOVE, r - 5) / polynomial(TAIL_BELOW, r - 5);
  return fromHalf < 0 ? -size : size;
}
