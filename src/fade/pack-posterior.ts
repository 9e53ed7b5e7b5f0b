import { roughExp } from "../maths/rough-exp.ts";
import { roughLogNormalCdf } from "../maths/rough-normal.ts";
import type { PackEvidence } from "./evidence.ts";
import { emptyForm, type LevelForm, levelForm, type StartSpread, startSpread } from "./level-form.ts";
import { LOG_LIFE_STEP, LOG_LIVES } from "./life-grid.ts";
import { type NodeTables, SHAPE_LEVELS } from "./node-tables.ts";
import { emptySums, sumReadings } from "./reading-sums.ts";

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
  spread: StartSpread;
  /** Log of the pack's marginal likelihood. */
  logLikelihood: number;
}

/** Room for a posterior, to be used again and again. */
export function emptyPosterior(): PackPosterior {
  const n = LOG_LIVES.length * SHAPE_LEVELS;
  return {
    count: 0,
    nodes: new Int32Array(n),
    chance: new Float64Array(n),
    startMean: new Float64Array(n),
    riseMean: new Float64Array(n),
    spread: { startVariance: 0, covariance: 0, riseVariance: 0, base: 0 },
    logLikelihood: 0,
  };
}

const LIVES = LOG_LIVES.length;
/** Steps in which lives are looked at where fewer tell as much. */
const SECOND = 2;
const THIRD = 3;
/**
 * Lives looked at first; the ones between are visited only where these leave weight. A multiple of both steps, so that
 * stretches side by side go on in step.
 */
const STRIDE = SECOND * THIRD;
const COARSE = Math.floor((LIVES - 1) / STRIDE) + 1;
/** Log weight below the best at which a stretch of nodes is passed over. */
const NEGLIGIBLE = 10;

const sums = emptySums(SHAPE_LEVELS);
const forms = Array.from({ length: SHAPE_LEVELS }, emptyForm);
const coarse = new Float64Array(COARSE * SHAPE_LEVELS);

/**
 * Marginal likelihood of one pack's evidence given the shared curve, and its posterior by node.
 *
 * Given life and shape, the readings are linear in the start capacity and the early rise, which are integrated out
 * in closed form; a few sums over the readings make a node's cost independent of their number.
 */
export function packPosterior(evidence: PackEvidence, tables: NodeTables, into: PackPosterior): void {
  const { curve, slow, knee } = tables;
  const { nodes, chance, startMean, riseMean } = into;
  sayReadings(evidence, tables, into.spread);
  const { seen } = lookWhereItMatters(tables, nodes, chance, AT_EVERY_NODE);
  const best = largest(chance, seen);
  let total = 0;
  into.count = 0;
  for (let i = 0; i < seen; i++) {
    const below = chance[i]! - best;
    if (below < -NEGLIGIBLE) continue;
    const weight = Math.exp(below);
    total += weight;
    nodes[into.count] = nodes[i]!;
    chance[into.count++] = weight;
  }
  into.logLikelihood = best + Math.log(total);
  for (let i = 0; i < into.count; i++) {
    const node = nodes[i]!;
    const { start, rise } = forms[levelOf(node)]!;
    const a = slow[node]!;
    const b = knee[node]!;
    chance[i] = chance[i]! / total;
    startMean[i] = curve.startCapacity + start.plain + a * start.slow + b * start.knee;
    riseMean[i] = curve.earlyRise + rise.plain + a * rise.slow + b * rise.knee;
  }
}

/** The same likelihood alone: all that a fit asks. */
export function packLogLikelihood(evidence: PackEvidence, tables: NodeTables): number {
  sayReadings(evidence, tables, spreadHere);
  const { seen, step } = lookWhereItMatters(tables, nodesHere, logsHere, FOR_LIKELIHOOD);
  const best = largest(logsHere, seen);
  let sum = 0;
  for (let i = 0; i < seen; i++) sum += roughExp(logsHere[i]! - best);
  return best + Math.log(sum * step);
}

const { spread: spreadHere, nodes: nodesHere, chance: logsHere } = emptyPosterior();

/** Level of shape of a node. */
export function levelOf(node: number): number {
  return node < LIVES ? 0 : node < 2 * LIVES ? 1 : Math.floor(node / LIVES);
}

/** Works out what a pack's readings say under a curve, by level of shape. */
function sayReadings(evidence: PackEvidence, { powers }: NodeTables, spread: StartSpread): void {
  sumReadings(evidence, powers, sums);
  startSpread(sums, powers.curve, spread);
  for (let level = 0; level < SHAPE_LEVELS; level++) {
    levelForm(sums, level, powers, spread, evidence.bounds, forms[level]!);
  }
}

function largest(values: Float64Array, count: number): number {
  let best = -Infinity;
  for (let i = 0; i < count; i++) if (values[i]! > best) best = values[i]!;
  return best;
}

/** Log weights of nodes first, first + stride, ... below `end`, written from `at` on. */
function look(
  tables: NodeTables,
  form: LevelForm,
  first: number,
  stride: number,
  end: number,
  logs: Float64Array,
  at: number,
): void {
  const { logPrior, slow, knee } = tables;
  const { c0, ca, cb, caa, cbb, cab, bounds } = form;
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
}

/**
 * Lively stretches of coarse nodes from which a pack's life is so uncertain that every second, or every third, node
 * tells as much as all. A sum over steps of h misses a normal of deviation s by 2 exp(-2 (pi s / h)^2): a likelihood
 * needs no more than that; a forecast also shows the nodes' places, and asks for every one.
 */
interface Coarseness {
  everySecond: number;
  everyThird: number;
}
const AT_EVERY_NODE: Coarseness = { everySecond: Infinity, everyThird: Infinity };
const FOR_LIKELIHOOD: Coarseness = { everySecond: 3, everyThird: 5 };
/**
 * Steps in scales of the lives between packs that may be passed over at once. Where readings say little, the posterior has
 * the heavy tails of those lives, which are lively far out, and yet their narrow middle: by the transform of a t with 4
 * degrees of freedom, a sum over steps of 1.2 scales is off by 0.1 %, over twice as long ones by a tenth.
 */
const SCALES_A_STEP = 1.2;

/**
 * Looks at every STRIDE-th life first, then between those that leave weight, as finely as the width asks.
 *
 * @param nodes  receives the nodes looked at that are worth keeping
 * @param logs   receives their log weights
 * @returns how many were kept, and how many nodes each stands for
 */
function lookWhereItMatters(
  tables: NodeTables,
  nodes: Int32Array,
  logs: Float64Array,
  { everySecond, everyThird }: Coarseness,
): { seen: number; step: number } {
  let best = -Infinity;
  let bestLevel = 0;
  for (let level = 0; level < SHAPE_LEVELS; level++) {
    look(tables, forms[level]!, level * LIVES, STRIDE, (level + 1) * LIVES, coarse, level * COARSE);
    for (let i = level * COARSE; i < (level + 1) * COARSE; i++) {
      if (coarse[i]! <= best) continue;
      best = coarse[i]!;
      bestLevel = level;
    }
  }
  const floor = best - NEGLIGIBLE;
  let lively = 0;
  for (let i = bestLevel * COARSE; i < (bestLevel + 1) * COARSE; i++) if (coarse[i]! >= floor) lively++;
  const longest = (SCALES_A_STEP * tables.curve.lifeSpread) / LOG_LIFE_STEP;
  const step =
    lively >= everyThird && longest >= THIRD ? THIRD : lively >= everySecond && longest >= SECOND ? SECOND : 1;
  let seen = 0;
  for (let level = 0; level < SHAPE_LEVELS; level++) {
    const from = level * COARSE;
    for (let c = 0; c < COARSE; c++) {
      const here = coarse[from + c]! >= floor;
      const next = c + 1 < COARSE && coarse[from + c + 1]! >= floor;
      if (!here && !next) continue;
      // a stretch with weight at either end is filled in, its first node included
      const first = level * LIVES + c * STRIDE;
      const end = Math.min(first + STRIDE, (level + 1) * LIVES);
      look(tables, forms[level]!, first, step, end, logs, seen);
      for (let node = first; node < end; node += step) nodes[seen++] = node;
    }
  }
  return { seen, step };
}
