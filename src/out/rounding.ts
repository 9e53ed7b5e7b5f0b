/** Decimal digits kept of a capacity or a chance. */
export const CHANCE_DIGITS = 4;
/** Decimal digits kept of an expected number of units. */
const UNIT_DIGITS = 3;
/** Significant digits kept of a fitted parameter. */
const PARAMETER_DIGITS = 10;

/** Powers of ten, exact. */
const TENS = [1, 10, 100, 1000, 10_000] as const;
/** Below it a whole number and a half are told apart with certainty. */
const LARGEST_SCALED = 1e9;
const NEAR_A_HALF = 0.499999;

/** A number rounded to decimal digits, as the same double in every engine; never -0. */
export function roundTo(value: number, digits: number): number {
  // well away from a tie both ways agree, since a quotient of whole numbers is the double nearest to the decimal
  const ten = TENS[digits];
  if (ten !== undefined) {
    const scaled = value * ten;
    const whole = Math.round(scaled);
    if (Math.abs(scaled) < LARGEST_SCALED && Math.abs(scaled - whole) < NEAR_A_HALF) return whole / ten + 0;
  }
  // adding 0 turns -0 into 0, which would otherwise differ between JSON ("0") and comparisons
  return Number(value.toFixed(digits)) + 0;
}

/** A chance rounded to 4 digits and held inside [0, 1], which sums of floating point may leave by an ulp. */
export function roundChance(value: number): number {
  return roundTo(Math.min(1, Math.max(0, value)), CHANCE_DIGITS);
}

/** Expected units rounded to 3 digits; never negative. */
export function roundUnits(value: number): number {
  return roundTo(Math.max(0, value), UNIT_DIGITS);
}

/** A parameter rounded to 10 significant digits; never -0. */
export function roundParameter(value: number): number {
  return Number(value.toPrecision(PARAMETER_DIGITS)) + 0;
}
