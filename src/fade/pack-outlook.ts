import type { PackEvidence } from "./evidence.ts";
import { wearAt } from "./evidence.ts";
import type { ItemFit } from "./item-fit.ts";
import { startVarianceAt } from "./level-form.ts";
import { LOG_LIVES } from "./life-grid.ts";
import type { NodeTables } from "./node-tables.ts";
import { emptyPosterior, levelOf, packPosterior } from "./pack-posterior.ts";
import { FIRST, POINTS, SECOND } from "./spread-points.ts";
import { GRID_SIZE, gridIndex, INDEX_PER_LOG_STRETCH } from "./time-grid.ts";
import { daysToWear, type WearAhead } from "./wear-ahead.ts";
import { KNEE, powersOfLog, RISE, SLOW } from "./wear-powers.ts";

/** Chance below which a node is left out of a pack's forecast. */
const NODE_WORTH_COUNTING = 1e-3;

const posterior = emptyPosterior();

/**
 * Chance that a pack's true capacity is below a threshold, by curve and time ahead, with the pack's own part of the
 * model error and before the part that all packs share. Non-decreasing in time.
 *
 * Each life and shape that the readings leave open crosses the threshold at one wear, found by Newton's rule; the
 * spread of its start capacity and of the pace of time are taken at points dealt from node to node.
 *
 * @param evidence   the pack's readings; empty for a pack never tested
 * @param ahead      the pack's clocks from now on
 * @param threshold  fraction of rated
 * @param ownSpread  standard deviation of log time ahead, the pack's own part
 * @returns curves * GRID_SIZE chances, curve-major
 */
export function chancesBelow(
  evidence: PackEvidence,
  ahead: WearAhead,
  fit: Pick<ItemFit, "tables">,
  threshold: number,
  ownSpread: number,
): Float32Array {
  const result = new Float32Array(fit.tables.length * GRID_SIZE);
  const ownShift = ownSpread * INDEX_PER_LOG_STRETCH;
  let dealt = 0;
  for (let c = 0; c < fit.tables.length; c++) {
    const tables = fit.tables[c]!;
    const { useShare } = tables.curve;
    packPosterior(evidence, tables, posterior);
    const now = wearAt(ahead.now, useShare);
    const perDay = wearAt(ahead.perDay, useShare);
    const from = c * GRID_SIZE;
    let counted = 0;
    startOver();
    for (let i = 0; i < posterior.count; i++) {
      const chance = posterior.chance[i]!;
      if (chance < NODE_WORTH_COUNTING) continue;
      counted += chance;
      findCrossing(tables, posterior.nodes[i]!, posterior.startMean[i]! - threshold, posterior.riseMean[i]!);
      const relative = Math.sqrt(startVarianceAt(posterior.spread, crossing.rise)) / crossing.room;
      const z = FIRST[dealt]!;
      const shift = SECOND[dealt]! * ownShift;
      dealt = dealt + 1 === POINTS ? 0 : dealt + 1;
      // two points a node, on either side of its middle
      for (let side = -1; side <= 1; side += 2) {
        const wear = wearAtRoom(1 + side * z * relative);
        const days = ahead.even ? (wear - now) / perDay : daysToWear(ahead, useShare, wear);
        const at = from + binOf(days, side * shift);
        if (at < from + GRID_SIZE) result[at] = result[at]! + chance;
      }
    }
    let sum = 0;
    for (let k = from; k < from + GRID_SIZE; k++) {
      sum += result[k]!;
      result[k] = Math.min(1, sum / (2 * counted));
    }
  }
  return result;
}

/** The first grid time by which something comes that comes after some days, before its shift; GRID_SIZE for never. */
function binOf(days: number, shift: number): number {
  if (!(days > 0)) return 0;
  const index = gridIndex(days, shift / INDEX_PER_LOG_STRETCH);
  return index >= GRID_SIZE - 1 ? GRID_SIZE : Math.ceil(index);
}

/** Where the last node crossed: its wear, the loss there, its slope in logs, and the early rise's share. */
const crossing = { wear: 0, room: 1, slope: 1, rise: 1 };
/** Start of the search, relative to the node's own log life; the last node's is a good start for its neighbour. */
let startAt = 0;
const powersHere = new Float64Array(16);
const CLOSE = 1e-3;
const STEPS_AT_MOST = 12;
/** Room above the threshold below which a pack is as good as there. */
const NO_ROOM = 1e-5;

function startOver(): void {
  startAt = 0;
}

/**
 * Finds where a slow^p + b knee^k has used up the room above the threshold, the early rise included. In logs the loss
 * is close to a straight line, so that few steps do; the early rise changes slowly and is taken as it stands.
 */
function findCrossing(tables: NodeTables, node: number, startRoom: number, rise: number): void {
  const { curve, powers } = tables;
  const level = levelOf(node);
  const logLife = LOG_LIVES[node - level * LOG_LIVES.length]!;
  const a = tables.slow[node]!;
  const b = tables.knee[node]!;
  const p = powers.slowPowers[level]!;
  let x = logLife + startAt;
  for (let step = 0; step < STEPS_AT_MOST; step++) {
    powersOfLog(powers, x, powersHere);
    const slow = a * powersHere[SLOW + level]!;
    const knee = b * powersHere[KNEE]!;
    const room = Math.max(NO_ROOM, startRoom + rise * powersHere[RISE]!);
    const loss = slow + knee;
    const slope = (p * slow + curve.kneePower * knee) / loss;
    const move = Math.log(room / loss) / slope;
    x += move;
    crossing.room = room;
    crossing.slope = slope;
    crossing.rise = powersHere[RISE]!;
    if (Math.abs(move) < CLOSE) break;
  }
  startAt = x - logLife;
  crossing.wear = Math.exp(x);
}

/** Relative changes of room up to which three terms of the series do. */
const SMALL = 0.1;

/** Wear at the crossing when the room is `share` times as large: a power law, as the loss is close to one. */
function wearAtRoom(share: number): number {
  if (share <= 0) return 0;
  const u = share - 1;
  const q = 1 / crossing.slope;
  if (u < SMALL && u > -SMALL) return crossing.wear * (1 + q * u * (1 + 0.5 * (q - 1) * u * (1 + ((q - 2) / 3) * u)));
  return crossing.wear * Math.exp(q * Math.log(share));
}
