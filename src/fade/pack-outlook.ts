import { type Crossing, wearAtRoom } from "./crossing.ts";
import { type PackEvidence, wearAt } from "./evidence.ts";
import { type GridChances, gridChances } from "./grid-chances.ts";
import type { ItemFit } from "./item-fit.ts";
import { startVarianceAt } from "./level-form.ts";
import { emptyHead, headOf, NODE_PLACES, posteriorsByCurve } from "./posteriors-by-curve.ts";
import { FARTHEST, FIRST, POINTS } from "./spread-points.ts";
import { INDEX_PER_LOG_STRETCH } from "./time-grid.ts";
import { addArrival, chancesOf, spreadOverSteps, spreadTally, TALLY_SIZE } from "./time-tally.ts";
import { crossingOf, usualCrossings } from "./usual-crossings.ts";
import { daysToWear, type WearAhead } from "./wear-ahead.ts";

/** Spread of a node's log time ahead up to which only its variance is added to the spread of all. */
const NARROW = 0.1;
/** Up to here three points stand for it (Gauss-Hermite); beyond, many. */
const NEARLY_NORMAL = 0.15;
const OFFSETS = [-Math.sqrt(3), 0, Math.sqrt(3)];
const WEIGHTS = [1 / 6, 2 / 3, 1 / 6];
const POINTS_A_NODE = 16;

/** What nodes of narrow spread bring, each at its middle, and what the others bring, at points. */
const narrow = new Float64Array(TALLY_SIZE);
const wide = new Float64Array(TALLY_SIZE);
const spreadOut = new Float64Array(TALLY_SIZE);
const head = emptyHead();
const crossing: Crossing = { wear: 0, room: 1, slope: 1, bend: 0, rise: 1 };

/**
 * Chance that a pack's true capacity is below a threshold, by curve and time ahead, with the pack's own part of the
 * model error and before the part that all packs share. Non-decreasing in time.
 *
 * Each life and shape that the readings leave open crosses the threshold at one wear; its start capacity and the pace
 * of time spread that crossing in time.
 *
 * @param evidence    the pack's readings; empty for a pack never tested
 * @param ahead       the pack's clocks from now on
 * @param threshold   fraction of rated
 * @param ownSpread   standard deviation of log time ahead, the pack's own part
 * @param posteriors  the pack's under the fit's curves, where they are kept
 * @returns chances by curve; tests/fade/pack-outlook.test.ts holds their error
 */
export function chancesBelow(
  evidence: PackEvidence,
  ahead: WearAhead,
  fit: Pick<ItemFit, "tables">,
  threshold: number,
  ownSpread: number,
  posteriors = posteriorsByCurve(evidence, fit.tables),
): GridChances {
  const { nodes, numbers } = posteriors;
  const own = spreadOverSteps(ownSpread * INDEX_PER_LOG_STRETCH);
  let dealt = 0;
  return gridChances(fit.tables.length, (c, into) => {
    const tables = fit.tables[c]!;
    const { useShare } = tables.curve;
    headOf(posteriors, c, head);
    const usual = usualCrossings(tables, threshold);
    const now = wearAt(ahead.now, useShare);
    const perDay = wearAt(ahead.perDay, useShare);
    narrow.fill(0);
    wide.fill(0);
    let counted = 0;
    let variances = 0;
    let narrows = 0;
    for (let i = head.from; i < head.end; i++) {
      const weight = numbers[i * NODE_PLACES]!;
      counted += weight;
      crossingOf(usual, nodes[i]!, numbers[i * NODE_PLACES + 1]!, numbers[i * NODE_PLACES + 2]!, crossing);
      const { wear, slope, room } = crossing;
      const aheadShare = (wear - now) / wear;
      const startVariance = startVarianceAt(head, crossing.rise);
      // of the log of wear at the crossing; of the time ahead it is greater, the less of that wear lies ahead
      const ofWear = startVariance / (room * room * slope * slope);
      if (aheadShare > 0 && ofWear < NARROW * NARROW * aheadShare * aheadShare) {
        const days = ahead.even ? (wear - now) / perDay : daysToWear(ahead, useShare, wear);
        addArrival(narrow, days, weight);
        variances += (weight * ofWear) / (aheadShare * aheadShare);
        narrows += weight;
        continue;
      }
      const relative = Math.sqrt(startVariance) / room;
      // long past the threshold at every point
      if (wearAtRoom(crossing, 1 + FARTHEST * relative) <= now) {
        wide[0] = wide[0]! + weight;
        dealt = (dealt + POINTS_A_NODE) % POINTS;
        continue;
      }
      const few = aheadShare > 0 && ofWear < NEARLY_NORMAL * NEARLY_NORMAL * aheadShare * aheadShare;
      for (let point = 0; point < (few ? OFFSETS.length : POINTS_A_NODE); point++) {
        const at = wearAtRoom(crossing, 1 + (few ? OFFSETS[point]! : FIRST[dealt]!) * relative);
        dealt = dealt + 1 === POINTS ? 0 : dealt + 1;
        const days = ahead.even ? (at - now) / perDay : daysToWear(ahead, useShare, at);
        addArrival(wide, days, few ? weight * WEIGHTS[point]! : weight / POINTS_A_NODE);
      }
    }
    spreadOut.fill(0);
    if (narrows > 0) {
      const sd = Math.sqrt(ownSpread * ownSpread + variances / narrows);
      spreadTally(narrow, spreadOverSteps(sd * INDEX_PER_LOG_STRETCH), spreadOut);
    }
    if (narrows < counted) spreadTally(wide, own, spreadOut);
    chancesOf(spreadOut, counted, into);
  });
}
