import { kaplanMeier, type WatchedLife } from "../maths/kaplan-meier.ts";
import { cumulativeHazard, type FailureRisk } from "./sudden-failures.ts";

/** What was seen of an item's packs up to one age, beside what the plan counts on. */
export interface SurvivalYear {
  years: number;
  /** Packs watched just before that age. */
  atRisk: number;
  /** Share that outlived it without a sudden failure, as seen, and its standard error. */
  seen: number;
  standardError: number;
  /** The same share by the fitted life. */
  planned: number;
}

/** An item's record of sudden failures by age. */
export interface FailureRecord {
  item: string;
  lives: number;
  failures: number;
  packYears: number;
  /** The fitted Weibull life. */
  shape: number;
  scaleYears: number;
  /** As of `FailureRisk`. */
  watchedFromYears: number;
  survival: SurvivalYear[];
}

/** Whole years told at the most. */
const MOST_YEARS = 30;

/**
 * Shares that outlive each whole year of age, as long as anything was watched, by the product-limit estimate with late
 * entry, and by the fitted life averaged over what is unsure of it.
 */
export function failureRecord(item: string, risk: FailureRisk, lives: readonly WatchedLife[]): FailureRecord {
  const { failures, packYears, shape, scaleYears, watchedFromYears } = risk;
  const steps = kaplanMeier(lives);
  const survival: SurvivalYear[] = [];
  for (let years = Math.floor(watchedFromYears) + 1; years <= MOST_YEARS; years++) {
    const atRisk = lives.filter(({ entry, exit }) => entry < years && exit >= years).length;
    if (atRisk === 0 && lives.every(({ exit }) => exit < years)) break;
    const last = steps.filter(({ age }) => age <= years).at(-1);
    survival.push({
      years,
      atRisk,
      seen: last?.survival ?? 1,
      standardError: last?.standardError ?? 0,
      planned: plannedShare(risk, watchedFromYears, years),
    });
  }
  return { item, lives: lives.length, failures, packYears, shape, scaleYears, watchedFromYears, survival };
}

function plannedShare(risk: FailureRisk, from: number, to: number): number {
  const hazard = cumulativeHazard(risk, to) - cumulativeHazard(risk, from);
  const { paces } = risk;
  return paces.reduce((sum, pace) => sum + Math.exp(-pace * hazard), 0) / paces.length;
}
