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
  /** Mean of the start capacity given the node, at the nodes that count. */
  startMean: Float64Array;
  /** Standard deviation of the start capacity, the same for every node. */
  startSd: number;
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
    startSd: 0,
    logLikelihood: 0,
  };
}

/** Lives looked at first; the ones between are visited only where these leave weight. */
const STRIDE = 6;
/** Log weight below the best at which a stretch of nodes is passed over. */
const NEGLIGIBLE = 10;
const LOG_2_PI = Math.log(2 * Math.PI);

/** Sums over a pack's readings from which the likelihood of every node follows. */
interface Sums {
  n: number;
  w: number;
  y: number;
  yy: number;
  p: number;
  k: number;
  yp: number;
  yk: number;
  pp: number;
  pk: number;
  kk: number;
}

function sumReadings(evidence: PackEvidence, curve: FleetCurve): Sums {
  const { years, useYears, capacity, trust } = evidence;
  const sums: Sums = { n: years.length, w: 0, y: 0, yy: 0, p: 0, k: 0, yp: 0, yk: 0, pp: 0, pk: 0, kk: 0 };
  for (let j = 0; j < years.length; j++) {
    const w = trust[j]!;
    const s = (1 - curve.useShare) * years[j]! + curve.useShare * useYears[j]!;
    const logWear = Math.log(s);
    // centred on the start capacity: the sums of squares would cancel otherwise
    const y = capacity[j]! - curve.startCapacity - curve.earlyRise * riseShare(s);
    const p = Math.exp(curve.slowPower * logWear);
    const k = Math.exp(curve.kneePower * logWear);
    sums.w += w;
    sums.y += w * y;
    sums.yy += w * y * y;
    sums.p += w * p;
    sums.k += w * k;
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
 * Given the life and the knee's share, the readings are linear in the start capacity, which is integrated out in
 * closed form; ten sums over the readings make a node's cost independent of their number.
 */
export function packPosterior(evidence: PackEvidence, tables: NodeTables, into: PackPosterior): void {
  const { curve, logPrior, slow, knee } = tables;
  const sums = sumReadings(evidence, curve);
  const perNoise = 1 / (curve.noise * curve.noise);
  const startVariance = curve.startSpread * curve.startSpread;
  const precision = sums.w * perNoise + 1 / startVariance;
  const toMean = perNoise / precision;
  const shrink = perNoise * toMean;
  const base = -0.5 * (sums.n * (LOG_2_PI - Math.log(perNoise)) + Math.log(startVariance * precision));
  const bounds = evidence.bounds.map((bound) => preparedBound(bound, curve, precision, toMean, sums));
  // the exponent is a quadratic in the two factors of the loss, so six numbers stand for all readings
  const c0 = base - 0.5 * (sums.yy * perNoise - sums.y * sums.y * shrink);
  const ca = sums.y * sums.p * shrink - sums.yp * perNoise;
  const cb = sums.y * sums.k * shrink - sums.yk * perNoise;
  const caa = 0.5 * (sums.p * sums.p * shrink - sums.pp * perNoise);
  const cbb = 0.5 * (sums.k * sums.k * shrink - sums.kk * perNoise);
  const cab = sums.p * sums.k * shrink - sums.pk * perNoise;

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
    into.startMean[i] = curve.startCapacity + toMean * (sums.y + slow[node]! * sums.p + knee[node]! * sums.k);
  }
  into.count = live;
  into.startSd = 1 / Math.sqrt(precision);
  into.logLikelihood = best + Math.log(total * step);
}

const LIVES = LOG_LIVES.length;
const COARSE = Math.floor((LIVES - 1) / STRIDE) + 1;
const coarse = new Float64Array(COARSE * KNEE_LEVELS);

/**
 * Lively stretches of coarse nodes from which a pack's life is so uncertain that every second, or every third,
 * node tells as much as all: the weights are smooth on that scale.
 */
const WIDE = 4;
const VERY_WIDE = 6;

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
function preparedBound(bound: Bound, curve: FleetCurve, precision: number, toMean: number, sums: Sums) {
  const s = wearAt(bound, curve.useShare);
  const logWear = Math.log(s);
  const perSd = 1 / Math.sqrt(1 / precision + curve.noise * curve.noise);
  const sign = bound.below ? perSd : -perSd;
  return {
    gap: sign * (bound.threshold - curve.startCapacity - curve.earlyRise * riseShare(s) - toMean * sums.y),
    slow: sign * (Math.exp(curve.slowPower * logWear) - toMean * sums.p),
    knee: sign * (Math.exp(curve.kneePower * logWear) - toMean * sums.k),
  };
}
