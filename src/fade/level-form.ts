import { type FleetCurve, riseShare } from "./curve.ts";
import { type Bound, wearAt } from "./evidence.ts";
import type { ReadingSums } from "./reading-sums.ts";

const LOG_2_PI = Math.log(2 * Math.PI);

/** What a pack's start capacity and early rise are, given the readings: their (co)variances, whatever the node. */
export interface StartSpread {
  startVariance: number;
  covariance: number;
  riseVariance: number;
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

/** Spread of start capacity and early rise given the readings, and the part of the likelihood that needs no node. */
export function startSpread({ shared }: ReadingSums, curve: FleetCurve): StartSpread & { base: number } {
  const perNoise = 1 / (curve.noise * curve.noise);
  const perStart = 1 / (curve.startSpread * curve.startSpread);
  const perRise = 1 / (curve.earlySpread * curve.earlySpread);
  const m11 = shared.w * perNoise + perStart;
  const m12 = shared.r * perNoise;
  const m22 = shared.rr * perNoise + perRise;
  const determinant = m11 * m22 - m12 * m12;
  return {
    startVariance: m22 / determinant,
    covariance: -m12 / determinant,
    riseVariance: m11 / determinant,
    base: -0.5 * (shared.n * (LOG_2_PI - Math.log(perNoise)) + Math.log(determinant / (perStart * perRise))),
  };
}

/** The form at one level of shape. */
export function levelForm(
  sums: ReadingSums,
  level: number,
  slowPower: number,
  spread: StartSpread & { base: number },
  bounds: readonly Bound[],
  curve: FleetCurve,
): LevelForm {
  const { shared } = sums;
  const slow = sums.slow[level]!;
  const perNoise = 1 / (curve.noise * curve.noise);
  const startOf = (plain: number, byRise: number) =>
    perNoise * (spread.startVariance * plain + spread.covariance * byRise);
  const riseOf = (plain: number, byRise: number) =>
    perNoise * (spread.covariance * plain + spread.riseVariance * byRise);
  const start = {
    plain: startOf(shared.y, shared.ry),
    slow: startOf(slow.p, slow.rp),
    knee: startOf(shared.k, shared.rk),
  };
  const rise = {
    plain: riseOf(shared.y, shared.ry),
    slow: riseOf(slow.p, slow.rp),
    knee: riseOf(shared.k, shared.rk),
  };
  return {
    c0: spread.base - 0.5 * perNoise * (shared.yy - shared.y * start.plain - shared.ry * rise.plain),
    ca: perNoise * (slow.p * start.plain + slow.rp * rise.plain - slow.yp),
    cb: perNoise * (shared.k * start.plain + shared.rk * rise.plain - shared.yk),
    caa: 0.5 * perNoise * (slow.p * start.slow + slow.rp * rise.slow - slow.pp),
    cbb: 0.5 * perNoise * (shared.k * start.knee + shared.rk * rise.knee - shared.kk),
    cab: perNoise * (slow.p * start.knee + slow.rp * rise.knee - slow.pk),
    start,
    rise,
    bounds: bounds.map((bound) => preparedBound(bound, slowPower, start, rise, spread, curve)),
  };
}

/** A one-sided reading with all but the loss factors worked into three numbers. */
function preparedBound(
  bound: Bound,
  slowPower: number,
  start: Affine,
  rise: Affine,
  spread: StartSpread,
  curve: FleetCurve,
) {
  const s = wearAt(bound, curve.useShare);
  const logWear = Math.log(s);
  const r = riseShare(s, curve.earlyYears);
  const variance = startVarianceAt(spread, r) + curve.noise * curve.noise;
  const sign = (bound.below ? 1 : -1) / Math.sqrt(variance);
  const expected = curve.startCapacity + start.plain + r * (curve.earlyRise + rise.plain);
  return {
    gap: sign * (bound.threshold - expected),
    slow: sign * (Math.exp(slowPower * logWear) - start.slow - r * rise.slow),
    knee: sign * (Math.exp(curve.kneePower * logWear) - start.knee - r * rise.knee),
  };
}

/** Variance of start capacity plus the share r of the early rise. */
export function startVarianceAt({ startVariance, covariance, riseVariance }: StartSpread, r: number): number {
  return startVariance + r * (2 * covariance + r * riseVariance);
}
