import type { Day } from "../calendar/day.ts";
import { riseShare } from "./curve.ts";
import { type PackEvidence, wearAt } from "./evidence.ts";
import type { ItemFit } from "./item-fit.ts";
import { startVarianceAt } from "./level-form.ts";
import { LOG_LIVES } from "./life-grid.ts";
import type { PackClock } from "./pack-clock.ts";
import { emptyPosterior, packPosterior } from "./pack-posterior.ts";
import type { TimeStretch } from "./time-stretch.ts";
import type { CapacityBand } from "./types.ts";

/** Capacities are tallied in steps of a quarter percent, from nothing to 140 % of rated. */
const STEP = 0.0025;
const BINS = Math.round(1.4 / STEP);
/** Draws that speak for the band: every fourth is enough for tenths. */
const EVERY = 4;
const NODE_WORTH_COUNTING = 1e-3;
/** Three-point Gauss-Hermite rule for the spread of the start capacity. */
const OFFSETS = [-Math.sqrt(3), 0, Math.sqrt(3)];
const WEIGHTS = [1 / 6, 2 / 3, 1 / 6];

const posterior = emptyPosterior();

/** Of many days, every third is worked out and the others lie on straight lines between: fade bends slowly. */
const DAYS_BETWEEN_KNOTS = 3;
const FEW_DAYS = 6;

/**
 * Bands of a pack's true capacity on given days (not of the next reading, which scatters more).
 *
 * @param days  ascending, from as-of on
 * @returns one band a day, fractions of rated
 */
export function capacityBands(
  evidence: PackEvidence,
  clock: PackClock,
  fit: Pick<ItemFit, "tables">,
  stretch: TimeStretch,
  asOf: Day,
  days: readonly Day[],
): CapacityBand[] {
  const last = days.length - 1;
  const knots = days.flatMap((_, m) =>
    days.length <= FEW_DAYS || m % DAYS_BETWEEN_KNOTS === 0 || m === last ? [m] : [],
  );
  const bands = bandsOn(
    evidence,
    clock,
    fit,
    stretch,
    asOf,
    knots.map((m) => days[m]!),
  );
  let right = 0;
  return days.map((day, m) => {
    while (knots[right]! < m) right++;
    if (knots[right] === m) return bands[right]!;
    const [from, to] = [days[knots[right - 1]!]!, days[knots[right]!]!];
    return between(bands[right - 1]!, bands[right]!, (day - from) / (to - from));
  });
}

function between(one: CapacityBand, other: CapacityBand, share: number): CapacityBand {
  const mix = (a: number, b: number) => a + share * (b - a);
  return { p10: mix(one.p10, other.p10), p50: mix(one.p50, other.p50), p90: mix(one.p90, other.p90) };
}

function bandsOn(
  evidence: PackEvidence,
  clock: PackClock,
  fit: Pick<ItemFit, "tables">,
  stretch: TimeStretch,
  asOf: Day,
  days: readonly Day[],
): CapacityBand[] {
  const tallies = days.map(() => new Float64Array(BINS));
  for (let draw = 0; draw < fit.tables.length; draw += EVERY) {
    const { curve, slowPowers, slow, knee } = fit.tables[draw]!;
    packPosterior(evidence, fit.tables[draw]!, posterior);
    const own = stretch.own[(draw / EVERY) % stretch.own.length]!;
    const factor = Math.exp(stretch.common[draw]! + own);
    days.forEach((day, m) => {
      const tally = tallies[m]!;
      const s = wearAt(clock.momentAt(asOf + (day - asOf) * factor), curve.useShare);
      const logWear = Math.log(s);
      const powers = slowPowers.map((power) => Math.exp(power * logWear));
      const k = Math.exp(curve.kneePower * logWear);
      const r = riseShare(s, curve.earlyYears);
      const sd = Math.sqrt(startVarianceAt(posterior.spread, r));
      for (let i = 0; i < posterior.count; i++) {
        const chance = posterior.chance[i]!;
        if (chance < NODE_WORTH_COUNTING) continue;
        const node = posterior.nodes[i]!;
        const capacity =
          posterior.startMean[i]! +
          r * posterior.riseMean[i]! -
          slow[node]! * powers[Math.floor(node / LOG_LIVES.length)]! -
          knee[node]! * k;
        for (let o = 0; o < OFFSETS.length; o++) {
          const bin = Math.floor((capacity + OFFSETS[o]! * sd) / STEP);
          const at = Math.max(0, Math.min(BINS - 1, bin));
          tally[at] = tally[at]! + chance * WEIGHTS[o]!;
        }
      }
    });
  }
  return tallies.map((tally) => ({
    p10: tallyQuantile(tally, 0.1),
    p50: tallyQuantile(tally, 0.5),
    p90: tallyQuantile(tally, 0.9),
  }));
}

/** Quantile of a tally, by straight lines within a step. */
function tallyQuantile(tally: Float64Array, level: number): number {
  let total = 0;
  for (const mass of tally) total += mass;
  let sum = 0;
  for (let i = 0; i < tally.length; i++) {
    const mass = tally[i]!;
    if (sum + mass >= level * total && mass > 0) return (i + (level * total - sum) / mass) * STEP;
    sum += mass;
  }
  return tally.length * STEP;
}
