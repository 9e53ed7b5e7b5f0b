import { roughLogNormalCdf } from "../maths/rough-normal.ts";
import { type FleetCurve, riseShare } from "./curve.ts";
import { type Bound, type PackEvidence, wearAt } from "./evidence.ts";
import { LOG_LIVES } from "./life-grid.ts";
import { KNEE_LEVELS, type NodeTables } from "./node-tables.ts";

/** The pack's posterior given a curve: chance of each node, and start capacity given the node. */
export interface PackPosterior {
  /** Nodes with chance worth counting: how many, which, and the chance of each; chances add up to 1. */
  count: number;
  nodes: Int32Array;
  chance: Float64Array;
  /** Mean of the start capacity and of the early rise given the node, at the nodes that count. */
  startMean: Float64Array;
  riseMean: Float64Array;
  /** Their variances and covariance, the same for every node. */
  startVariance: number;
  riseVariance: number;
  covariance: number;
  /** Log of the pack's marginal likelihood. */
  logLikelihood: number;
}

/** Room for a posterior, to be used again and again. */
export function emptyPosterior(): PackPosterior {
  const n = LOG_LIVES.length * KNEE_LEVELS;
  return {
    count: 0,
    nodes: new Int32Array(n),
    chance: new Float64Array(n),
    startMean: new Float64Array(n),
    riseMean: new Float64Array(n),
    startVariance: 0,
    riseVariance: 0,
    covariance: 0,
    logLikelihood: 0,
  };
}

/** Lives looked at first; the ones between are visited only where these leave weight. */
const STRIDE = 6;
/** Log weight below the best at which a stretch of nodes is passed over. */
const NEGLIGIBLE = 10;
const LOG_2_PI = Math.log(2 * Math.PI);

/** Weighted sums over a pack's readings of the products of 1, r (rise), y, p (slow power) and k (knee power). */
interface Sums {
  n: number;
  w: number;
  r: number;
  y: number;
  p: number;
  k: number;
  rr: number;
  ry: number;
  rp: number;
  rk: number;
  yy: number;
  yp: number;
  yk: number;
  pp: number;
  pk: number;
  kk: number;
}

function sumReadings(evidence: PackEvidence, curve: FleetCurve): Sums {
  const { years, useYears, capacity, trust } = evidence;
  const sums: Sums = {
    n: years.length,
    ...{ w: 0, r: 0, y: 0, p: 0, k: 0, rr: 0, ry: 0, rp: 0, rk: 0, yy: 0, yp: 0, yk: 0, pp: 0, pk: 0, kk: 0 },
  };
  for (let j = 0; j < years.length; j++) {
    const w = trust[j]!;
    const s = (1 - curve.useShare) * years[j]! + curve.useShare * useYears[j]!;
    const logWear = Math.log(s);
    // centred on what is expected of a new pack: the sums of squares would cancel otherwise
    const r = riseShare(s, curve.earlyYears);
    const y = capacity[j]! - curve.startCapacity - curve.earlyRise * r;
    const p = Math.exp(curve.slowPower * logWear);
    const k = Math.exp(curve.kneePower * logWear);
    sums.w += w;
    sums.r += w * r;
    sums.y += w * y;
    sums.p += w * p;
    sums.k += w * k;
    sums.rr += w * r * r;
    sums.ry += w * r * y;
    sums.rp += w * r * p;
    sums.rk += w * r * k;
    sums.yy += w * y * y;
    sums.yp += w * y * p;
    sums.yk += w * y * k;
    sums.pp += w * p * p;
    sums.pk += w * p * k;
    sums.kk += w * k * k;
  }
  return sums;
}

/**
 * Marginal likelihood of one pack's evidence given the shared curve, and its posterior by node.
 *
 * Given the life and the knee's share, the readings are linear in the start capacity and the early rise, which are
 * integrated out in closed form; fifteen sums over the readings make a node's cost independent of their number.
 */
export function packPosterior(evidence: PackEvidence, tables: NodeTables, into: PackPosterior): void {
  const { curve, logPrior, slow, knee } = tables;
  const sums = sumReadings(evidence, curve);
  const perNoise = 1 / (curve.noise * curve.noise);
  const perStart = 1 / (curve.startSpread * curve.startSpread);
  const perRise = 1 / (curve.earlySpread * curve.earlySpread);
  // precision matrix of start capacity and early rise, and its inverse
  const m11 = sums.w * perNoise + perStart;
  const m12 = sums.r * perNoise;
  const m22 = sums.rr * perNoise + perRise;
  const determinant = m11 * m22 - m12 * m12;
  const v11 = m22 / determinant;
  const v12 = -m12 / determinant;
  const v22 = m11 / determinant;
  const base = -0.5 * (sums.n * (LOG_2_PI - Math.log(perNoise)) + Math.log(determinant / (perStart * perRise)));
  // how the readings pull on the two, from y, p and k each; then their means as an affine function of the factors
  const startOf = (plain: number, byRise: number) => perNoise * (v11 * plain + v12 * byRise);
  const riseOf = (plain: number, byRise: number) => perNoise * (v12 * plain + v22 * byRise);
  const startY = startOf(sums.y, sums.ry);
  const startP = startOf(sums.p, sums.rp);
  const startK = startOf(sums.k, sums.rk);
  const riseY = riseOf(sums.y, sums.ry);
  const riseP = riseOf(sums.p, sums.rp);
  const riseK = riseOf(sums.k, sums.rk);
  const centre = { startY, startP, startK, riseY, riseP, riseK };
  const spread = { v11, v12, v22 };
  const bounds = evidence.bounds.map((bound) => preparedBound(bound, curve, centre, spread));
  // the exponent is a quadratic in the two factors of the loss, so six numbers stand for all readings
  const c0 = base - 0.5 * perNoise * (sums.yy - sums.y * startY - sums.ry * riseY);
  const ca = perNoise * (sums.p * startY + sums.rp * riseY - sums.yp);
  const cb = perNoise * (sums.k * startY + sums.rk * riseY - sums.yk);
  const caa = 0.5 * perNoise * (sums.p * startP + sums.rp * riseP - sums.pp);
  const cbb = 0.5 * perNoise * (sums.k * startK + sums.rk * riseK - sums.kk);
  const cab = perNoise * (sums.p * startK + sums.rp * riseK - sums.pk);

  /** Log weights of nodes first, first + stride, ... below `end`, written from `at` on; returns their number. */
  const look = (first: number, stride: number, end: number, logs: Float64Array, at: number): number => {
    let i = at;
    for (let node = first; node < end; node += stride) {
      const a = slow[node]!;
      const b = knee[node]!;
      let log = logPrior[node]! + c0 + a * (ca + a * caa + b * cab) + b * (cb + b * cbb);
      for (let j = 0; j < bounds.length; j++) {
        const bound = bounds[j]!;
        log += roughLogNormalCdf(bound.gap + a * bound.slow + b * bound.knee);
      }
      logs[i++] = log;
    }
    return i - at;
  };
  const { nodes, chance } = into;
  const { seen, step } = lookWhereItMatters(look, nodes, chance);
  let best = -Infinity;
  for (let i = 0; i < seen; i++) if (chance[i]! > best) best = chance[i]!;
  let total = 0;
  let live = 0;
  for (let i = 0; i < seen; i++) {
    const below = chance[i]! - best;
    if (below < -NEGLIGIBLE) continue;
    const weight = Math.exp(below);
    nodes[live] = nodes[i]!;
    chance[live++] = weight;
    total += weight;
  }
  for (let i = 0; i < live; i++) {
    const node = nodes[i]!;
    chance[i] = chance[i]! / total;
    into.startMean[i] = curve.startCapacity + startY + slow[node]! * startP + knee[node]! * startK;
    into.riseMean[i] = curve.earlyRise + riseY + slow[node]! * riseP + knee[node]! * riseK;
  }
  into.count = live;
  into.startVariance = v11;
  into.riseVariance = v22;
  into.covariance = v12;
  into.logLikelihood = best + Math.log(total * step);
}

const LIVES = LOG_LIVES.length;
const COARSE = Math.floor((LIVES - 1) / STRIDE) + 1;
const coarse = new Float64Array(COARSE * KNEE_LEVELS);

/**
 * Lively stretches of coarse nodes from which a pack's life is so uncertain that every second, or every third,
 * node tells as much as all: the weights are smooth on that scale.
 */
const WIDE = 6;
const VERY_WIDE = 9;

/**
 * Looks at every STRIDE-th life first, then between those that leave weight, as finely as the width asks.
 *
 * @param nodes  receives the nodes looked at that are worth keeping
 * @param logs   receives their log weights
 * @returns how many were kept, and how many nodes each stands for
 */
function lookWhereItMatters(
  look: (first: number, stride: number, end: number, logs: Float64Array, at: number) => number,
  nodes: Int32Array,
  logs: Float64Array,
): { seen: number; step: number } {
  let best = -Infinity;
  let bestLevel = 0;
  for (let level = 0; level < KNEE_LEVELS; level++) {
    look(level * LIVES, STRIDE, (level + 1) * LIVES, coarse, level * COARSE);
    for (let i = level * COARSE; i < (level + 1) * COARSE; i++) {
      if (coarse[i]! <= best) continue;
      best = coarse[i]!;
      bestLevel = level;
    }
  }
  const floor = best - NEGLIGIBLE;
  let lively = 0;
  for (let i = bestLevel * COARSE; i < (bestLevel + 1) * COARSE; i++) if (coarse[i]! >= floor) lively++;
  const step = lively >= VERY_WIDE ? 3 : lively >= WIDE ? 2 : 1;
  let seen = 0;
  for (let level = 0; level < KNEE_LEVELS; level++) {
    for (let c = 0; c < COARSE; c++) {
      const here = coarse[level * COARSE + c]! >= floor;
      const next = c + 1 < COARSE && coarse[level * COARSE + c + 1]! >= floor;
      if (!here && !next) continue;
      // a stretch with weight at either end is filled in, its first node included
      const first = level * LIVES + c * STRIDE;
      const end = Math.min(first + STRIDE, (level + 1) * LIVES);
      const count = look(first, step, end, logs, seen);
      for (let i = 0; i < count; i++) nodes[seen + i] = first + i * step;
      seen += count;
    }
  }
  return { seen, step };
}

/** A one-sided reading with all but the loss factors worked into three numbers. */
function preparedBound(
  bound: Bound,
  curve: FleetCurve,
  centre: { startY: number; startP: number; startK: number; riseY: number; riseP: number; riseK: number },
  { v11, v12, v22 }: { v11: number; v12: number; v22: number },
) {
  const s = wearAt(bound, curve.useShare);
  const logWear = Math.log(s);
  const r = riseShare(s, curve.earlyYears);
  const perSd = 1 / Math.sqrt(v11 + r * (2 * v12 + r * v22) + curve.noise * curve.noise);
  const sign = bound.below ? perSd : -perSd;
  const expected = curve.startCapacity + centre.startY + r * (curve.earlyRise + centre.riseY);
  return {
    gap: sign * (bound.threshold - expected),
    slow: sign * (Math.exp(curve.slowPower * logWear) - centre.startP - r * centre.riseP),
    knee: sign * (Math.exp(curve.kneePower * logWear) - centre.startK - r * centre.riseK),
  };
}
