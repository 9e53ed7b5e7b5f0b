import { monotoneCubic } from "../maths/monotone-cubic.ts";
import type { PackEvidence } from "./evidence.ts";
import type { ItemFit } from "./item-fit.ts";
import { startVarianceAt } from "./level-form.ts";
import { powersRoom } from "./node-tables.ts";
import { levelOf } from "./pack-posterior.ts";
import { emptyHead, headOf, NODE_PLACES, type PosteriorsByCurve, posteriorsByCurve } from "./posteriors-by-curve.ts";
import { FIRST, POINTS, SECOND } from "./spread-points.ts";
import type { CapacityBand } from "./types.ts";
import { type WearAhead, wearOn } from "./wear-ahead.ts";
import { KNEE, powersOf, RISE, SLOW } from "./wear-powers.ts";

/** Capacities are tallied in steps of a quarter percent, from nothing to 140 % of rated. */
const STEP = 0.0025;
const BINS = Math.round(1.4 / STEP);
/** Every curve speaks for the band, and few curves in so many draws: of packs never tested no two curves say the same. */
const DRAWS_AT_LEAST = 12;

const head = emptyHead();

/**
 * Of many days, every sixth is worked out, and two between the first of those, where a new pack's early rise bends its
 * path most; the others lie on a smooth line through those.
 */
const DAYS_BETWEEN_KNOTS = 6;
const FEW_DAYS = 6;

/**
 * Bands of a pack's true capacity on given days (not of the next reading, which scatters more).
 *
 * @param ahead       the pack's clocks from as-of on
 * @param days        days ahead of as-of, >= 0, none before the one before it
 * @param posteriors  the pack's under the fit's curves, where they are kept
 * @returns one band a day, fractions of rated
 */
export function capacityBands(
  evidence: PackEvidence,
  ahead: WearAhead,
  fit: ItemFit,
  days: readonly number[],
  posteriors = posteriorsByCurve(evidence, fit.tables),
): CapacityBand[] {
  const last = days.length - 1;
  const between = days.length <= FEW_DAYS ? 1 : DAYS_BETWEEN_KNOTS;
  // the month's end is today where as-of is a month's last day
  const isKnot = (m: number) => m % between === 0 || m === 1 || m === between / 2 || m === last;
  const knots = days.filter((day, m) => isKnot(m) && day !== days[m - 1]);
  const bands = bandsOn(posteriors, ahead, fit, knots);
  if (between === 1) return bands;
  const path = (level: keyof CapacityBand) => {
    const heights = bands.map((band) => band[level]);
    return monotoneCubic(knots, heights, days);
  };
  const [p10, p50, p90] = [path("p10"), path("p50"), path("p90")];
  return days.map((_, m) => ({ p10: p10[m]!, p50: p50[m]!, p90: p90[m]! }));
}

/** Tallies of capacity, one a day, to be used again and again. */
let tallies = new Float64Array(0);
/** Powers of wear, and the spread of a start capacity seen there, by day. */
let powersOn: Float64Array[] = [];
let spreadOn = new Float64Array(0);

function bandsOn(
  posteriors: PosteriorsByCurve,
  ahead: WearAhead,
  { tables: curves, stretch }: ItemFit,
  days: readonly number[],
): CapacityBand[] {
  if (tallies.length < days.length * BINS) {
    tallies = new Float64Array(days.length * BINS);
    powersOn = days.map(powersRoom);
    spreadOn = new Float64Array(days.length);
  }
  tallies.fill(0, 0, days.length * BINS);
  // each curve as often as any other
  const draws = Math.ceil(DRAWS_AT_LEAST / curves.length) * curves.length;
  const { nodes, numbers } = posteriors;
  let dealt = 0;
  let total = 0;
  for (let draw = 0; draw < draws; draw++) {
    const c = draw % curves.length;
    const { curve, powers, slow, knee } = curves[c]!;
    headOf(posteriors, c, head);
    // with the model error of one draw, and a pace of the pack's own
    const factor = Math.exp(stretch.common[draw]! + stretch.own * SECOND[draw % POINTS]!);
    for (let m = 0; m < days.length; m++) {
      powersOf(powers, wearOn(ahead, curve.useShare, days[m]! * factor), powersOn[m]!);
      spreadOn[m] = Math.sqrt(startVarianceAt(head, powersOn[m]![RISE]!));
    }
    for (let i = head.from; i < head.end; i++) {
      const weight = numbers[i * NODE_PLACES]!;
      total += 2 * weight;
      const start = numbers[i * NODE_PLACES + 1]!;
      const rise = numbers[i * NODE_PLACES + 2]!;
      const node = nodes[i]!;
      const level = SLOW + levelOf(node);
      const a = slow[node]!;
      const b = knee[node]!;
      for (let m = 0; m < days.length; m++) {
        const at = powersOn[m]!;
        const capacity = start + at[RISE]! * rise - a * at[level]! - b * at[KNEE]!;
        const off = FIRST[dealt]! * spreadOn[m]!;
        dealt = dealt + 1 === POINTS ? 0 : dealt + 1;
        const above = m * BINS + binOf(capacity + off);
        const below = m * BINS + binOf(capacity - off);
        tallies[above] = tallies[above]! + weight;
        tallies[below] = tallies[below]! + weight;
      }
    }
  }
  return days.map((_, m) => bandOf(m * BINS, total));
}

function binOf(capacity: number): number {
  return Math.max(0, Math.min(BINS - 1, Math.floor(capacity / STEP)));
}

/** Tenth, half and nine tenths of a tally, by straight lines within a step. */
function bandOf(from: number, total: number): CapacityBand {
  let at = from - 1;
  while (at < from + BINS - 2 && tallies[at + 1] === 0) at++;
  let sum = 0;
  const reach = (mass: number) => {
    while (sum < mass && at < from + BINS - 1) sum += tallies[++at]!;
    return (at + 1 - from - (sum - mass) / tallies[at]!) * STEP;
  };
  return { p10: reach(0.1 * total), p50: reach(0.5 * total), p90: reach(0.9 * total) };
}
