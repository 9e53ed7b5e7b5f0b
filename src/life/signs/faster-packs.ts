import type { FadingItem } from "../../fade/fade-items.ts";
import type { NodeTables } from "../../fade/node-tables.ts";
import type { PackPace } from "../../fade/pack-paces.ts";
import { mixtureAbove, mixtureQuantile } from "../../maths/normal-mixture.ts";
import type { Faster } from "./faster-groups.ts";

/** Times as fast from which a pack is worth a word, and the chance of it that is asked. */
export const PACK_AT_LEAST = 1.25;
const SURE_ENOUGH = 0.9;
/** Packs with readings that an item must have for "siblings" to mean something. */
const FEWEST_SIBLINGS = 5;
/** Nine tenths of packs lie below this many scales (t distribution with 4 degrees of freedom, as in the fit). */
const FASTEST_TENTH = 1.533;

/**
 * Judges the packs of an item: whether one in service wears surely enough a quarter faster than the middling pack, and is likely
 * of the fastest tenth. The chance is the pack's own posterior, which leans on its siblings: a few readings that lie
 * low are not enough.
 */
export function fasterPackJudge(
  { packs }: FadingItem,
  curves: readonly NodeTables[],
): (index: number, pace: PackPace) => Faster | null {
  const tested = packs.filter(({ evidence }) => evidence.years.length > 0).length;
  const spread = curves.reduce((sum, { curve }) => sum + curve.lifeSpread, 0) / curves.length;
  return (index, { chances }) => {
    const { pack, evidence } = packs[index]!;
    if (tested <= FEWEST_SIBLINGS || pack.retired !== null || evidence.years.length === 0) return null;
    const chance = mixtureAbove(chances, Math.log(PACK_AT_LEAST));
    if (chance < SURE_ENOUGH || mixtureQuantile(chances, 0.5) < FASTEST_TENTH * spread) return null;
    return { name: pack.serial, members: [index], chance, distance: chances };
  };
}
