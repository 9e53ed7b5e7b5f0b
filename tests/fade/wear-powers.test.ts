import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { curveFromCoordinates } from "../../src/fade/curve.ts";
import { nodeTables } from "../../src/fade/node-tables.ts";
import { PRIORS } from "../../src/fade/priors.ts";
import { KNEE, powersOf, RISE, SLOW, tabled } from "../../src/fade/wear-powers.ts";

const curve = curveFromCoordinates(PRIORS.map((_, i) => (i % 2 ? 0.5 : -0.4)));
const exact = nodeTables(curve).powers;
const quick = tabled(exact);

describe("powersOf", () => {
  it("gives powers of wear and the share of the early rise", () => {
    const into = new Float64Array(8);
    powersOf(exact, 2.5, into);
    expect(into[KNEE]).toBeCloseTo(2.5 ** curve.kneePower, 10);
    expect(into[RISE]).toBeCloseTo(1 - Math.exp(-2.5 / curve.earlyYears), 12);
    exact.slowPowers.forEach((power, level) => {
      expect(into[SLOW + level]).toBeCloseTo(2.5 ** power, 12);
    });
  });

  // By hand: a straight line over a step h of log wear misses s^p by (p h)^2 / 8 of it at most.
  it("is as close in the table as the table's step allows, and exact beyond its ends", () => {
    const bound = (curve.kneePower / 96) ** 2 / 8 + 1e-6;
    const [one, other] = [new Float64Array(8), new Float64Array(8)];
    fc.assert(
      fc.property(fc.double({ min: 1e-5, max: 2000, noNaN: true }), (wear) => {
        powersOf(exact, wear, one);
        powersOf(quick, wear, other);
        for (let i = 0; i < SLOW + exact.slowPowers.length; i++) {
          expect(Math.abs(other[i]! / one[i]! - 1)).toBeLessThan(bound);
        }
      }),
      { seed: 3, numRuns: 500 },
    );
    powersOf(quick, 0, other);
    expect([...other.slice(0, 5)]).toEqual([0, 0, 0, 0, 0]);
  });
});
