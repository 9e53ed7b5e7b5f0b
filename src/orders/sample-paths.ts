import type { ItemDemand } from "../demand/types.ts";
import { nameKey } from "../fleet/name-key.ts";
import { seededRandom } from "../maths/random.ts";
import { seedFromText } from "../maths/text-seed.ts";

/** Possible futures that spend and shortage are counted over. */
export const SAMPLED_PATHS = 400;

/**
 * Possible futures of an item's needs by month. Path n of every item belongs to the same draw, so that what the items
 * share stays shared; beyond the draw the items are independent. The seed hangs on the item's name alone: the order of
 * items or rows changes nothing.
 */
export function samplePaths(demand: ItemDemand, paths = SAMPLED_PATHS): Int32Array[] {
  let known = sampled.get(demand);
  if (known?.length !== paths) {
    known = drawPaths(demand, paths);
    sampled.set(demand, known);
  }
  return known;
}

/** Paths are asked for again by every stage that counts over them. */
const sampled = new WeakMap<ItemDemand, Int32Array[]>();

function drawPaths(demand: ItemDemand, paths: number): Int32Array[] {
  const random = seededRandom(seedFromText(nameKey(demand.item)));
  return Array.from({ length: paths }, (_, path) => {
    const draw = demand.draws > paths ? Math.floor((path * demand.draws) / paths) : path % demand.draws;
    return demand.samplePath(draw, random.uniform);
  });
}
