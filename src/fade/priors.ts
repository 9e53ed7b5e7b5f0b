/**
 * What is believed of an item's fade before its own readings speak: in one place, weak, and the same for every
 * item. Each parameter is normal on the scale named; where its figures come from stands above it.
 */
export interface Prior {
  name: PriorName;
  /** How the parameter is obtained from the normal variable. */
  scale: "plain" | "log" | "logit";
  /** Mean of the normal variable. */
  mean: number;
  /** Standard deviation of the normal variable. */
  spread: number;
}

export type PriorName =
  | "startCapacity"
  | "startSpread"
  | "medianLifeYears"
  | "lifeSpread"
  | "slowPower"
  | "powerSpread"
  | "kneeShare"
  | "kneePower"
  | "noise"
  | "earlyRise"
  | "earlySpread"
  | "earlyYears"
  | "hardUseShare"
  | "hardUseGap"
  | "kneeSpread"
  | "kneeByHardness"
  | "useShare";

/** In the order of every vector of coordinates. */
export const PRIORS: readonly Prior[] = [
  // Rated capacity is what a new cell must reach (IEC 61960-3); makers' margins of a few percent: common practice.
  { name: "startCapacity", scale: "plain", mean: 1, spread: 0.03 },
  // Cells of one batch differ by about a percent when new: common practice, no source.
  { name: "startSpread", scale: "log", mean: Math.log(0.015), spread: 0.5 },
  // Rechargeable packs of portable emergency devices are budgeted for up to five years, or until 80 % of rated:
  // common practice, no source.
  { name: "medianLifeYears", scale: "log", mean: Math.log(5), spread: 0.5 },
  // Lives of like cells in like use spread by some 10 to 50 %: common practice; by 5 to 20 % where the use is the same
  // (Baumhöfer et al. 2014, Harris et al. 2017; from memory). Nine in ten standard deviations, 1.41 scales each, from 7 to
  // 70 %: a fleet of a few packs must be able to say that they hardly differ.
  { name: "lifeSpread", scale: "log", mean: Math.log(0.16), spread: 0.7 },
  // Geometric mean and spread of published exponents: 0.5 (Naumann et al. 2018, storage), 0.55 (Wang et al. 2011),
  // 0.75 (Schmalstieg et al. 2014), 1 (Wang et al. 2014, cycling); values from memory.
  { name: "slowPower", scale: "log", mean: Math.log(0.67), spread: 0.3 },
  // Cells of one batch differ in shape, not in pace alone: about a tenth of the exponent, no source.
  { name: "powerSpread", scale: "log", mean: Math.log(0.1), spread: 0.5 },
  // Some cells show a knee before a fifth is lost, some never do (Attia et al. 2022, a review; from memory): near
  // the reference prior of a share, Beta(1/2, 1/2), whose logit spreads by 3.1.
  { name: "kneeShare", scale: "logit", mean: 0, spread: 2.5 },
  // A knee is several times steeper than what came before it (Attia et al. 2022; from memory).
  { name: "kneePower", scale: "log", mean: Math.log(4), spread: 0.4 },
  // A runtime test repeats to one or two percent: common practice, no source.
  { name: "noise", scale: "log", mean: Math.log(0.015), spread: 0.5 },
  // Capacity rises or drops by one or two percent in the first months (electrode overhang; Gyenes et al. 2015, from
  // memory).
  { name: "earlyRise", scale: "plain", mean: 0, spread: 0.015 },
  // That first rise or drop hangs on how each cell was stored and charged: about a percent, no source.
  { name: "earlySpread", scale: "log", mean: Math.log(0.01), spread: 0.5 },
  // Overhang effects settle within weeks to a year or more (Lewerenz et al. 2017, from memory).
  { name: "earlyYears", scale: "log", mean: Math.log(0.4), spread: 0.5 },
  // Some packs of a fleet are used far harder than the sheet says: common practice, no source.
  { name: "hardUseShare", scale: "logit", mean: -2.5, spread: 1 },
  // Cycle life falls about threefold from shallow to full discharge (published cycles by depth: 300-500 at full,
  // 1200-1500 at half).
  { name: "hardUseGap", scale: "log", mean: 0, spread: 0.4 },
  // Onset of the knee differs between cells of one batch (Baumhöfer et al. 2014, from memory).
  { name: "kneeSpread", scale: "log", mean: Math.log(0.6), spread: 0.5 },
  // Harder use may bring the knee sooner or not at all: no direction is assumed.
  { name: "kneeByHardness", scale: "plain", mean: 0, spread: 2 },
  // Ageing is the sum of a calendar and a cycle part, neither negligible (Schmalstieg et al. 2014; from memory).
  { name: "useShare", scale: "logit", mean: 0, spread: 1 },
];

/**
 * What is taken as given of a fit, whatever the item. Our judgement, no source, but where one is named.
 */
export const GIVEN = {
  /** Spread of log life among the hard-used packs: wider than usual, as they are used in many ways. */
  hardUseSpread: 0.35,
  /** Share of readings that are spoilt (a wrong load, a test cut short), and how many times wider they scatter. */
  spoiltShare: 0.03,
  spoiltScatter: 5,
  /** Share of a prior's variance that the items of one fleet have in common. */
  sharedVariance: 0.5,
  /** How unsure a life stated in the catalogue is, as a share of the prior's variance. */
  statedVariance: 1,
} as const;

/**
 * What no curve of this shape can know, as a spread of log remaining time: the part that all packs of an item
 * share, which is always this, and each pack's own, which is learned where five lives or more have been completed. About
 * eight percent: no source.
 */
export const MODEL_ERROR = { common: 0.08, own: 0.08 } as const;
