import type { FleetCurve } from "./curve.ts";
import { type Bound, wearAt } from "./evidence.ts";
import { powersRoom } from "./node-tables.ts";
import type { ReadingSums } from "./reading-sums.ts";
import { KNEE, powersOf, RISE, SLOW, type WearPowers } from "./wear-powers.ts";

const LOG_2_PI = Math.log(2 * Math.PI);

/** What a pack's start capacity and early rise are, given the readings: their (co)variances, whatever the node. */
export interface StartSpread {
  startVariance: number;
  covariance: number;
  riseVariance: number;
  /** The part of the log likelihood that needs no node. */
  base: number;
}

/**
 * A pack's likelihood at one level of shape, with start capacity and early rise integrated out: log likelihood
 * c0 + a (ca + a caa + b cab) + b (cb + b cbb) in the two factors a (slow) and b (knee) of the loss, and the two
 * means as affine functions of the same factors.
 */
export interface LevelForm {
  c0: number;
  ca: number;
  cb: number;
  caa: number;
  cbb: number;
  cab: number;
  start: Affine;
  rise: Affine;
  /** One-sided readings: gap + a slow + b knee is how many standard deviations they lie on the likely side. */
  bounds: { gap: number; slow: number; knee: number }[];
}

interface Affine {
  plain: number;
  slow: number;
  knee: number;
}

const NO_BOUNDS: LevelForm["bounds"] = [];

/** Room for a form, to be used again and again. */
export function emptyForm(): LevelForm {
  const affine = () => ({ plain: 0, slow: 0, knee: 0 });
  return { c0: 0, ca: 0, cb: 0, caa: 0, cbb: 0, cab: 0, start: affine(), rise: affine(), bounds: NO_BOUNDS };
}

/** Spread of start capacity and early rise given the readings. */
export function startSpread({ shared }: ReadingSums, curve: FleetCurve, into: StartSpread): void {
  const perNoise = 1 / (curve.noise * curve.noise);
  const perStart = 1 / (curve.startSpread * curve.startSpread);
  const perRise = 1 / (curve.earlySpread * curve.earlySpread);
  const m11 = shared.w * perNoise + perStart;
  const m12 = shared.r * perNoise;
  const m22 = shared.rr * perNoise + perRise;
  const determinant = m11 * m22 - m12 * m12;
  into.startVariance = m22 / determinant;
  into.covariance = -m12 / determinant;
  into.riseVariance = m11 / determinant;
  into.base = -0.5 * (shared.n * (LOG_2_PI - Math.log(perNoise)) + Math.log(determinant / (perStart * perRise)));
}

/** The form at one level of shape. */
export function levelForm(
  sums: ReadingSums,
  level: number,
  powers: WearPowers,
  spread: StartSpread,
  bounds: readonly Bound[],
  into: LevelForm,
): void {
  const { shared } = sums;
  const { curve } = powers;
  const slow = sums.slow[level]!;
  const perNoise = 1 / (curve.noise * curve.noise);
  const startBy = perNoise * spread.startVariance;
  const cross = perNoise * spread.covariance;
  const riseBy = perNoise * spread.riseVariance;
  const { start, rise } = into;
  start.plain = startBy * shared.y + cross * shared.ry;
  start.slow = startBy * slow.p + cross * slow.rp;
  start.knee = startBy * shared.k + cross * shared.rk;
  rise.plain = cross * shared.y + riseBy * shared.ry;
  rise.slow = cross * slow.p + riseBy * slow.rp;
  rise.knee = cross * shared.k + riseBy * shared.rk;
  into.c0 = spread.base - 0.5 * perNoise * (shared.yy - shared.y * start.plain - shared.ry * rise.plain);
  into.ca = perNoise * (slow.p * start.plain + slow.rp * rise.plain - slow.yp);
  into.cb = perNoise * (shared.k * start.plain + shared.rk * rise.plain - shared.yk);
  into.caa = 0.5 * perNoise * (slow.p * start.slow + slow.rp * rise.slow - slow.pp);
  into.cbb = 0.5 * perNoise * (shared.k * start.knee + shared.rk * rise.knee - shared.kk);
  into.cab = perNoise * (slow.p * start.knee + slow.rp * rise.knee - slow.pk);
  into.bounds =
    bounds.length === 0 ? NO_BOUNDS : bounds.map((bound) => preparedBound(bound, level, powers, start, rise, spread));
}

const powersHere = powersRoom();

/** A one-sided reading with all but the loss factors worked into three numbers. */
function preparedBound(
  bound: Bound,
  level: number,
  powers: WearPowers,
  start: Affine,
  rise: Affine,
  spread: StartSpread,
) {
  const { curve } = powers;
  powersOf(powers, wearAt(bound, curve.useShare), powersHere);
  const r = powersHere[RISE]!;
  const variance = startVarianceAt(spread, r) + curve.noise * curve.noise;
  const sign = (bound.below ? 1 : -1) / Math.sqrt(variance);
  const expected = curve.startCapacity + start.plain + r * (curve.earlyRise + rise.plain);
  return {
    gap: sign * (bound.threshold - expected),
    slow: sign * (powersHere[SLOW + level]! - start.slow - r * rise.slow),
    knee: sign * (powersHere[KNEE]! - start.knee - r * rise.knee),
  };
}

/** Variance of start capacity plus the share r of the early rise. */
export function startVarianceAt(spread: Omit<StartSpread, "base">, r: number): number {
  return spread.startVariance + r * (2 * spread.covariance + r * spread.riseVariance);
}
