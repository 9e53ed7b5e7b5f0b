import { logNormalCdf } from "../maths/normal.ts";
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
const NEGLIGIBLE = 12;
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
  const bounds = evidence.bounds.map((bound) => preparedBound(bound, curve, precision));
  const { nodes, chance } = into;

  const look = (node: number): number => {
    const a = slow[node]!;
    const b = knee[node]!;
    const sum = sums.y + a * sums.p + b * sums.k;
    const square = sums.yy + a * (a * sums.pp + 2 * sums.yp + 2 * b * sums.pk) + b * (b * sums.kk + 2 * sums.yk);
    let log = logPrior[node]! + base - 0.5 * (square * perNoise - sum * sum * shrink);
    for (const bound of bounds) {
      const expected = a * bound.slow + b * bound.knee - toMean * sum;
      log += logNormalCdf((bound.gap + expected) * bound.perSd);
    }
    return log;
  };
  const { seen, best } = lookWhereItMatters(look, nodes, chance);

  let total = 0;
  let live = 0;
  for (let i = 0; i < seen; i++) {
    const log = chance[i]!;
    if (log < best - NEGLIGIBLE) continue;
    nodes[live] = nodes[i]!;
    chance[live] = Math.exp(log - best);
    total += chance[live]!;
    live++;
  }
  for (let i = 0; i < live; i++) {
    const node = nodes[i]!;
    chance[i] = chance[i]! / total;
    into.startMean[i] = curve.startCapacity + toMean * (sums.y + slow[node]! * sums.p + knee[node]! * sums.k);
  }
  into.count = live;
  into.startSd = 1 / Math.sqrt(precision);
  into.logLikelihood = best + Math.log(total);
}

const LIVES = LOG_LIVES.length;
const COARSE = Math.floor((LIVES - 1) / STRIDE) + 1;
const coarse = new Float64Array(COARSE * KNEE_LEVELS);

/**
 * Looks at every STRIDE-th life first, then between those that leave weight.
 *
 * @param nodes  receives the nodes worth keeping
 * @param logs   receives their log weights
 * @returns how many were kept, and the largest log weight
 */
function lookWhereItMatters(look: (node: number) => number, nodes: Int32Array, logs: Float64Array) {
  let best = -Infinity;
  for (let level = 0; level < KNEE_LEVELS; level++) {
    for (let c = 0; c < COARSE; c++) {
      const log = look(level * LIVES + c * STRIDE);
      coarse[level * COARSE + c] = log;
      if (log > best) best = log;
    }
  }
  const floor = best - NEGLIGIBLE;
  let seen = 0;
  for (let level = 0; level < KNEE_LEVELS; level++) {
    let nextLively = coarse[level * COARSE]! >= floor;
    for (let c = 0; c < COARSE; c++) {
      const lively = nextLively;
      nextLively = c + 1 < COARSE && coarse[level * COARSE + c + 1]! >= floor;
      const node = level * LIVES + c * STRIDE;
      if (lively) {
        nodes[seen] = node;
        logs[seen++] = coarse[level * COARSE + c]!;
      }
      if (!lively && !nextLively) continue;
      for (let k = 1; k < STRIDE && c * STRIDE + k < LIVES; k++) {
        const log = look(node + k);
        if (log > best) best = log;
        nodes[seen] = node + k;
        logs[seen++] = log;
      }
    }
  }
  return { seen, best };
}

/** A one-sided reading with its powers of wear taken and its sign folded in. */
function preparedBound(bound: Bound, curve: FleetCurve, precision: number) {
  const s = wearAt(bound, curve.useShare);
  const logWear = Math.log(s);
  const perSd = 1 / Math.sqrt(1 / precision + curve.noise * curve.noise);
  return {
    gap: bound.threshold - curve.startCapacity - curve.earlyRise * riseShare(s),
    slow: Math.exp(curve.slowPower * logWear),
    knee: Math.exp(curve.kneePower * logWear),
    perSd: bound.below ? perSd : -perSd,
  };
}
