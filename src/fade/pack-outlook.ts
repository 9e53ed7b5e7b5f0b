import { type Crossing, findCrossing, wearAtRoom } from "./crossing.ts";
import { type PackEvidence, wearAt } from "./evidence.ts";
import type { ItemFit } from "./item-fit.ts";
import { startVarianceAt } from "./level-form.ts";
import { LOG_LIFE_STEP } from "./life-grid.ts";
import { emptyPosterior, packPosterior } from "./pack-posterior.ts";
import { FIRST, POINTS, SECOND } from "./spread-points.ts";
import { GRID_SIZE, INDEX_PER_LOG_STRETCH } from "./time-grid.ts";
import { addArrival, chancesOf, spreadOverSteps, TALLY_SIZE } from "./time-tally.ts";
import { daysToWear, type WearAhead } from "./wear-ahead.ts";

/** Chance below which a node is left out of a pack's forecast. */
const NODE_WORTH_COUNTING = 3e-4;
/** Spread of log time, from the start capacity, up to which three points stand for it (Gauss-Hermite). */
const NEARLY_NORMAL = 0.15;
const OFFSETS = [-Math.sqrt(3), 0, Math.sqrt(3)];
const WEIGHTS = [1 / 6, 2 / 3, 1 / 6];
/** Beyond, it is taken at this many points a node. */
const POINTS_A_NODE = 16;
/** Standard deviation of a flat spread over one step. */
const FLAT = Math.sqrt(1 / 12);

const tally = new Float64Array(TALLY_SIZE);
const posterior = emptyPosterior();
const crossing: Crossing = { wear: 0, room: 1, slope: 1, rise: 1 };

/**
 * Chance that a pack's true capacity is below a threshold, by curve and time ahead, with the pack's own part of the
 * model error and before the part that all packs share. Non-decreasing in time.
 *
 * Each life and shape that the readings leave open crosses the threshold at one wear; its start capacity, the pace of
 * time and the step from one life to the next spread that crossing in time.
 *
 * @param evidence   the pack's readings; empty for a pack never tested
 * @param ahead      the pack's clocks from now on
 * @param threshold  fraction of rated
 * @param ownSpread  standard deviation of log time ahead, the pack's own part
 * @returns curves * GRID_SIZE chances, curve-major; tests/fade/pack-outlook.test.ts holds their error
 */
export function chancesBelow(
  evidence: PackEvidence,
  ahead: WearAhead,
  fit: Pick<ItemFit, "tables">,
  threshold: number,
  ownSpread: number,
): Float32Array {
  const result = new Float32Array(fit.tables.length * GRID_SIZE);
  const own = spreadOverSteps(ownSpread * INDEX_PER_LOG_STRETCH);
  let dealt = 0;
  for (let c = 0; c < fit.tables.length; c++) {
    const tables = fit.tables[c]!;
    const { useShare } = tables.curve;
    packPosterior(evidence, tables, posterior);
    const { count, nodes, chance, startMean, riseMean, spread } = posterior;
    const now = wearAt(ahead.now, useShare);
    const perDay = wearAt(ahead.perDay, useShare);
    const lifeStep = posterior.step === 1 ? 0 : FLAT * LOG_LIFE_STEP * posterior.step;
    tally.fill(0);
    let counted = 0;
    let startAt = 0;
    for (let i = 0; i < count; i++) {
      const weight = chance[i]!;
      if (weight < NODE_WORTH_COUNTING) continue;
      counted += weight;
      startAt = findCrossing(tables, nodes[i]!, startMean[i]! - threshold, riseMean[i]!, startAt, crossing);
      const { wear, slope, room } = crossing;
      const relative = Math.sqrt(startVarianceAt(spread, crossing.rise)) / room;
      const byStart = (relative / slope) * (wear / (wear - now));
      const few = byStart > 0 && byStart < NEARLY_NORMAL;
      for (let point = 0; point < (few ? OFFSETS.length : POINTS_A_NODE); point++) {
        let at = wearAtRoom(crossing, 1 + (few ? OFFSETS[point]! : FIRST[dealt]!) * relative);
        if (lifeStep > 0) at *= 1 + lifeStep * SECOND[dealt]!;
        dealt = dealt + 1 === POINTS ? 0 : dealt + 1;
        const days = ahead.even ? (at - now) / perDay : daysToWear(ahead, useShare, at);
        addArrival(tally, days, few ? weight * WEIGHTS[point]! : weight / POINTS_A_NODE);
      }
    }
    chancesOf(tally, own, counted, result, c * GRID_SIZE);
  }
  return result;
}
