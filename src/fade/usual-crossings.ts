import { type Crossing, findCrossing } from "./crossing.ts";
import { LOG_LIVES } from "./life-grid.ts";
import type { NodeTables } from "./node-tables.ts";

/*
 * Packs of one item start much alike, so that those of one life and shape cross a threshold close to where a pack of
 * usual start crosses it. That place is looked for once a node, and a pack's own lies a short way off.
 */

/** Where a pack of usual start capacity and early rise crosses a threshold under a curve, by node. */
export interface UsualCrossings {
  tables: NodeTables;
  threshold: number;
  /** PLACES a node; a wear of 0 was not asked for yet. */
  values: Float32Array;
}

/** What is kept of a node: wear, room, slope, bend and rise of its crossing. */
const PLACES = 5;

/** The crossings of a curve at the threshold that was asked for last. */
const known = new WeakMap<NodeTables, UsualCrossings>();

/** Usual crossings of a curve at a threshold. */
export function usualCrossings(tables: NodeTables, threshold: number): UsualCrossings {
  const kept = known.get(tables);
  if (kept?.threshold === threshold) return kept;
  const crossings = { tables, threshold, values: new Float32Array(tables.slow.length * PLACES) };
  known.set(tables, crossings);
  return crossings;
}

/** Relative difference of room up to which a pack's crossing is told from the usual one. */
const NEAR = 0.12;
const usual: Crossing = { wear: 0, room: 1, slope: 1, bend: 0, rise: 1 };

/**
 * Where a pack of one life and shape crosses the threshold.
 *
 * In logs, wear is close to a straight line in the room: two terms of its series about the usual crossing are within
 * 1e-3 of it while the room differs by NEAR at the most. Beyond, the crossing is looked for.
 *
 * @param start  the pack's start capacity, fraction of rated
 * @param rise   its early rise
 */
export function crossingOf(crossings: UsualCrossings, node: number, start: number, rise: number, into: Crossing): void {
  const { tables, threshold, values } = crossings;
  const at = node * PLACES;
  if (values[at] === 0) findUsual(crossings, node);
  const wear = values[at]!;
  const slope = values[at + 2]!;
  const bend = values[at + 3]!;
  const room = start - threshold + rise * values[at + 4]!;
  const more = room / values[at + 1]! - 1;
  if (!(more < NEAR && more > -NEAR)) {
    findCrossing(tables, node, start - threshold, rise, Math.log(wear), into);
    return;
  }
  const logRoom = more * (1 - more * (1 / 2 - more / 3));
  const x = (logRoom / slope) * (1 - (0.5 * bend * logRoom) / (slope * slope));
  into.wear = wear * (1 + x * (1 + x * (1 / 2 + x / 6)));
  into.room = room;
  into.slope = slope + bend * x;
  into.rise = values[at + 4]!;
}

function findUsual({ tables, threshold, values }: UsualCrossings, node: number): void {
  const { startCapacity, earlyRise } = tables.curve;
  const at = node * PLACES;
  const logLife = LOG_LIVES[node % LOG_LIVES.length]!;
  findCrossing(tables, node, startCapacity - threshold, earlyRise, logLife, usual);
  values[at] = usual.wear;
  values[at + 1] = usual.room;
  values[at + 2] = usual.slope;
  values[at + 3] = usual.bend;
  values[at + 4] = usual.rise;
}
