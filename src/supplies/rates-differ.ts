import { fitGammaPoisson, gammaPoissonLogLikelihood } from "../maths/gamma-poisson.ts";
import type { ItemUse } from "./use-rates.ts";

/**
 * Twice the gain in log likelihood that a spread of rates must bring over one common rate: chi-square, one degree of
 * freedom, chance 0.001 at the edge of the parameter (half of 0.002). Tests of many items must not cry wolf.
 */
const CLEARLY_BETTER = 9.55;
/** A gamma of this shape is one rate for this purpose. */
const ONE_RATE = 1e7;

/** True where the log shows beyond chance that an item's places use it at different rates. */
export function ratesDiffer(use: ItemUse): boolean {
  const watched = use.places.filter((place) => place.device !== null && place.months > 0);
  const events = watched.map((place) => place.events);
  const months = watched.map((place) => place.months);
  const spread = fitGammaPoisson(events, months);
  if (spread === null) return false;
  const mean = events.reduce((a, b) => a + b, 0) / months.reduce((a, b) => a + b, 0);
  const one = { shape: ONE_RATE, exposure: ONE_RATE / mean };
  const gain = gammaPoissonLogLikelihood(events, months, spread) - gammaPoissonLogLikelihood(events, months, one);
  return 2 * gain > CLEARLY_BETTER;
}
