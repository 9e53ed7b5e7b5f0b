import { kaplanMeier, type SurvivalStep, type WatchedLife } from "../maths/kaplan-meier.ts";
import { seededRandom } from "../maths/random.ts";
import { shuffled } from "../maths/shuffled.ts";
import { steady } from "../maths/steady.ts";
import { seedFromText } from "../maths/text-seed.ts";
import { fitWeibull } from "../maths/weibull-fit.ts";
import { FAILURE_PRIOR } from "./failure-prior.ts";
import { hazardSlices } from "./hazard-slices.ts";

/**
 * How likely an item's packs are to fail suddenly: a Weibull life whose hazard is known up to a factor, which all
 * packs of the item share.
 */
export interface FailureRisk {
  /** Lives watched, failures among them, and years watched in all. */
  lives: number;
  failures: number;
  packYears: number;
  /** The youngest age that was watched: all shares seen are of packs that reached it. */
  watchedFromYears: number;
  /** Shape and scale in years, rounded to 10 significant digits. */
  shape: number;
  scaleYears: number;
  /** Equally likely factors on the hazard, of mean 1. */
  paces: Float64Array;
  /** Which of them holds in each draw. */
  paceOf: Uint8Array;
  /** The share that outlived each age of failure, as seen. */
  seen: SurvivalStep[];
}

/** Levels of the hazard's factor: enough for the tenths of its distribution. */
const PACES = 8;

/**
 * The risk of an item from its watched lives: the Weibull life that is likeliest under the weak prior of
 * failure-prior.ts. How sure its hazard is, given its shape, is carried by the paces; the shape's own uncertainty
 * matters little beside it and is left out.
 *
 * @param key    the item's key, from which the order of the draws comes
 * @param draws  equally likely draws of the forecast
 */
export function failureRisk(key: string, lives: readonly WatchedLife[], draws: number): FailureRisk {
  const fit = fitWeibull(lives, FAILURE_PRIOR) ?? fitWeibull([], FAILURE_PRIOR)!;
  const failures = lives.filter((life) => life.failed).length;
  const { age, logHazard } = FAILURE_PRIOR;
  const goneThrough = (years: number) => (years / age) ** fit.shape;
  const exposure = lives.reduce((sum, { entry, exit }) => sum + goneThrough(exit) - goneThrough(entry), 0);
  const likeliest = -fit.shape * Math.log(fit.scale / age);
  const { mean, paces } = hazardSlices({ failures, exposure, ...logHazard, likeliest }, PACES);
  return {
    lives: lives.length,
    failures,
    packYears: lives.reduce((sum, life) => sum + life.exit - life.entry, 0),
    watchedFromYears: lives.reduce((least, { entry }) => Math.min(least, entry), lives[0]?.entry ?? 0),
    shape: steady(fit.shape),
    scaleYears: steady(age * mean ** (-1 / fit.shape)),
    paces: paces.map(steady),
    paceOf: shuffledLevels(draws, PACES, seedFromText(`failures ${key}`)),
    seen: kaplanMeier(lives),
  };
}

/** Cumulative hazard by an age in years, at pace 1; nothing fails before service. */
export function cumulativeHazard(risk: Pick<FailureRisk, "shape" | "scaleYears">, years: number): number {
  return years > 0 ? (years / risk.scaleYears) ** risk.shape : 0;
}

/** Levels dealt out evenly over the draws, in an order that goes with nothing else. */
function shuffledLevels(draws: number, levels: number, seed: number): Uint8Array {
  return Uint8Array.from(shuffled(draws, seededRandom(seed)), (place) => place % levels);
}
