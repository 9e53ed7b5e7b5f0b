import { SPAN_PLACES } from "../fade/grid-chances.ts";
import { GRID_SIZE } from "../fade/time-grid.ts";
import { groupBy } from "../fleet/group-by.ts";
import type { Policy } from "../fleet/policy.ts";
import { type Chances, monthEndsAhead, placesAhead } from "./chance-dates.ts";
import type { Ending } from "./due-chance.ts";
import { type Exposure, lastingByPace } from "./failure-chances.ts";
import { certainMonth } from "./pack-end.ts";

/** Packs of one step of the root of their age are taken to fail alike: it is a quarter of a year wide at one year. */
const STEPS_OF_ROOT = 8;
/** Those yet to enter service, within whose step failures begin: two weeks wide. */
const STEPS_BEFORE = 24;

function ageStep(years: number): number {
  return Math.floor(years < 0 ? STEPS_BEFORE * years : STEPS_OF_ROOT * Math.sqrt(years));
}

/**
 * Adds up the chances that packs are due from any cause by month's end, by draw. Packs of nearly one age are taken to fail
 * alike: tests/life/due-by-draw.test.ts holds the error below 1e-4 of a pack.
 *
 * @param into       draws * months, draw-major; added to
 * @param everyDraw  as of `addAlike`
 */
export function addDueByDraw(
  packs: readonly (Ending & { item: string })[],
  { asOf, horizonMonths: months }: Policy,
  into: Float64Array,
  everyDraw = 1,
): void {
  const alike = groupBy(packs, ({ item, exposure, end }) => {
    return `${certainMonth(end, asOf, months)} ${exposure && ageStep(exposure.ageYears)} ${item}`;
  });
  for (const group of alike.values()) {
    const { exposure, end } = group[0]!;
    const ageYears = group.reduce((sum, one) => sum + (one.exposure?.ageYears ?? 0), 0) / group.length;
    addAlike(
      {
        count: group.length,
        declines: group.flatMap(({ decline }) => decline ?? []),
        exposure: exposure && { risk: exposure.risk, ageYears },
        certain: certainMonth(end, asOf, months),
      },
      monthEndsAhead(asOf, months),
      into,
      everyDraw,
    );
  }
}

/** Packs of one item of which some may run down; they may fail suddenly, and are due for certain, at the same time. */
interface Alike {
  count: number;
  declines: readonly Chances[];
  exposure: Exposure | null;
  /** The first of the days asked about by which they are due for certain. */
  certain: number;
}

/**
 * Adds the chances that packs are due by some days ahead, by draw. What a pack's chance of having run down becomes in a
 * draw is linear in it, so that packs are summed before the draws are told.
 *
 * @param days       rising, days ahead
 * @param into       draws * days, draw-major; added to
 * @param everyDraw  which draws: from one of them to the next
 */
export function addAlike(
  { count, declines, exposure, certain }: Alike,
  days: readonly number[],
  into: Float64Array,
  everyDraw = 1,
): void {
  const lasting = exposure && lastingByPace(exposure, days);
  const [one] = declines;
  const faded = one && { ...sumOnGrid(declines), ...placesAhead(one.common, days) };
  for (let run = 0; run * days.length < into.length; run++) {
    const draw = run * everyDraw;
    const from = run * days.length;
    const place = draw * days.length;
    const pace = exposure === null ? 0 : exposure.risk.paceOf[draw]! * days.length;
    for (let m = 0; m < days.length; m++) {
      if (m >= certain) {
        into[from + m] = into[from + m]! + count;
        continue;
      }
      let sound = count;
      if (faded) {
        const k = (draw % faded.curves) * GRID_SIZE + faded.below[place + m]!;
        const share = faded.share[place + m]!;
        sound -= faded.sums[k]! * (1 - share) + faded.sums[k + 1]! * share;
      }
      if (lasting !== null) sound *= lasting[pace + m]!;
      into[from + m] = into[from + m]! + count - sound;
    }
  }
}

/** Chances of having run down summed over packs that share curves, at curve * GRID_SIZE + grid time. */
function sumOnGrid(declines: readonly Chances[]): { curves: number; sums: Float64Array } {
  const { curves } = declines[0]!.chances;
  const sums = new Float64Array(curves * GRID_SIZE);
  for (const { chances } of declines) {
    const { spans, values } = chances;
    for (let curve = 0; curve < curves; curve++) {
      const begins = spans[curve * SPAN_PLACES]!;
      const settles = spans[curve * SPAN_PLACES + 1]!;
      const from = spans[curve * SPAN_PLACES + 2]! - begins;
      const grid = curve * GRID_SIZE;
      for (let k = begins; k < GRID_SIZE; k++) sums[grid + k] = sums[grid + k]! + values[from + Math.min(k, settles)]!;
    }
  }
  return { curves, sums };
}
