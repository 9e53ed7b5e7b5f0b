import type { PackEvidence } from "./evidence.ts";
import { LOG_LIFE_STEP, LOG_LIVES } from "./life-grid.ts";
import { type NodeTables, SHAPE_LEVELS } from "./node-tables.ts";
import { emptyPosterior, packPosterior } from "./pack-posterior.ts";

/*
 * A pack's pace is how fast it wears against the middling pack of its item, once age, temperature and cycles are
 * allowed for: the item's median life over the pack's own. Here always as a logarithm.
 */

/** The pace of one pack. */
export interface PackPace {
  /** What its readings alone say, one a curve: a mean, and how unsure that is; null where they say nothing. */
  seen: (SeenPace | null)[];
  /**
   * Chances by log pace, its siblings heeded too, averaged over curves; see `paceAbove` and `paceQuantile`. Holds
   * until the next pack is told.
   */
  tally: Float64Array;
}

export interface SeenPace {
  estimate: number;
  variance: number;
}

/** Log pace runs from LOWEST in equal steps. */
const LOWEST = -4;
const STEP = 0.02;
const STEPS = 400;
const SIDE = Math.round((LOG_LIFE_STEP / STEP - 1) / 2);

/** What is believed of a log pace where only a pack's own readings are to speak: next to nothing. */
const WIDE = 1;
/** Information (one over variance) below which readings say nothing. */
const FAINTEST = 0.3;

const room = emptyPosterior();

/** Prepares to tell packs' paces under some curves of their item. */
export function paceTeller(curves: readonly NodeTables[]): (evidence: PackEvidence) => PackPace {
  const reweights = curves.map(wideOverUsual);
  const tally = new Float64Array(STEPS);
  return (evidence) => {
    tally.fill(0);
    const seen = curves.map((tables, c) => paceUnder(evidence, tables, reweights[c]!, tally, 1 / curves.length));
    return { seen, tally };
  };
}

/** A pack's pace under one curve; its chances are added to the tally. */
function paceUnder(
  evidence: PackEvidence,
  tables: NodeTables,
  reweight: Float64Array,
  tally: Float64Array,
  share: number,
): SeenPace | null {
  packPosterior(evidence, tables, room);
  let total = 0;
  let sum = 0;
  let squares = 0;
  for (let i = 0; i < room.count; i++) {
    const life = room.nodes[i]! % LOG_LIVES.length;
    const pace = tables.curve.logMedianLife - LOG_LIVES[life]!;
    // a life stands for those half a step of its grid to either side
    const at = Math.max(SIDE, Math.min(STEPS - 1 - SIDE, Math.floor((pace - LOWEST) / STEP)));
    const each = (share * room.chance[i]!) / (2 * SIDE + 1);
    for (let near = at - SIDE; near <= at + SIDE; near++) tally[near] = tally[near]! + each;
    const weight = room.chance[i]! * reweight[life]!;
    total += weight;
    sum += weight * pace;
    squares += weight * pace * pace;
  }
  const mean = sum / total;
  const variance = Math.max(1e-6, squares / total - mean * mean);
  const information = 1 / variance - 1 / (WIDE * WIDE);
  // a normal likelihood times the wide prior gave this mean and variance: without the prior they are these
  return information > FAINTEST ? { estimate: mean / variance / information, variance: 1 / information } : null;
}

/** By life: the density of a wide normal about the median over what the curve believes beforehand. */
function wideOverUsual({ curve, logPrior }: NodeTables): Float64Array {
  const lives = LOG_LIVES.length;
  return LOG_LIVES.map((logLife, life) => {
    let usual = 0;
    for (let level = 0; level < SHAPE_LEVELS; level++) usual += Math.exp(logPrior[level * lives + life]!);
    const z = (curve.logMedianLife - logLife) / WIDE;
    return Math.exp(-0.5 * z * z) / usual;
  });
}

/** Chance that a log pace lies above a level. */
export function paceAbove({ tally }: PackPace, level: number): number {
  let above = 0;
  for (let at = 0; at < STEPS; at++) {
    const from = LOWEST + at * STEP;
    const share = Math.max(0, Math.min(1, (from + STEP - level) / STEP));
    above += share * tally[at]!;
  }
  return above;
}

/** The log pace below which a share of the chance lies. */
export function paceQuantile({ tally }: PackPace, share: number): number {
  let sum = 0;
  for (let at = 0; at < STEPS; at++) {
    const mass = tally[at]!;
    if (mass > 0 && sum + mass >= share) return LOWEST + (at + (share - sum) / mass) * STEP;
    sum += mass;
  }
  return LOWEST + STEPS * STEP;
}
