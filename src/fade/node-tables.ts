import { FADE_SCALE, type FleetCurve } from "./curve.ts";
import { LOG_LIFE_STEP, LOG_LIVES } from "./life-grid.ts";
import { GIVEN } from "./priors.ts";
import { SLOW, stepsRoom, type WearPowers, wearPowers } from "./wear-powers.ts";

/** Degrees of freedom of the spread of log life between packs: heavier than normal. */
const LIFE_TAIL = 4;
/** Distance of log life from its median beyond which the knee's share changes no more. */
const HARDNESS_AT_MOST = 2.5;
/** Three-point Gauss-Hermite rule: exact for polynomials to the fifth degree under a normal. */
const SHAPE_OFFSETS = [-Math.sqrt(3), 0, Math.sqrt(3)];
const LOG_WEIGHTS = [1 / 6, 2 / 3, 1 / 6].map(Math.log);

/** Levels of shape, from slowing down to speeding up, over which a pack is averaged. */
export const SHAPE_LEVELS = SHAPE_OFFSETS.length;

/** What depends on the curve and the node but not on the pack; node = level * LOG_LIVES.length + life. */
export interface NodeTables {
  curve: FleetCurve;
  /** Powers of wear, with that of the slow loss by level. */
  powers: WearPowers;
  /** Log prior mass of each node. */
  logPrior: Float64Array;
  /** Factor of s^p in the loss, per node, p by its level. */
  slow: Float64Array;
  /** Factor of s^k in the loss, per node. */
  knee: Float64Array;
}

/** Room for the powers of one wear, to be used again and again. */
export function powersRoom(): Float64Array {
  return new Float64Array(SLOW + SHAPE_LEVELS);
}

/**
 * Chance that a t variable with LIFE_TAIL degrees of freedom is below z. With four of them it is a polynomial in
 * c = z / sqrt(4 + z^2), as substituting into the density 3/8 (1 + z^2/4)^(-5/2) shows.
 */
function heavyChance(z: number): number {
  const c = z / Math.sqrt(LIFE_TAIL + z * z);
  return 0.5 + 0.25 * c * (3 - c * c);
}

/**
 * Chance that a pack's log life is above a value. A node stands for the stretch half a step around it, whose chance is
 * exact: lives of packs that hardly differ spread by less than a step, and the density at the nodes would miss them.
 */
export function chanceLonger(
  { logMedianLife, lifeSpread, hardUseShare, hardUseGap }: FleetCurve,
  logLife: number,
): number {
  const shorter = logMedianLife - logLife;
  const ordinary = heavyChance(shorter / lifeSpread);
  const hard = heavyChance((shorter - hardUseGap) / GIVEN.hardUseSpread);
  return (1 - hardUseShare) * ordinary + hardUseShare * hard;
}

/** Room for the tables of curves looked at one after the other. */
export function emptyTables() {
  const n = LOG_LIVES.length * SHAPE_LEVELS;
  const room = () => new Float64Array(n);
  return { logPrior: room(), slow: room(), knee: room(), steps: stepsRoom(SHAPE_LEVELS) };
}

/** Node tables of a curve, in the room given. */
export function nodeTables(curve: FleetCurve, room = emptyTables()): NodeTables {
  const n = LOG_LIVES.length;
  const { logPrior, slow, knee, steps } = room;
  const slowPowers = SHAPE_OFFSETS.map((offset) => curve.slowPower * Math.exp(offset * curve.powerSpread));
  // lives lie in equal steps of their logarithm, so that their powers follow one another by a factor
  const slowFactors = slowPowers.map((power) => Math.exp(-power * LOG_LIFE_STEP));
  const slowScales = slowPowers.map((power) => FADE_SCALE * Math.exp(-power * LOG_LIVES[0]!));
  const kneeFactor = Math.exp(-curve.kneePower * LOG_LIFE_STEP);
  let kneeScale = FADE_SCALE * Math.exp(-curve.kneePower * LOG_LIVES[0]!);
  const odds = SHAPE_OFFSETS.map((offset) => Math.exp(-offset * curve.kneeSpread));
  // chance that a life is longer than where a node's stretch of lives begins, and then than where it ends
  let longer = chanceLonger(curve, LOG_LIVES[0]! - LOG_LIFE_STEP / 2);
  for (let g = 0; g < n; g++) {
    const shorter = curve.logMedianLife - LOG_LIVES[g]!;
    const beyond = chanceLonger(curve, LOG_LIVES[g]! + LOG_LIFE_STEP / 2);
    const logMass = Math.log(longer - beyond);
    longer = beyond;
    const hardness = Math.max(-HARDNESS_AT_MOST, Math.min(HARDNESS_AT_MOST, shorter));
    const against = Math.exp(-curve.kneeLogit - curve.kneeByHardness * hardness);
    for (let level = 0; level < SHAPE_LEVELS; level++) {
      const node = level * n + g;
      const share = 1 / (1 + against * odds[level]!);
      logPrior[node] = logMass + LOG_WEIGHTS[level]!;
      slow[node] = slowScales[level]! * (1 - share);
      knee[node] = kneeScale * share;
      slowScales[level] = slowScales[level]! * slowFactors[level]!;
    }
    kneeScale *= kneeFactor;
  }
  return { curve, powers: wearPowers(curve, slowPowers, steps), logPrior, slow, knee };
}
