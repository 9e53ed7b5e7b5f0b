import type { Day } from "../calendar/day.ts";
import { type PackEvidence, packEvidence } from "./evidence.ts";
import { chanceAt, type GridChances } from "./grid-chances.ts";
import { heededReadings } from "./heeded-readings.ts";
import { DRAWS, type ItemFit } from "./item-fit.ts";
import type { FadingPack } from "./items-with-evidence.ts";
import { chancesBelow } from "./pack-outlook.ts";
import { MODEL_ERROR } from "./priors.ts";
import { gridIndex } from "./time-grid.ts";
import { timeStretch } from "./time-stretch.ts";
import { wearAhead } from "./wear-ahead.ts";

/** Completed lives from which a fleet's own model error is learned; fewer say too little. */
const LIVES_NEEDED = 5;
/** Completed lives asked, at the most. */
const LIVES_AT_MOST = 40;
/** Share of a completed life that the hindcast may see. */
const SHARE_SEEN = 0.6;
/** Readings that a hindcast needs. */
const READINGS_NEEDED = 2;
/** A crossing is dated by tests, which scatter: it is known to no less than this. */
const CROSSING_DAYS = 90;
/** Candidate spreads of log remaining time, and how far the prior lets them leave the usual one (log scale). */
const CANDIDATES = [0.03, 0.05, 0.08, 0.12, 0.17, 0.24, 0.34, 0.48];
const PRIOR_SPREAD = 0.6;

/**
 * One completed life: the readings of SHARE_SEEN of it, without those that the fit doubts, and between which days it
 * ended. The curves have heard the whole life, and the clocks know the later counts, so that the spread learned is
 * rather too small.
 */
interface Hindcast {
  evidence: PackEvidence;
  pack: FadingPack;
  cut: Day;
  after: Day;
  by: Day;
}

/**
 * The pack's own part of the model error, learned from the item's completed lives: each is forecast from the
 * readings of its first three fifths, and the spread is the one that makes the ends that followed most likely,
 * tempered by a prior at the usual spread.
 *
 * @returns standard deviation of log remaining time
 */
export function learnedOwnSpread(
  packs: readonly FadingPack[],
  fit: Pick<ItemFit, "tables">,
  thresholdInForce: number,
  seed: number,
): number {
  const hindcasts = packs.flatMap((pack) => hindcastOf(pack, thresholdInForce) ?? []).slice(0, LIVES_AT_MOST);
  if (hindcasts.length < LIVES_NEEDED) return MODEL_ERROR.own;
  const chances = hindcasts.map(({ evidence, pack, cut }) =>
    chancesBelow(evidence, wearAhead(pack.clock, cut), fit, thresholdInForce, 0),
  );
  const scores = CANDIDATES.map((own) => {
    const { common } = timeStretch(DRAWS, seed, { common: MODEL_ERROR.common, own });
    const lean = Math.log(own / MODEL_ERROR.own) / PRIOR_SPREAD;
    return hindcasts.reduce(
      (sum, { cut, after, by }, i) => {
        const chanceBy = (day: Day) => averageAt(chances[i]!, day - cut, common, own);
        return sum + Math.log(Math.max(1e-4, chanceBy(by) - chanceBy(after)));
      },
      -0.5 * lean * lean,
    );
  });
  return posteriorMean(scores);
}

function posteriorMean(scores: readonly number[]): number {
  const best = Math.max(...scores);
  const weights = scores.map((score) => Math.exp(score - best));
  const total = weights.reduce((a, b) => a + b);
  const logMean = weights.reduce((sum, weight, i) => sum + (weight / total) * Math.log(CANDIDATES[i]!), 0);
  return Number(Math.exp(logMean).toPrecision(6));
}

/** Equally likely points with mean 0 and variance 1: medians of fifths, widened to the normal's variance. */
const OWN_POINTS = [-1.4635, -0.5988, 0, 0.5988, 1.4635];

function averageAt(chances: GridChances, days: number, common: Float64Array, own: number): number {
  const { curves } = chances;
  let sum = 0;
  for (let draw = 0; draw < common.length; draw++) {
    for (const point of OWN_POINTS) {
      sum += chanceAt(chances, draw % curves, gridIndex(days, common[draw]! + own * point));
    }
  }
  return sum / (common.length * OWN_POINTS.length);
}

function hindcastOf(pack: FadingPack, thresholdInForce: number): Hindcast | null {
  const { retired, retiredBecause } = pack.pack;
  const { start } = pack.clock;
  if (retiredBecause !== "faded" || retired === null || start === null) return null;
  const tests = heededReadings(pack);
  const firstBelow = tests.findIndex(({ capacity }) => capacity < thresholdInForce);
  const by = firstBelow >= 0 ? tests[firstBelow]!.day : retired;
  const lastGood = (firstBelow >= 0 ? tests.slice(0, firstBelow) : tests).at(-1)?.day ?? start;
  const cut = Math.round(start + SHARE_SEEN * (by - start));
  const seen = tests.filter(({ day }) => day <= cut);
  if (seen.length < READINGS_NEEDED) return null;
  const evidence = packEvidence(
    seen.map(({ day, capacity }) => ({ ...pack.clock.momentAt(day), capacity })),
    [],
  );
  return { evidence, pack, cut, after: Math.max(cut, Math.min(lastGood, by - CROSSING_DAYS)), by };
}
