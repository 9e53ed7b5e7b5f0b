import { type NodeTables, powersRoom } from "./node-tables.ts";
import { levelOf } from "./pack-posterior.ts";
import { KNEE, powersOfLog, RISE, SLOW } from "./wear-powers.ts";

/** Where a pack of one life and shape crosses a threshold. */
export interface Crossing {
  /** Wear-years at the crossing. */
  wear: number;
  /** Capacity to lose until then, fraction of rated. */
  room: number;
  /** Relative change of that loss with wear, in logs. */
  slope: number;
  /** Change of that slope with log wear. */
  bend: number;
  /** Share of the early rise that has come by then. */
  rise: number;
}

const CLOSE = 1e-3;
const STEPS_AT_MOST = 12;
/** Room above the threshold below which a pack is as good as there. */
const NO_ROOM = 1e-5;
const powersHere = powersRoom();

/**
 * Finds where a slow^p + b knee^k has used up the room above the threshold, the early rise included. In logs the loss
 * is close to a straight line, so that few of Newton's steps do; the early rise changes slowly and is taken as it
 * stands.
 *
 * @param startRoom  start capacity less the threshold
 * @param rise       early rise of the pack
 * @param near       log wear to start from
 * @param into       receives the crossing
 */
export function findCrossing(
  tables: NodeTables,
  node: number,
  startRoom: number,
  rise: number,
  near: number,
  into: Crossing,
): void {
  const { curve, powers } = tables;
  const level = levelOf(node);
  const a = tables.slow[node]!;
  const b = tables.knee[node]!;
  const p = powers.slowPowers[level]!;
  const k = curve.kneePower;
  let x = near;
  for (let step = 0; step < STEPS_AT_MOST; step++) {
    powersOfLog(powers, x, powersHere);
    const slow = a * powersHere[SLOW + level]!;
    const knee = b * powersHere[KNEE]!;
    const room = Math.max(NO_ROOM, startRoom + rise * powersHere[RISE]!);
    const loss = slow + knee;
    const slope = (p * slow + k * knee) / loss;
    const move = Math.log(room / loss) / slope;
    x += move;
    into.room = room;
    into.slope = slope;
    into.bend = (p * p * slow + k * k * knee) / loss - slope * slope;
    into.rise = powersHere[RISE]!;
    if (Math.abs(move) < CLOSE) break;
  }
  into.wear = Math.exp(x);
}

/** Relative changes of room up to which three terms of the series do. */
const SMALL = 0.1;

/** Wear at the crossing when the room is `share` times as large: a power law, as the loss is close to one. */
export function wearAtRoom({ wear, slope }: Crossing, share: number): number {
  if (share <= 0) return 0;
  const u = share - 1;
  const q = 1 / slope;
  if (u < SMALL && u > -SMALL) return wear * (1 + q * u * (1 + 0.5 * (q - 1) * u * (1 + ((q - 2) / 3) * u)));
  return wear * Math.exp(q * Math.log(share));
}
