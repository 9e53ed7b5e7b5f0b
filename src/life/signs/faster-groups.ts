import { mixtureAbove, mixtureQuantile, type NormalPart } from "../../maths/normal-mixture.ts";
import { distancesFromOthers, shrinkages } from "../../maths/shrunk-means.ts";
import { groupMean } from "./group-mean.ts";
import type { PackGroup } from "./pack-groups.ts";

/** A group of an item's packs that wears faster than the others, or a pack that wears faster than its siblings. */
export interface Faster {
  name: string;
  /** Indices of its packs that have readings. */
  members: number[];
  /** Chance that it wears so much faster that it is worth a word. */
  chance: number;
  /** Its log pace against theirs. */
  distance: NormalPart[];
}

/** Times as fast from which a group is worth a word, and the chance of it that is asked. */
export const GROUP_AT_LEAST = 1.1;
const SURE_ENOUGH = 0.9;
/** Packs from which a group can be told from its packs. */
const FEWEST_PACKS = 4;

/**
 * How far groups' mean log paces may scatter, equally likely: a half-Cauchy prior of scale 0.1, by its quantiles.
 * Groups of like packs in like use differ by some ten percent or less (common practice, no source); the heavy tail
 * lets the fleet say otherwise. Being learned from all groups at once, it is what keeps many groups from bringing
 * forth a sign by chance (Gelman 2006, Prior distributions for variance parameters, from memory).
 */
const USUAL_SCATTER = 0.1;
const SCATTERS = Array.from({ length: 24 }, (_, i) => USUAL_SCATTER * Math.tan((Math.PI / 2) * ((i + 0.5) / 24)));

/**
 * One group in twenty stands apart, for a cause that no sheet names (a hot room, a bad delivery), and may wear half as
 * fast again or more: common practice, no source.
 */
const ODD_GROUPS = { share: 0.05, spread: 0.4 };

/**
 * Groups whose packs wear faster than the item's other packs by a tenth or more, and surely enough. Each group's
 * mean is shrunk towards the others', the more the less it has shown and the less groups of this item differ; all is
 * averaged over the curves. As it is shrunk, being picked for its sign makes no group's pace too fast on average. The
 * curves know of no groups: where these differ, the item's packs seem to spread more than they do, and ranges are rather
 * too wide than too narrow.
 *
 * @param groups  all of one grouping, whose packs have been heard
 */
export function fasterGroups(groups: readonly PackGroup[]): Faster[] {
  if (groups.length < 2) return [];
  const distances: NormalPart[][] = groups.map(() => []);
  const curves = groups[0]!.ifFaster.length;
  for (let c = 0; c < curves; c++) {
    const seen = groups.map(({ ifFaster, members }) => groupMean(ifFaster[c]!, members.length));
    distancesFromOthers(seen, shrinkages(seen, SCATTERS, ODD_GROUPS)).forEach((parts, k) => {
      for (const part of parts) distances[k]!.push({ ...part, chance: part.chance / curves });
    });
  }
  return groups.flatMap(({ name, members }, k) => {
    if (name === null || members.length < FEWEST_PACKS) return [];
    const chance = mixtureAbove(distances[k]!, Math.log(GROUP_AT_LEAST));
    return chance < SURE_ENOUGH ? [] : [{ name, members, chance, distance: distances[k]! }];
  });
}

/** Tenth, fiftieth and ninetieth percentile of how many times as fast, of a log pace. */
export function timesAsFast(distance: readonly NormalPart[]) {
  const at = (share: number) => Math.exp(mixtureQuantile(distance, share));
  return { p10: at(0.1), p50: at(0.5), p90: at(0.9) };
}
