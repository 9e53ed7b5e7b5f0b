import type { NormalPart } from "./normal-mixture.ts";

/** What was seen of a group by itself: its mean, and the variance of that mean. */
export interface SeenGroup {
  estimate: number;
  variance: number;
  /** Share of the group in an average over groups, as its number of members. */
  weight: number;
}

/** Groups that stand apart from the others' spread: how many of them, and how much wider they scatter. */
export interface OddGroups {
  /** Share of groups, 0 to 1. */
  share: number;
  /** Standard deviation of their true means, beside that of all. */
  spread: number;
}

/** How groups are pulled together where their true means spread by so much. */
export interface Shrinkage {
  /** Chance of that spread, given what was seen. */
  chance: number;
  /** The middle of the groups, and its variance. */
  centre: number;
  centreVariance: number;
  /** What a group keeps of its own estimate, 0 to 1, if it is like the others; the rest comes from the centre. */
  keep: Float64Array;
  /** The same if it stands apart, and the chance that it does. */
  keepApart: Float64Array;
  apart: Float64Array;
}

/** Rounds in which the centre and the groups apart from it settle. */
const ROUNDS = 6;

/**
 * The normal model of groups: each group's true mean scatters normally about a common centre, of which nothing is
 * believed beforehand, and is seen with a known variance. How far true means scatter is averaged over. A few groups may
 * stand apart: without them, one odd group among many like ones would be taken for noise.
 *
 * @param spreads  standard deviations of the true means, >= 0, equally likely before anything was seen
 * @returns one shrinkage a spread; chances add up to 1
 * @see Gelman, A. et al., Bayesian Data Analysis, section 5.4 (the eight schools), equations 5.17 to 5.21; with groups
 *      apart, the centre and their chances are found in turns, and the centre's own doubt is added
 */
export function shrinkages(
  groups: readonly SeenGroup[],
  spreads: readonly number[],
  odd: OddGroups = { share: 0, spread: 0 },
): Shrinkage[] {
  const given = spreads.map((spread) => shrinkage(groups, spread, odd));
  const best = Math.max(...given.map(({ log }) => log));
  const total = given.reduce((sum, { log }) => sum + Math.exp(log - best), 0);
  return given.map(({ log, ...one }) => ({ ...one, chance: Math.exp(log - best) / total }));
}

function shrinkage(groups: readonly SeenGroup[], spread: number, odd: OddGroups) {
  const scatter = spread * spread;
  const priorLogOdds = Math.log(odd.share / (1 - odd.share));
  const scatterApart = scatter + odd.spread * odd.spread;
  const apart = new Float64Array(groups.length).fill(odd.share);
  let centre = 0;
  let precision = 0;
  let log = 0;
  for (let round = 0; round < (odd.share > 0 ? ROUNDS : 1); round++) {
    precision = 0;
    let pull = 0;
    groups.forEach(({ estimate, variance }, k) => {
      const weight = (1 - apart[k]!) / (variance + scatter) + apart[k]! / (variance + scatterApart);
      precision += weight;
      pull += weight * estimate;
    });
    centre = pull / precision;
    log = -0.5 * Math.log(precision);
    groups.forEach(({ estimate, variance }, k) => {
      const like = logNormal(estimate - centre, variance + scatter);
      const logOdds = priorLogOdds + logNormal(estimate - centre, variance + scatterApart) - like;
      apart[k] = 1 / (1 + Math.exp(-logOdds));
      // log(1 + odds), whichever way the odds lie
      log += like + Math.max(0, logOdds) + Math.log1p(Math.exp(-Math.abs(logOdds)));
    });
  }
  const keepOf = (wide: number) => Float64Array.from(groups, ({ variance }) => wide / (variance + wide));
  return { log, centre, centreVariance: 1 / precision, keep: keepOf(scatter), keepApart: keepOf(scatterApart), apart };
}

function logNormal(distance: number, variance: number): number {
  return -0.5 * (Math.log(variance) + (distance * distance) / variance);
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
  for (const { chance, centre, centreVariance, keep, keepApart, apart } of given) {
    const kept = groups.map((_, k) => (1 - apart[k]!) * keep[k]! + apart[k]! * keepApart[k]!);
    // of weight times what a group keeps: its mean, its variance, and the weight itself
    let mean = 0;
    let scatter = 0;
    let share = 0;
    groups.forEach(({ estimate, variance, weight }, k) => {
      mean += weight * kept[k]! * estimate;
      scatter += weight * weight * kept[k]! * variance;
      share += weight * kept[k]!;
    });
    groups.forEach(({ estimate, variance, weight }, k) => {
      const rest = weights - weight;
      const others = (share - weight * kept[k]!) / rest;
      const othersMean = (mean - weight * kept[k]! * estimate) / rest;
      const othersVariance = (scatter - weight * weight * kept[k]! * variance) / (rest * rest);
      const add = (part: number, own: number) => {
        const spread = own * variance + othersVariance + centreVariance * (others - own) ** 2;
        parts[k]!.push({
          chance: part,
          mean: own * estimate - othersMean + centre * (others - own),
          deviation: Math.sqrt(Math.max(spread, 1e-12)),
        });
      };
      add(chance * (1 - apart[k]!), keep[k]!);
      if (apart[k]! > 0) add(chance * apart[k]!, keepApart[k]!);
    });
  }
  return parts;
}
