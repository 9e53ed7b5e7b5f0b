import { curveFromCoordinates, FADE_SCALE, type FleetCurve, riseShare } from "../../src/fade/curve.ts";
import { type Bound, type PackEvidence, packEvidence } from "../../src/fade/evidence.ts";
import { fitCurves } from "../../src/fade/item-fit.ts";
import { usualPrior } from "../../src/fade/item-prior.ts";
import { nodeTables } from "../../src/fade/node-tables.ts";
import { chancesBelow } from "../../src/fade/pack-outlook.ts";
import { gridIndex, gridValue } from "../../src/fade/time-grid.ts";
import { timeStretch } from "../../src/fade/time-stretch.ts";
import { wearAhead } from "../../src/fade/wear-ahead.ts";
import { averageChances } from "../../src/life/chance-dates.ts";
import type { Random } from "../../src/maths/random.ts";

/** A pack whose true end is known: the evidence that a fleet would have of it, and when it ends after as-of. */
export interface WorldPack {
  evidence: PackEvidence;
  /** Age at as-of, years. */
  age: number;
  /** Years from as-of until the true capacity is below the threshold; null for a pack that was retired before. */
  remaining: number | null;
}

/** A pack's true capacity by age, years. */
export type TruePath = (age: number) => number;

const THRESHOLD = 0.8;
const YEARS_BETWEEN_TESTS = 0.5;

/** Draws one pack's true path from the model itself: life, shape, start and early rise from their spreads. */
export function pathFromModel(curve: FleetCurve, random: Random): TruePath {
  const hard = random.uniform() < curve.hardUseShare;
  const heavy = random.normal() / Math.sqrt(meanSquare(random, 4));
  const logLife = hard
    ? curve.logMedianLife - curve.hardUseGap + 0.35 * heavy
    : curve.logMedianLife + curve.lifeSpread * heavy;
  const shape = random.normal();
  const hardness = Math.max(-2.5, Math.min(2.5, curve.logMedianLife - logLife));
  const logit = curve.kneeLogit + curve.kneeByHardness * hardness + curve.kneeSpread * shape;
  const knee = 1 / (1 + Math.exp(-logit));
  const power = curve.slowPower * Math.exp(curve.powerSpread * shape);
  const start = curve.startCapacity + curve.startSpread * random.normal();
  const rise = curve.earlyRise + curve.earlySpread * random.normal();
  const life = Math.exp(logLife);
  return (age) =>
    start +
    rise * riseShare(age, curve.earlyYears) -
    FADE_SCALE * ((1 - knee) * (age / life) ** power + knee * (age / life) ** curve.kneePower);
}

function meanSquare(random: Random, n: number): number {
  let sum = 0;
  for (let i = 0; i < n; i++) sum += random.normal() ** 2;
  return sum / n;
}

/**
 * What a fleet would know of a pack: a test every half year, each with scatter, and retirement at the first test below
 * the threshold.
 *
 * @param stretch  model error: time ahead of as-of runs e^stretch as fast as the path says
 */
export function observe(path: TruePath, age: number, noise: number, stretch: number, random: Random): WorldPack {
  const readings: { years: number; useYears: number; capacity: number }[] = [];
  const bounds: Bound[] = [];
  for (let years = 0.1; years <= age; years += YEARS_BETWEEN_TESTS) {
    const capacity = path(years) + noise * random.normal();
    if (capacity < THRESHOLD) {
      bounds.push({ years, useYears: years, threshold: THRESHOLD, below: true });
      break;
    }
    readings.push({ years, useYears: years, capacity });
  }
  const retired = bounds.length > 0;
  return {
    evidence: packEvidence(readings, bounds),
    age,
    remaining: retired ? null : yearsUntilBelow(path, age) * Math.exp(-stretch),
  };
}

/** Years from an age until a path is below the threshold for good, up to 80. */
export function yearsUntilBelow(path: TruePath, age: number): number {
  if (path(age) < THRESHOLD) return 0;
  for (let ahead = 0.02; ahead < 80; ahead += 0.02) if (path(age + ahead) < THRESHOLD) return ahead;
  return Infinity;
}

/** Fleets of a calibration, packs in each, and the age of the oldest. */
export const FLEETS = 100;
const PACKS = 9;
const OLDEST_YEARS = 6;

/** Where each true end lies in its forecast: its chance by then. Packs beyond the time grid count as at its end. */
export function placesOfTruth(packs: readonly WorldPack[], seed: number): number[] {
  const tables = fitCurves(
    packs.map(({ evidence }) => evidence),
    usualPrior(),
  ).map((x) => nodeTables(curveFromCoordinates(x)));
  const stretch = timeStretch(tables.length, seed);
  return packs.flatMap(({ evidence, age, remaining }) => {
    if (remaining === null) return [];
    const ahead = wearAhead({ momentAt: (day) => ({ years: age + day / 365.25, useYears: age + day / 365.25 }) }, 0);
    const chances = chancesBelow(evidence, ahead, { tables }, 0.8, stretch.own);
    const chance = averageChances({ chances, common: stretch.common });
    return [gridValue(chance, 0, gridIndex(Math.min(remaining, 59) * 365.25, 0))];
  });
}

/** A fleet of packs of all ages, each on a path of its own. */
export function fleetOf(
  pathOf: () => TruePath,
  noiseOf: () => number,
  common: number,
  own: () => number,
  random: Random,
) {
  return Array.from({ length: PACKS }, (_, i) => {
    const age = 0.4 + (OLDEST_YEARS * (i + random.uniform())) / PACKS;
    return observe(pathOf(), age, noiseOf(), common + own(), random);
  });
}

/** Share of places inside an interval. */
export const shareBetween = (places: readonly number[], low: number, high: number) =>
  places.filter((place) => place >= low && place <= high).length / places.length;
