import type { Day } from "../calendar/day.ts";
import { DAYS_PER_YEAR } from "../calendar/mean-year.ts";
import { type GridChances, gridChances } from "../fade/grid-chances.ts";
import { GRID_DAYS, GRID_SIZE, gridValue, INDEX_PER_LOG_STRETCH, shiftedIndex } from "../fade/time-grid.ts";
import type { CapacityBand } from "../fade/types.ts";
import type { Policy } from "../fleet/policy.ts";
import { normalCdf, normalQuantile } from "../maths/normal.ts";
import { lineSums, type RandomLine } from "../maths/random-line.ts";
import type { Decline } from "./decline.ts";
import { blankLine, type PrimaryItem, packLine } from "./primary-item.ts";
import type { PrimaryPack } from "./primary-readings.ts";

/** Draws that speak for the band: every fourth is enough for tenths. */
const EVERY = 4;
/** Equally likely points of a standard normal: medians of tenths. */
const POINTS = Array.from({ length: 10 }, (_, i) => normalQuantile((i + 0.5) / 10));

/** The discharge of a pack that does not recharge. */
export function primaryDecline(item: PrimaryItem, pack: PrimaryPack, { asOf, primaryEndPercent }: Policy): Decline {
  const yearsAt = (day: number) => Math.max(0, day - pack.start) / DAYS_PER_YEAR;
  return {
    chances: chancesOfEnd(
      item,
      pack,
      Array.from(GRID_DAYS, (days) => yearsAt(asOf + days)),
      primaryEndPercent / 100,
    ),
    common: item.stretch.common,
    bands: (days) => chargeBands(item, pack, days, asOf, yearsAt),
  };
}

/** Chances by draw on the grid that a new pack has run down, installed at the grid's start. */
export function newPrimaryChances(item: PrimaryItem, { primaryEndPercent }: Policy): GridChances {
  const years = Array.from(GRID_DAYS, (days) => days / DAYS_PER_YEAR);
  return chancesOfEnd(item, { sums: lineSums([]), dated: true }, years, primaryEndPercent / 100);
}

function chancesOfEnd(
  item: PrimaryItem,
  pack: Pick<PrimaryPack, "sums" | "dated">,
  years: readonly number[],
  threshold: number,
): GridChances {
  const own = Float64Array.from(POINTS, (z) => z * item.stretch.own * INDEX_PER_LOG_STRETCH);
  const before = new Float64Array(GRID_SIZE);
  const line = blankLine();
  return gridChances(item.draws.length, (draw, into) => {
    packLine(pack, item.draws[draw]!, line);
    let highest = -Infinity;
    for (let k = 0; k < GRID_SIZE; k++) {
      const { charge, sd } = chargeAt(line, years[k]!);
      // the line's spread grows with time: what has run down stays so
      highest = Math.max(highest, (threshold - charge) / sd);
      before[k] = normalCdf(highest);
    }
    // the pack's own part of the model error, at equally likely stretches of time
    for (let k = 0; k < GRID_SIZE; k++) {
      let sum = 0;
      for (const shift of own) sum += gridValue(before, 0, shiftedIndex(k, shift));
      into[k] = sum / own.length;
    }
  });
}

function chargeAt(line: RandomLine, years: number): { charge: number; sd: number } {
  const variance = line.startVariance + 2 * years * line.covariance + years * years * line.slopeVariance;
  return { charge: line.start + line.slope * years, sd: Math.sqrt(variance) };
}

/** Bands of the true charge left on given days, never below nothing. */
function chargeBands(
  item: PrimaryItem,
  pack: PrimaryPack,
  days: readonly Day[],
  asOf: Day,
  yearsAt: (day: number) => number,
): CapacityBand[] {
  const { common, own } = item.stretch;
  const values = days.map(() => new Float64Array((item.draws.length / EVERY) * POINTS.length));
  const line = blankLine();
  for (let draw = 0; draw < item.draws.length; draw += EVERY) {
    packLine(pack, item.draws[draw]!, line);
    const index = draw / EVERY;
    const factor = Math.exp(common[draw]! + own * POINTS[index % POINTS.length]!);
    days.forEach((day, m) => {
      const { charge, sd } = chargeAt(line, yearsAt(asOf + (day - asOf) * factor));
      POINTS.forEach((z, p) => {
        values[m]![index * POINTS.length + p] = Math.max(0, charge + sd * z);
      });
    });
  }
  return values.map((list) => {
    list.sort();
    const at = (level: number) => list[Math.floor(level * list.length)]!;
    return { p10: at(0.1), p50: at(0.5), p90: at(0.9) };
  });
}
