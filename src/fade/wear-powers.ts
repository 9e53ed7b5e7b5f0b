import { type FleetCurve, riseShare } from "./curve.ts";

/*
 * What a curve makes of a wear s: the share of the early rise that has come, s to the knee's power, and s to the power
 * of the slow loss at each level of shape. Five exponentials a moment; a forecast asks for millions of moments, so its
 * curves keep them in a table over log wear.
 */

/** Places in the array that receives them: rise, knee, then the slow loss by level. */
export const RISE = 0;
export const KNEE = 1;
export const SLOW = 2;

/** The range of the table in log wear-years, from a quarter of a day to seven hundred years, and its steps a unit. */
const LOWEST = -7.25;
const HIGHEST = 6.5;
const PER_UNIT = 96;
const STEPS = Math.round((HIGHEST - LOWEST) * PER_UNIT);

/** The powers of a curve, exact or from a table. */
export interface WearPowers {
  curve: FleetCurve;
  slowPowers: readonly number[];
  /** By step of log wear, the values in the order of their places; null where they are worked out each time. */
  table: Float32Array | null;
}

/** The powers with their table: straight lines in it are off by a relative (power / 96)^2 / 8, 3e-4 at a power of 5. */
export function tabled(powers: WearPowers): WearPowers {
  const { curve, slowPowers } = powers;
  const width = SLOW + slowPowers.length;
  const table = new Float32Array((STEPS + 1) * width);
  const values = new Float64Array(width);
  for (let i = 0; i <= STEPS; i++) {
    exactly(powers, LOWEST + i / PER_UNIT, values);
    table.set(values, i * width);
  }
  return { curve, slowPowers, table };
}

/**
 * Writes the powers of a wear.
 *
 * @param wear  wear-years, >= 0
 * @param into  receives rise, knee and the slow loss by level
 */
export function powersOf(powers: WearPowers, wear: number, into: Float64Array): void {
  powersOfLog(powers, Math.log(wear), into);
}

/** The same of the natural logarithm of a wear. */
export function powersOfLog(powers: WearPowers, logWear: number, into: Float64Array): void {
  const { table } = powers;
  const at = (logWear - LOWEST) * PER_UNIT;
  if (table === null || !(at >= 0 && at < STEPS)) {
    exactly(powers, logWear, into);
    return;
  }
  const width = SLOW + powers.slowPowers.length;
  const below = Math.floor(at);
  const share = at - below;
  const from = below * width;
  for (let i = 0; i < width; i++) {
    const value = table[from + i]!;
    into[i] = value + share * (table[from + width + i]! - value);
  }
}

function exactly({ curve, slowPowers }: WearPowers, logWear: number, into: Float64Array): void {
  into[RISE] = riseShare(Math.exp(logWear), curve.earlyYears);
  into[KNEE] = Math.exp(curve.kneePower * logWear);
  for (let level = 0; level < slowPowers.length; level++) into[SLOW + level] = Math.exp(slowPowers[level]! * logWear);
}
