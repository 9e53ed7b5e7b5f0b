import type { WeibullPrior } from "../maths/weibull-fit.ts";

/** Share of packs that fail suddenly in a year, on average over the first years. */
const USUAL_RATE_PER_YEAR = 0.005;
const FIRST_YEARS = 5;
/** As unsure as one is of a rate after a single failure: the spread of the log of a gamma variable of shape 1. */
const SPREAD = Math.PI / Math.sqrt(6);

/**
 * What is believed of an item's sudden failures before its own record speaks: half a percent of packs a year over the
 * first five years on average, known to a factor of three or four; rather more late than early (shape about 1.2, 0.7
 * to 2.1 in nine of ten cases). Common practice, no source.
 */
export const FAILURE_PRIOR: WeibullPrior = {
  age: FIRST_YEARS,
  // the mean of a log-normal variable lies half its variance above its median
  logHazard: { mean: Math.log(USUAL_RATE_PER_YEAR * FIRST_YEARS) - SPREAD ** 2 / 2, spread: SPREAD },
  logShape: { mean: Math.log(1.2), spread: 0.3 },
};
