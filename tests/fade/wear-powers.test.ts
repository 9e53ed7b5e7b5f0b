import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { curveFromCoordinates } from "../../src/fade/curve.ts";
import { nodeTables } from "../../src/fade/node-tables.ts";
import { PRIORS } from "../../src/fade/priors.ts";
import { KNEE, powersOf, powersOfLog, RISE, SLOW } from "../../src/fade/wear-powers.ts";

const curve = curveFromCoordinates(PRIORS.map((_, i) => (i % 2 ? 0.5 : -0.4)));
const { powers } = nodeTables(curve);

/** The same by the language's own powers. */
const exactly = (wear: number) => [
  1 - Math.exp(-wear / curve.earlyYears),
  wear ** curve.kneePower,
  ...powers.slowPowers.map((power) => wear ** power),
];

describe("powersOf", () => {
  // By hand: exp(y) to four terms misses y^4 / 24 and little more, and y is at most half a step of 1/32 times the power.
  it("is as close between its steps as four terms allow, and exact beyond them", () => {
    const bound = (curve.kneePower / 64) ** 4 / 20 + 1e-12;
    const into = new Float64Array(8);
    fc.assert(
      fc.property(fc.double({ min: -12, max: 8, noNaN: true }), (logWear) => {
        const wear = Math.exp(logWear);
        const expected = exactly(wear);
        const closest = wear < 0.01 || wear > 100 ? 1e-12 : bound;
        for (const write of [() => powersOf(powers, wear, into), () => powersOfLog(powers, logWear, into)]) {
          write();
          expect(into[RISE]).toBeCloseTo(expected[RISE]!, 12);
          for (let i = KNEE; i < expected.length; i++) {
            expect(Math.abs(into[i]! / expected[i]! - 1)).toBeLessThan(closest);
          }
        }
      }),
      { seed: 3, numRuns: 500 },
    );
  });

  it("is nothing at no wear, and exact at a wear of one year", () => {
    const into = new Float64Array(8);
    powersOf(powers, 0, into);
    expect([...into.slice(0, SLOW + 3)]).toEqual([0, 0, 0, 0, 0]);
    powersOf(powers, 1, into);
    for (let i = KNEE; i < SLOW + 3; i++) expect(into[i]).toBeCloseTo(1, 6);
  });
});
