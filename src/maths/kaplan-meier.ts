/** One life as it was watched: from `entry` on, to a failure at `exit`, or to `exit` without one. */
export interface WatchedLife {
  /** Age at which watching began, >= 0: what failed younger was never seen. */
  entry: number;
  /** Age at failure, or at which watching ended; above `entry`. */
  exit: number;
  failed: boolean;
}

/** The estimate from one age of failure on, until the next. */
export interface SurvivalStep {
  age: number;
  /** Lives watched just before that age. */
  atRisk: number;
  failures: number;
  /** Share that outlives the age. */
  survival: number;
  /** Greenwood's standard error of it; 0 where nothing survives. */
  standardError: number;
}

/**
 * Share of lives that outlive each age of failure, by the product-limit estimate with late entry.
 *
 * @see Kaplan, E. L., Meier, P. (1958), Nonparametric estimation from incomplete observations, J. Am. Statist.
 *      Assoc. 53, 457-481; standard error by Greenwood's formula
 */
export function kaplanMeier(lives: readonly WatchedLife[]): SurvivalStep[] {
  const entries = Float64Array.from(lives, (life) => life.entry).sort();
  const exits = Float64Array.from(lives, (life) => life.exit).sort();
  const failed = lives.flatMap((life) => (life.failed ? [life.exit] : [])).sort((a, b) => a - b);
  const steps: SurvivalStep[] = [];
  let entered = 0;
  let left = 0;
  let survival = 1;
  let greenwood = 0;
  for (let i = 0; i < failed.length; ) {
    const age = failed[i]!;
    let failures = 0;
    while (failed[i] === age) {
      failures++;
      i++;
    }
    while (entered < entries.length && entries[entered]! < age) entered++;
    while (left < exits.length && exits[left]! < age) left++;
    const atRisk = entered - left;
    survival *= 1 - failures / atRisk;
    greenwood += failures / (atRisk * (atRisk - failures));
    steps.push({ age, atRisk, failures, survival, standardError: survival > 0 ? survival * Math.sqrt(greenwood) : 0 });
  }
  return steps;
}
