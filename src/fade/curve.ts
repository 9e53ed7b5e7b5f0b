import { PRIORS, type PriorName } from "./priors.ts";

/*
 * The shape of an item's fade, shared by its packs. With s = wear-years at typical use and L = the pack's life
 * (wear-years until a fifth of the rated capacity is lost):
 *
 *   q(s) = q0 + rise (1 - exp(-s / T)) - FADE_SCALE ((1 - c) (s/L)^p + c (s/L)^k)
 *
 * a slow loss with power p (about 0.5 in storage, about 1 in cycling) and a knee with power k that brings the
 * share c of the loss at s = L.
 */

/** Loss at s = L, as a fraction of rated capacity. A scale: the threshold in force never enters the fit. */
export const FADE_SCALE = 0.2;

/** An item's shared curve and spreads, on their natural scales. */
export interface FleetCurve {
  /** Mean capacity of a new pack, fraction of rated. */
  startCapacity: number;
  /** Standard deviation of that between packs. */
  startSpread: number;
  /** Natural logarithm of the median life, wear-years. */
  logMedianLife: number;
  /** Scale of log life between packs in ordinary use, a t with 4 degrees of freedom: 1.41 of it are a standard deviation. */
  lifeSpread: number;
  slowPower: number;
  /** Spread of its logarithm between packs. */
  powerSpread: number;
  /** Share of the knee in the loss at the end of the median life, 0 to 1, as a logit. */
  kneeLogit: number;
  /** Spread of that logit between packs. */
  kneeSpread: number;
  /** How much that logit grows as log life shortens. */
  kneeByHardness: number;
  kneePower: number;
  /** Standard deviation of one reading, fraction of rated. */
  noise: number;
  /** Mean capacity gained early in service, fraction of rated; may be negative. */
  earlyRise: number;
  /** Standard deviation of that between packs. */
  earlySpread: number;
  /** T: wear-years over which it settles. */
  earlyYears: number;
  /** Share of packs in a harder use that no sheet names, 0 to 1. */
  hardUseShare: number;
  /** How much shorter those live, in log life. */
  hardUseGap: number;
  /** Share of cycles in the wear clock, 0 to 1; the rest is time. */
  useShare: number;
}

/** Share of the early rise that has come after s wear-years. */
export function riseShare(s: number, earlyYears: number): number {
  return 1 - Math.exp(-s / earlyYears);
}

const logistic = (x: number) => 1 / (1 + Math.exp(-x));

const PLACE = Object.fromEntries(PRIORS.map(({ name }, i) => [name, i])) as Record<PriorName, number>;

/** The normal variable behind a parameter, to single precision: beyond it, engines may differ. */
function variableOf(x: ArrayLike<number>, name: PriorName): number {
  const place = PLACE[name];
  const { mean, spread } = PRIORS[place]!;
  return Math.fround(mean + spread * x[place]!);
}

/** A parameter on its natural scale. */
function parameterOf(x: ArrayLike<number>, name: PriorName): number {
  const { scale } = PRIORS[PLACE[name]]!;
  const value = variableOf(x, name);
  return scale === "log" ? Math.exp(value) : scale === "logit" ? logistic(value) : value;
}

/**
 * A curve from its coordinates: one number a parameter, in prior standard deviations from the prior mean, so
 * that the prior is a standard normal in every direction.
 */
export function curveFromCoordinates(x: ArrayLike<number>): FleetCurve {
  return {
    startCapacity: parameterOf(x, "startCapacity"),
    startSpread: parameterOf(x, "startSpread"),
    logMedianLife: variableOf(x, "medianLifeYears"),
    lifeSpread: parameterOf(x, "lifeSpread"),
    slowPower: parameterOf(x, "slowPower"),
    powerSpread: parameterOf(x, "powerSpread"),
    kneeLogit: variableOf(x, "kneeShare"),
    kneeSpread: parameterOf(x, "kneeSpread"),
    kneeByHardness: parameterOf(x, "kneeByHardness"),
    kneePower: parameterOf(x, "kneePower"),
    noise: parameterOf(x, "noise"),
    earlyRise: parameterOf(x, "earlyRise"),
    earlySpread: parameterOf(x, "earlySpread"),
    earlyYears: parameterOf(x, "earlyYears"),
    hardUseShare: parameterOf(x, "hardUseShare"),
    hardUseGap: parameterOf(x, "hardUseGap"),
    useShare: parameterOf(x, "useShare"),
  };
}
