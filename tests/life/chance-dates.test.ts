import { describe, expect, it } from "vitest";
import { chanceAt, gridChances } from "../../src/fade/grid-chances.ts";
import { GRID_DAYS, GRID_SIZE, gridIndex } from "../../src/fade/time-grid.ts";
import { averageChances } from "../../src/life/chance-dates.ts";
import { normalCdf } from "../../src/maths/normal.ts";
import { seededRandom } from "../../src/maths/random.ts";

const random = seededRandom(5);
const common = Float64Array.from({ length: 200 }, () => 0.15 * random.normal() - 0.1);

/** Chances of being below a threshold that rise about some days, those of each curve a little later. */
const chancesAbout = (curves: number, days: number) =>
  gridChances(curves, (curve, into) => {
    GRID_DAYS.forEach((ahead, k) => {
      into[k] = ahead > 0 ? normalCdf((Math.log(ahead / days) - 0.02 * curve) / 0.25) : days < 1 ? 0.4 : 0;
    });
  });

describe("averageChances", () => {
  // By definition: a draw's model error stretches the time ahead, and draw d stands on curve d % curves
  it.each([
    [8, 900],
    [8, 15],
    [8, 0.5],
    [40, 3000],
    [200, 19_000],
  ])("is the mean of what %i curves say at the times to which the draws stretch, about day %d", (curves, days) => {
    const chances = chancesAbout(curves, days);
    const average = averageChances({ chances, common });
    for (let k = 0; k < GRID_SIZE; k++) {
      let sum = 0;
      common.forEach((stretch, draw) => {
        sum += chanceAt(chances, draw % curves, gridIndex(GRID_DAYS[k]!, stretch));
      });
      expect(average[k]).toBeCloseTo(sum / common.length, 6);
    }
  });
});
