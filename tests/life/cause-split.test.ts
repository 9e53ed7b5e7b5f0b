import { describe, expect, it } from "vitest";
import { GRID_DAYS, GRID_SIZE } from "../../src/fade/time-grid.ts";
import { type OpenEnds, openChance, openChances, splitBetween, splitUpTo } from "../../src/life/cause-split.ts";

const onGrid = (first: number, later: number) =>
  Float64Array.from({ length: GRID_SIZE }, (_, k) => (k ? later : first));
const day = GRID_DAYS[1]!;
// 20 % are below the threshold now and 60 % later; 10 % fail suddenly in between
const both: OpenEnds = { fade: onGrid(0.2, 0.6), lasting: onGrid(1, 0.9) };

describe("what may end a pack on no set day", () => {
  // By hand: 1 - 0.8 * 1 and 1 - 0.4 * 0.9; in between 0.4 fade while 0.95 last, and 0.1 fail while 0.6 have not faded
  it("ends it by whichever comes first, and the two add up to the whole", () => {
    expect(openChance(both, 0)).toBeCloseTo(0.2, 12);
    expect(openChance(both, day)).toBeCloseTo(0.64, 12);
    const { fade, failure } = splitBetween(both, 0, day);
    expect(fade).toBeCloseTo(0.38, 12);
    expect(failure).toBeCloseTo(0.06, 12);
    const soFar = splitUpTo(both, day);
    expect(soFar.fade).toBeCloseTo(0.58, 12);
    expect(soFar.fade + soFar.failure).toBeCloseTo(openChance(both, day), 12);
    expect(splitBetween(both, -1, day)).toEqual({ fade: 0.2 + fade, failure });
  });

  it("goes by fade alone where its age is unknown, and by failure alone where fade cannot be told", () => {
    const faded: OpenEnds = { fade: both.fade, lasting: null };
    expect(openChance(faded, day)).toBeCloseTo(0.6, 12);
    expect(splitUpTo(faded, day).fade).toBeCloseTo(0.6, 12);
    expect(splitUpTo(faded, day).failure).toBe(0);
    const failed: OpenEnds = { fade: null, lasting: both.lasting };
    expect(openChance(failed, day)).toBeCloseTo(0.1, 12);
    expect(splitUpTo(failed, day).failure).toBeCloseTo(0.1, 12);
    expect(splitUpTo(failed, day).fade).toBe(0);
  });

  it("is the same on the grid", () => {
    for (const ends of [both, { fade: null, lasting: both.lasting }, { fade: both.fade, lasting: null }]) {
      const chances = openChances(ends);
      expect(chances).toHaveLength(GRID_SIZE);
      for (const k of [0, 1, GRID_SIZE - 1]) expect(chances[k]).toBeCloseTo(openChance(ends, GRID_DAYS[k]!), 12);
    }
  });
});
