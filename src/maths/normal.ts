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
  if (x > 8) return 0;
  if (x > -20) return Math.log(normalCdf(x));
  // Mills ratio, first terms of its asymptotic series: absolute error of the logarithm below 3e-7 there
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
  3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987, 67265.7709270087,
  33430.57558358813, 2509.0809287301227,
];
const CENTRE_BELOW = [
  1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271, 28729.085735721943,
  5226.495278852854,
];
const MIDDLE_ABOVE = [
  1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684, 0.2417807251774506,
  0.022723844989269184, 0.0007745450142783414,
];
const MIDDLE_BELOW = [
  1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457,
  0.0005475938084995345, 1.0507500716444169e-9,
];
const TAIL_ABOVE = [
  6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487, 0.026532189526576124,
  0.0012426609473880784, 2.7115555687434876e-5, 2.0103343992922881e-7,
];
const TAIL_BELOW = [
  1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133, 1.8463183175100548e-5,
  1.421511758316446e-7, 2.0442631033899397e-15,
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
