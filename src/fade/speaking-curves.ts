import type { Day } from "../calendar/day.ts";
import { evenlySpread } from "../maths/evenly-spread.ts";
import { supportPoints } from "../maths/support-points.ts";
import type { FleetCurve } from "./curve.ts";
import { chanceAt } from "./grid-chances.ts";
import { DRAWS } from "./item-fit.ts";
import type { FadingPack } from "./items-with-evidence.ts";
import { NEW_PACK_AHEAD, UNTESTED } from "./new-pack-ahead.ts";
import { nodeTables } from "./node-tables.ts";
import { chancesBelow } from "./pack-outlook.ts";
import { MODEL_ERROR } from "./priors.ts";
import { GRID_SIZE } from "./time-grid.ts";
import { wearAhead } from "./wear-ahead.ts";

/** Curves that speak under an item's forecasts: all draws of them, or so many of which each stands for several draws. */
const COUNTS = [DRAWS, DRAWS / 2, DRAWS / 5, DRAWS / 10, DRAWS / 25];
/** Packs times curves up to which a count is taken: the fewer curves, the more packs speak for each. */
const PACKS_TIMES_CURVES = 4_000;

const countFor = (packs: number) => COUNTS.find((curves) => packs * curves <= PACKS_TIMES_CURVES) ?? COUNTS.at(-1)!;

/** Packs whose forecasts are compared. */
const PACKS_ASKED = 12;
/** Grid times at which they are: the first at which chances differ, and every few from there. */
const FIRST_TIME = 10;
const TIMES_APART = 4;

/**
 * Which of an item's equally likely curves speak under the forecasts of its many packs: so few that each pack can be
 * asked under all of them, and chosen so that what they say of some packs, and of a new one, is spread as what all say.
 *
 * @param curves     equally likely
 * @param packs      the item's, by serial
 * @param threshold  in force, fraction of rated
 * @returns indices, rising; tests/fade/speaking-curves.test.ts holds the error of a chance
 */
export function speakingCurves(
  curves: readonly FleetCurve[],
  packs: readonly FadingPack[],
  asOf: Day,
  threshold: number,
): number[] {
  const count = Math.min(curves.length, countFor(packs.length));
  if (count === curves.length) return curves.map((_, i) => i);
  const fit = { tables: curves.map((curve) => nodeTables(curve)) };
  const serving = packs.filter(({ pack, clock }) => pack.retired === null && clock.start !== null);
  const told = [
    chancesBelow(UNTESTED, NEW_PACK_AHEAD, fit, threshold, MODEL_ERROR.own),
    ...evenlySpread(serving, PACKS_ASKED).map(({ evidence, clock }) =>
      chancesBelow(evidence, wearAhead(clock, asOf), fit, threshold, MODEL_ERROR.own),
    ),
  ];
  const times = Array.from({ length: GRID_SIZE }, (_, k) => k).filter(
    (k) => k >= FIRST_TIME && (k - FIRST_TIME) % TIMES_APART === 0,
  );
  return supportPoints(
    curves.map((_, c) => Float64Array.from(told.flatMap((chances) => times.map((k) => chanceAt(chances, c, k))))),
    count,
  );
}
