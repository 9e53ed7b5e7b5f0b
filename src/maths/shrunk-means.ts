import type { NormalPart } from "./normal-mixture.ts";

/** What was seen of a group by itself: its mean, and the variance of that mean. */
export interface SeenGroup {
  estimate: number;
  variance: number;
  /** Share of the group in an average over groups, as its number of members. */
  weight: number;
}

/** How groups are pulled together where their true means spread by so much. */
export interface Shrinkage {
  /** Chance of that spread, given what was seen. */
  chance: number;
  /** The middle of the groups, and its variance. */
  centre: number;
  centreVariance: number;
  /** What each group keeps of its own estimate, 0 to 1; the rest comes from the centre. */
  keep: Float64Array;
}

/**
 * The normal model of groups: each group's true mean scatters normally about a common centre, of which nothing is
 * believed beforehand, and is seen with a known variance. How far true means scatter is averaged over.
 *
 * @param spreads  standard deviations of the true means, >= 0, equally likely before anything was seen
 * @returns one shrinkage a spread; chances add up to 1
 * @see Gelman, A. et al., Bayesian Data Analysis, section 5.4 (the eight schools), equations 5.17 to 5.21
 */
export function shrinkages(groups: readonly SeenGroup[], spreads: readonly number[]): Shrinkage[] {
  const logs: number[] = [];
  const given = spreads.map((spread) => {
    let precision = 0;
    let pull = 0;
    let log = 0;
    for (const { estimate, variance } of groups) {
      const total = variance + spread * spread;
      precision += 1 / total;
      pull += estimate / total;
      log -= 0.5 * Math.log(total);
    }
    const centre = pull / precision;
    for (const { estimate, variance } of groups) log -= (0.5 * (estimate - centre) ** 2) / (variance + spread * spread);
    logs.push(log - 0.5 * Math.log(precision));
    const keep = Float64Array.from(groups, ({ variance }) => (spread * spread) / (variance + spread * spread));
    return { chance: 0, centre, centreVariance: 1 / precision, keep };
  });
  const best = Math.max(...logs);
  const total = logs.reduce((sum, log) => sum + Math.exp(log - best), 0);
  return given.map((one, i) => ({ ...one, chance: Math.exp(logs[i]! - best) / total }));
}

/**
 * How far each group's true mean lies from the average of the others' (weighted by their weights), as a mixture of
 * normals.
 *
 * @param groups  two or more
 */
export function distancesFromOthers(groups: readonly SeenGroup[], given: readonly Shrinkage[]): NormalPart[][] {
  const parts: NormalPart[][] = groups.map(() => []);
  const weights = groups.reduce((sum, { weight }) => sum + weight, 0);
  for (const { chance, centre, centreVariance, keep } of given) {
    // of w times what a group keeps: its mean, its variance, and w itself
    let kept = 0;
    let scatter = 0;
    let share = 0;
    groups.forEach(({ estimate, variance, weight }, k) => {
      kept += weight * keep[k]! * estimate;
      scatter += weight * weight * keep[k]! * variance;
      share += weight * keep[k]!;
    });
    groups.forEach(({ estimate, variance, weight }, k) => {
      const rest = weights - weight;
      const own = keep[k]!;
      const others = (share - weight * own) / rest;
      const mean = own * estimate - (kept - weight * own * estimate) / rest + centre * (others - own);
      const spread =
        own * variance +
        (scatter - weight * weight * own * variance) / (rest * rest) +
        centreVariance * (others - own) ** 2;
      parts[k]!.push({ chance, mean, deviation: Math.sqrt(Math.max(spread, 1e-12)) });
    });
  }
  return parts;
}
