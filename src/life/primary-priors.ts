/*
 * Batteries that do not recharge lose charge in a straight line from install, at a rate of the pack's own: standby
 * current and self-discharge are steady. What is believed of an item's rates before its readings speak, on log
 * scales; weak, and the same for every item.
 */

/** Years in which a new battery stands by until nearly empty, where the catalogue states no service life. */
export const USUAL_STANDBY_YEARS = 4;

/** Share of the charge that a stated service life uses up. */
export const USED_BY_END_OF_SERVICE = 0.9;

interface PrimaryPrior {
  /** Mean (where fixed) and standard deviation of the logarithm. */
  mean: number;
  spread: number;
}

/**
 * Spread of the log of the item's loss a year about what its service life says. Standby lives of two to seven years are
 * usual for such devices: common practice, no source.
 */
export const LOSS_SPREAD = {
  stated: 0.35,
  unstated: 0.6,
} as const;

/**
 * Spread of loss between packs of an item, as a share of the item's loss. Like devices draw alike; self-tests and use
 * differ by some ten percent: common practice, no source.
 */
export const BETWEEN_PACKS: PrimaryPrior = { mean: Math.log(0.12), spread: 0.5 };

/**
 * Standard deviation of one reading of the charge left, as a fraction. Charge indicators go in steps of several percent:
 * common practice, no source.
 */
export const READING_NOISE: PrimaryPrior = { mean: Math.log(0.03), spread: 0.6 };

/** Standard deviation of the charge at install: of a dated one, and where install is unknown. */
export const START_SPREAD = { dated: 0.02, undated: 0.3 } as const;

/**
 * Model error, as a spread of log remaining time, shared and of the pack's own: indicators are not quite straight
 * (common practice, no source).
 */
export const DISCHARGE_ERROR = { common: 0.12, own: 0.12 } as const;
