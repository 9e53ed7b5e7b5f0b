import { type FleetCurve, riseShare } from "./curve.ts";

/*
 * What a curve makes of a wear s: the share of the early rise that has come, s to the knee's power, and s to the power
 * of the slow loss at each level of shape. Fits and forecasts ask for many millions of these, and an exponential each
 * would be most of what a fit takes: so powers are known at even steps of log wear, and told from the nearest.
 */

/** Places in the array that receives them: rise, knee, then the slow loss by level. */
export const RISE = 0;
export const KNEE = 1;
export const SLOW = 2;

/** The range of the steps in log wear-years, from four days to a hundred years, and the steps a unit. */
const LOWEST = -4.6;
const HIGHEST = 4.6;
const PER_UNIT = 32;
const STEPS = Math.round((HIGHEST - LOWEST) * PER_UNIT);

/** The powers of a curve. */
export interface WearPowers {
  curve: FleetCurve;
  slowPowers: readonly number[];
  /** By step of log wear, the knee's power and then those of the slow loss. */
  steps: Float64Array;
}

/** Room for the steps, to be used again and again. */
export function stepsRoom(levels: number): Float64Array {
  return new Float64Array((STEPS + 1) * (levels + 1));
}

/** The powers of a curve, in the room given. From one step to the next a power grows by a factor. */
export function wearPowers(curve: FleetCurve, slowPowers: readonly number[], steps: Float64Array): WearPowers {
  const width = slowPowers.length + 1;
  for (let place = 0; place < width; place++) {
    const power = place === 0 ? curve.kneePower : slowPowers[place - 1]!;
    const factor = Math.exp(power / PER_UNIT);
    let value = Math.exp(power * LOWEST);
    for (let at = place; at < steps.length; at += width) {
      steps[at] = value;
      value *= factor;
    }
  }
  return { curve, slowPowers, steps };
}

/**
 * Writes the powers of a wear. Up to half a step from where s^p is known, s^p is that times exp(y), |y| <= p / 64, of
 * which four terms are taken: off by a relative y^4 / 24, 2e-6 at a power of 5. Exact beyond the steps.
 *
 * @param wear  wear-years, >= 0
 * @param into  receives rise, knee and the slow loss by level
 */
export function powersOf(powers: WearPowers, wear: number, into: Float64Array): void {
  write(powers, wear, Math.log(wear), into);
}

/** The same of the natural logarithm of a wear. */
export function powersOfLog(powers: WearPowers, logWear: number, into: Float64Array): void {
  write(powers, Math.exp(logWear), logWear, into);
}

function write({ curve, slowPowers, steps }: WearPowers, wear: number, logWear: number, into: Float64Array): void {
  const levels = slowPowers.length;
  into[RISE] = riseShare(wear, curve.earlyYears);
  const at = (logWear - LOWEST) * PER_UNIT;
  if (!(at >= 0 && at <= STEPS)) {
    into[KNEE] = Math.exp(curve.kneePower * logWear);
    for (let level = 0; level < levels; level++) into[SLOW + level] = Math.exp(slowPowers[level]! * logWear);
    return;
  }
  const step = Math.floor(at + 0.5);
  const off = (at - step) / PER_UNIT;
  const from = step * (levels + 1);
  into[KNEE] = steps[from]! * nearOne(curve.kneePower * off);
  for (let level = 0; level < levels; level++) {
    into[SLOW + level] = steps[from + 1 + level]! * nearOne(slowPowers[level]! * off);
  }
}

/** exp(y) of a small y, to four terms. */
const nearOne = (y: number) => 1 + y * (1 + y * (1 / 2 + y / 6));
