import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Crossing } from "../../src/fade/crossing.ts";
import { curveFromCoordinates, riseShare } from "../../src/fade/curve.ts";
import { LOG_LIVES } from "../../src/fade/life-grid.ts";
import { nodeTables, SHAPE_LEVELS } from "../../src/fade/node-tables.ts";
import { PRIORS } from "../../src/fade/priors.ts";
import { crossingOf, usualCrossings } from "../../src/fade/usual-crossings.ts";

const tables = nodeTables(curveFromCoordinates(PRIORS.map((_, i) => (i % 3 === 0 ? 0.6 : -0.3))));
const { curve, powers, slow, knee } = tables;

/** Where the curve's own equation says that the room is used up, by halving. */
function byHalving(node: number, startRoom: number, rise: number): number {
  const p = powers.slowPowers[Math.floor(node / LOG_LIVES.length)]!;
  const left = (s: number) =>
    startRoom + rise * riseShare(s, curve.earlyYears) - slow[node]! * s ** p - knee[node]! * s ** curve.kneePower;
  let [low, high] = [1e-9, 1e4];
  for (let turn = 0; turn < 100; turn++) {
    const middle = Math.sqrt(low * high);
    if (left(middle) > 0) low = middle;
    else high = middle;
  }
  return low;
}

describe("crossingOf", () => {
  it("is where the pack's own curve meets the threshold, however far it starts from the usual", () => {
    const node = fc.integer({ min: 0, max: LOG_LIVES.length * SHAPE_LEVELS - 1 });
    const offUsual = fc.double({ min: -0.06, max: 0.06, noNaN: true });
    const rise = fc.double({ min: -0.01, max: 0.02, noNaN: true });
    const threshold = fc.constantFrom(0.6, 0.8, 0.85);
    const into: Crossing = { wear: 0, room: 1, slope: 1, bend: 0, rise: 1 };
    fc.assert(
      fc.property(node, offUsual, rise, threshold, (at, off, early, level) => {
        const start = curve.startCapacity + off;
        crossingOf(usualCrossings(tables, level), at, start, early, into);
        const life = Math.exp(LOG_LIVES[at % LOG_LIVES.length]!);
        const expected = byHalving(at, start - level, early);
        // a life that ends while the early rise still comes is looked for with the rise as it stands
        if (life < 4 * curve.earlyYears) return;
        expect(Math.abs(Math.log(into.wear / expected))).toBeLessThan(0.004);
      }),
      { seed: 12, numRuns: 600 },
    );
  });

  it("tells how steeply the loss grows there, as two crossings close by do", () => {
    const node = fc.integer({ min: 0, max: LOG_LIVES.length * SHAPE_LEVELS - 1 });
    const offUsual = fc.double({ min: -0.03, max: 0.03, noNaN: true });
    const into: Crossing = { wear: 0, room: 1, slope: 1, bend: 0, rise: 1 };
    fc.assert(
      fc.property(node, offUsual, (at, off) => {
        // without an early rise the room is the loss: by definition the slope is the change of its log with that of wear
        const room = curve.startCapacity + off - 0.8;
        crossingOf(usualCrossings(tables, 0.8), at, room + 0.8, 0, into);
        const [less, more] = [0.999 * room, 1.001 * room];
        const expected = Math.log(more / less) / Math.log(byHalving(at, more, 0) / byHalving(at, less, 0));
        expect(Math.abs(into.slope / expected - 1)).toBeLessThan(0.01);
      }),
      { seed: 13, numRuns: 600 },
    );
  });

  it("gives the same whatever was asked before", () => {
    const into: Crossing = { wear: 0, room: 1, slope: 1, bend: 0, rise: 1 };
    const ask = (threshold: number, node: number) => {
      crossingOf(usualCrossings(tables, threshold), node, curve.startCapacity + 0.004, 0.002, into);
      return { ...into };
    };
    const first = ask(0.8, 60);
    ask(0.7, 60);
    ask(0.8, 20);
    expect(ask(0.8, 60)).toEqual(first);
  });
});
