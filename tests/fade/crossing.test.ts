import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Crossing, findCrossing, wearAtRoom } from "../../src/fade/crossing.ts";
import { curveFromCoordinates, riseShare } from "../../src/fade/curve.ts";
import { LOG_LIVES } from "../../src/fade/life-grid.ts";
import { nodeTables, SHAPE_LEVELS } from "../../src/fade/node-tables.ts";
import { PRIORS } from "../../src/fade/priors.ts";

const tables = nodeTables(curveFromCoordinates(PRIORS.map((_, i) => (i % 3 === 0 ? 0.6 : -0.3))));
const { curve, powers, slow, knee } = tables;

describe("findCrossing", () => {
  it("finds the wear at which the curve has used up the room, wherever it starts to look", () => {
    const node = fc.integer({ min: 0, max: LOG_LIVES.length * SHAPE_LEVELS - 1 });
    const room = fc.double({ min: 0.02, max: 0.5, noNaN: true });
    const rise = fc.double({ min: -0.015, max: 0.03, noNaN: true });
    const from = fc.double({ min: -2, max: 1, noNaN: true });
    fc.assert(
      fc.property(node, room, rise, from, (at, startRoom, early, start) => {
        const into: Crossing = { wear: 0, room: 1, slope: 1, bend: 0, rise: 1 };
        findCrossing(tables, at, startRoom, early, LOG_LIVES[at % LOG_LIVES.length]! + start, into);
        const p = powers.slowPowers[Math.floor(at / LOG_LIVES.length)]!;
        const lost = slow[at]! * into.wear ** p + knee[at]! * into.wear ** curve.kneePower;
        const left = startRoom + early * riseShare(into.wear, curve.earlyYears) - lost;
        expect(Math.abs(left)).toBeLessThan(2e-4);
      }),
      { seed: 8, numRuns: 500 },
    );
  });

  // By hand: of a pure power law of slope 2, four times the room lies at twice the wear.
  it("moves the crossing with the room as a power law does", () => {
    const crossing: Crossing = { wear: 3, room: 0.2, slope: 2, bend: 0, rise: 1 };
    expect(wearAtRoom(crossing, 4)).toBeCloseTo(6, 12);
    expect(wearAtRoom(crossing, 1.05)).toBeCloseTo(3 * Math.sqrt(1.05), 5);
    expect(wearAtRoom(crossing, 0)).toBe(0);
    expect(wearAtRoom(crossing, -1)).toBe(0);
  });
});
