import { DRAWS } from "../fade/item-fit.ts";
import { type TimeStretch, timeStretch } from "../fade/time-stretch.ts";
import type { FadeGroup } from "../fade/types.ts";
import { evenlySpread } from "../maths/evenly-spread.ts";
import { posteriorDraws } from "../maths/posterior-draws.ts";
import { fitRandomLine, type RandomLine } from "../maths/random-line.ts";
import { steady } from "../maths/steady.ts";
import { seedFromText } from "../maths/text-seed.ts";
import {
  BETWEEN_PACKS,
  DISCHARGE_ERROR,
  LOSS_SPREAD,
  READING_NOISE,
  START_SPREAD,
  USED_BY_END_OF_SERVICE,
  USUAL_STANDBY_YEARS,
} from "./primary-priors.ts";
import type { PrimaryPack } from "./primary-readings.ts";

/** An item's discharge, one equally likely draw. */
export interface DischargeDraw {
  /** Charge lost in a year by a middling pack, fraction of a full one, > 0. */
  lossPerYear: number;
  /** Standard deviation of that between packs. */
  lossSpread: number;
  /** Standard deviation of one reading. */
  noise: number;
}

/** An item of batteries that do not recharge, fitted to what was read of its packs. */
export interface PrimaryItem {
  draws: DischargeDraw[];
  stretch: TimeStretch;
  packs: PrimaryPack[];
  group: FadeGroup;
}

/** Packs that speak in the fit; every pack speaks in its own forecast. */
const PACKS_AT_MOST = 150;
/** Spread beyond which packs of one item would no longer all run down. */
const WIDEST_SPREAD = 0.4;
const SEED = 20_261_101;

/**
 * Fits an item: charge falls in a straight line whose start and slope differ from pack to pack about the item's own,
 * each normal, with normal noise (a linear mixed model); the item's loss, its spread and the noise have the priors of
 * primary-priors.ts and are carried by equally likely draws.
 *
 * @param packs          in an order that does not hang on the order of rows
 * @param serviceMonths  the service life that the catalogue states, or null
 * @returns null where nothing was ever read of the item
 */
export function fitPrimaryItem(key: string, packs: PrimaryPack[], serviceMonths: number | null): PrimaryItem | null {
  const read = packs.filter((pack) => pack.sums.points > 0);
  if (read.length === 0) return null;
  const speaking = evenlySpread(read, PACKS_AT_MOST);
  const line = blankLine();
  const logsOf = (x: Float64Array, from: number, to: number) => {
    const draw = drawAt(x, serviceMonths);
    return speaking.slice(from, to).map((pack) => {
      const log = fitRandomLine(pack.sums, family(draw, pack.dated), draw.noise ** 2, line);
      return Number.isFinite(log) ? log : IMPOSSIBLE;
    });
  };
  const settings = { points: DRAWS, stepsPerHearing: 3, lastSteps: 8, keptSteps: 1, seed: SEED };
  const draws = posteriorDraws(3, { parts: speaking.length, logsOf }, settings).map((x) => drawAt(x, serviceMonths));
  return {
    draws,
    stretch: timeStretch(DRAWS, seedFromText(`stretch ${key}`), DISCHARGE_ERROR),
    packs,
    group: groupOf(packs, draws),
  };
}

/** Log likelihood of what can't be. */
const IMPOSSIBLE = -1e100;

function drawAt(x: ArrayLike<number>, serviceMonths: number | null): DischargeDraw {
  const years = serviceMonths === null ? USUAL_STANDBY_YEARS : serviceMonths / 12;
  const spread = serviceMonths === null ? LOSS_SPREAD.unstated : LOSS_SPREAD.stated;
  const lossPerYear = (USED_BY_END_OF_SERVICE / years) * Math.exp(spread * x[0]!);
  const share = Math.min(WIDEST_SPREAD, Math.exp(BETWEEN_PACKS.mean + BETWEEN_PACKS.spread * x[1]!));
  return {
    lossPerYear: steady(lossPerYear),
    lossSpread: steady(lossPerYear * share),
    noise: steady(Math.exp(READING_NOISE.mean + READING_NOISE.spread * x[2]!)),
  };
}

/** The lines of an item's packs in one draw: full at install, where that is dated. */
function family({ lossPerYear, lossSpread }: DischargeDraw, dated: boolean): RandomLine {
  const startSpread = dated ? START_SPREAD.dated : START_SPREAD.undated;
  return {
    start: dated ? 1 : 1 - START_SPREAD.undated,
    slope: -lossPerYear,
    startVariance: startSpread ** 2,
    slopeVariance: lossSpread ** 2,
    covariance: 0,
  };
}

/** One pack's line in one draw, given what was read of it. */
export function packLine(pack: Pick<PrimaryPack, "sums" | "dated">, draw: DischargeDraw, into: RandomLine): void {
  fitRandomLine(pack.sums, family(draw, pack.dated), draw.noise ** 2, into);
}

/** Room for a line. */
export function blankLine(): RandomLine {
  return { start: 0, slope: 0, startVariance: 0, slopeVariance: 0, covariance: 0 };
}

function groupOf(packs: readonly PrimaryPack[], draws: readonly DischargeDraw[]): FadeGroup {
  const middle = (name: keyof DischargeDraw) => {
    const values = draws.map((draw) => draw[name]).sort((a, b) => a - b);
    return values[Math.floor(values.length / 2)]!;
  };
  const readings = packs.reduce((sum, pack) => sum + pack.readings.length, 0);
  return {
    item: packs[0]!.pack.item!.trim(),
    packs: packs.filter(({ pack }) => pack.retired === null).length,
    readings,
    completedLives: packs.filter(({ pack }) => pack.retiredBecause === "faded").length,
    parameters: { lossPerYear: middle("lossPerYear"), lossSpread: middle("lossSpread"), noise: middle("noise") },
    basis: readings === 0 ? "typical" : "pooled",
  };
}
