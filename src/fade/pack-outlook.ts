import { normalCdf } from "../maths/normal.ts";
import { riseShare } from "./curve.ts";
import { type Moment, type PackEvidence, wearAt } from "./evidence.ts";
import type { ItemFit } from "./item-fit.ts";
import { startVarianceAt } from "./level-form.ts";
import { LOG_LIVES } from "./life-grid.ts";
import { SHAPE_LEVELS } from "./node-tables.ts";
import { emptyPosterior, packPosterior } from "./pack-posterior.ts";
import { GRID_SIZE } from "./time-grid.ts";

/** Chance below which a node is left out of a pack's forecast. */
const NODE_WORTH_COUNTING = 1e-3;
/** Beyond this many standard deviations a chance is 0 or 1 to 1e-6. */
const CERTAIN = 5;

const posterior = emptyPosterior();
const slowLosses = new Float64Array(SHAPE_LEVELS * GRID_SIZE);
const kneePowers = new Float64Array(GRID_SIZE);
const rises = new Float64Array(GRID_SIZE);
const perSds = new Float64Array(GRID_SIZE);

/**
 * Chance that a pack's true capacity is below a threshold, by draw and time ahead, before any model error.
 * Non-decreasing in time.
 *
 * @param evidence   the pack's readings; empty for a pack never tested
 * @param moments    the pack's clocks at the times of the grid
 * @param threshold  fraction of rated
 * @returns draws * GRID_SIZE chances, draw-major
 */
export function chancesBelow(
  evidence: PackEvidence,
  moments: readonly Moment[],
  fit: Pick<ItemFit, "tables">,
  threshold: number,
): Float32Array {
  const result = new Float32Array(fit.tables.length * GRID_SIZE);
  fit.tables.forEach((tables, draw) => {
    const { curve, slowPowers, slow, knee } = tables;
    packPosterior(evidence, tables, posterior);
    for (let k = 0; k < GRID_SIZE; k++) {
      const s = wearAt(moments[k]!, curve.useShare);
      const logWear = Math.log(s);
      slowPowers.forEach((power, level) => {
        slowLosses[level * GRID_SIZE + k] = Math.exp(power * logWear);
      });
      kneePowers[k] = Math.exp(curve.kneePower * logWear);
      const r = riseShare(s, curve.earlyYears);
      rises[k] = r;
      perSds[k] = 1 / Math.sqrt(startVarianceAt(posterior.spread, r));
    }
    const start = draw * GRID_SIZE;
    let counted = 0;
    for (let i = 0; i < posterior.count; i++) {
      const chance = posterior.chance[i]!;
      if (chance < NODE_WORTH_COUNTING) continue;
      counted += chance;
      const a = slow[posterior.nodes[i]!]!;
      const b = knee[posterior.nodes[i]!]!;
      const room = posterior.startMean[i]! - threshold;
      const rise = posterior.riseMean[i]!;
      const level = Math.floor(posterior.nodes[i]! / LOG_LIVES.length) * GRID_SIZE;
      let highest = -Infinity;
      for (let k = 0; k < GRID_SIZE; k++) {
        // the early rise may make capacity grow for a while: what was below once stays due
        const z = (a * slowLosses[level + k]! + b * kneePowers[k]! - rise * rises[k]! - room) * perSds[k]!;
        if (z > highest) highest = z;
        if (highest < -CERTAIN) continue;
        if (highest > CERTAIN) {
          for (let rest = k; rest < GRID_SIZE; rest++) result[start + rest] = result[start + rest]! + chance;
          break;
        }
        result[start + k] = result[start + k]! + chance * normalCdf(highest);
      }
    }
    for (let k = 0; k < GRID_SIZE; k++) result[start + k] = Math.min(1, result[start + k]! / counted);
  });
  return result;
}
