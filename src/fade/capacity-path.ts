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
/** Draws that speak for the band, of many curves and of few: no more are needed for tenths. */
const DRAWS_OF_MANY = 50;
const DRAWS_OF_FEW = 12;
const NODE_WORTH_COUNTING = 2e-3;

const head = emptyHead();
const powersHere = powersRoom();

/** Of many days, every third is worked out and the others lie on straight lines between: fade bends slowly. */
const DAYS_BETWEEN_KNOTS = 3;
const FEW_DAYS = 6;

/**
 * Bands of a pack's true capacity on given days (not of the next reading, which scatters more).
 *
 * @param ahead       the pack's clocks from as-of on
 * @param days        days ahead of as-of, ascending, >= 0
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
  const knots = days.flatMap((_, m) => (m % between === 0 || m === last ? [m] : []));
  const bands = bandsOn(
    posteriors,
    ahead,
    fit,
    knots.map((m) => days[m]!),
  );
  let right = 0;
  return days.map((day, m) => {
    while (knots[right]! < m) right++;
    if (knots[right] === m) return bands[right]!;
    const [from, to] = [days[knots[right - 1]!]!, days[knots[right]!]!];
    return mixOf(bands[right - 1]!, bands[right]!, (day - from) / (to - from));
  });
}

function mixOf(one: CapacityBand, other: CapacityBand, share: number): CapacityBand {
  const mix = (a: number, b: number) => a + share * (b - a);
  return { p10: mix(one.p10, other.p10), p50: mix(one.p50, other.p50), p90: mix(one.p90, other.p90) };
}

/** Tallies of capacity, one a day, to be used again and again. */
let tallies = new Float64Array(0);

function bandsOn(
  posteriors: PosteriorsByCurve,
  ahead: WearAhead,
  { tables: curves, stretch }: ItemFit,
  days: readonly number[],
): CapacityBand[] {
  if (tallies.length < days.length * BINS) tallies = new Float64Array(days.length * BINS);
  tallies.fill(0, 0, days.length * BINS);
  const draws = curves.length > DRAWS_OF_MANY ? DRAWS_OF_MANY : DRAWS_OF_FEW;
  const every = Math.max(1, Math.floor(curves.length / draws));
  // each curve as often as any other
  const rounds = Math.ceil(draws / curves.length);
  const { nodes, numbers } = posteriors;
  let dealt = 0;
  for (let draw = 0; draw < rounds * curves.length; draw += every) {
    const c = draw % curves.length;
    const { curve, powers, slow, knee } = curves[c]!;
    headOf(posteriors, c, head);
    // with the model error of one draw, and a pace of the pack's own
    const factor = Math.exp(stretch.common[draw]! + stretch.own * SECOND[draw % POINTS]!);
    for (let m = 0; m < days.length; m++) {
      powersOf(powers, wearOn(ahead, curve.useShare, days[m]! * factor), powersHere);
      const r = powersHere[RISE]!;
      const k = powersHere[KNEE]!;
      const sd = Math.sqrt(startVarianceAt(head, r));
      const tally = m * BINS;
      for (let i = head.from; i < head.end; i++) {
        const weight = numbers[i * NODE_PLACES]!;
        if (weight < NODE_WORTH_COUNTING) continue;
        const node = nodes[i]!;
        const level = numbers[i * NODE_PLACES + 1]! + r * numbers[i * NODE_PLACES + 2]!;
        const capacity = level - slow[node]! * powersHere[SLOW + levelOf(node)]! - knee[node]! * k;
        const off = FIRST[dealt]! * sd;
        dealt = dealt + 1 === POINTS ? 0 : dealt + 1;
        const above = tally + binOf(capacity + off);
        const below = tally + binOf(capacity - off);
        tallies[above] = tallies[above]! + weight;
        tallies[below] = tallies[below]! + weight;
      }
    }
  }
  return days.map((_, m) => bandOf(m * BINS));
}

function binOf(capacity: number): number {
  return Math.max(0, Math.min(BINS - 1, Math.floor(capacity / STEP)));
}

/** Tenth, half and nine tenths of a tally, by straight lines within a step. */
function bandOf(from: number): CapacityBand {
  let total = 0;
  for (let i = 0; i < BINS; i++) total += tallies[from + i]!;
  const levels = [0.1, 0.5, 0.9];
  const found: number[] = [];
  let sum = 0;
  for (let i = 0; i < BINS && found.length < levels.length; i++) {
    const mass = tallies[from + i]!;
    if (mass === 0) continue;
    while (found.length < levels.length && sum + mass >= levels[found.length]! * total) {
      found.push((i + (levels[found.length]! * total - sum) / mass) * STEP);
    }
    sum += mass;
  }
  const at = (level: number) => found[level] ?? BINS * STEP;
  return { p10: at(0), p50: at(1), p90: at(2) };
}
