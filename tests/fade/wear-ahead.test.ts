import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { daysToWear, wearAhead, wearOn } from "../../src/fade/wear-ahead.ts";

const YEAR = 365.25;
/** Clocks that run from the start, at 2 years of use a year. */
const even = wearAhead({ momentAt: (day) => ({ years: 1 + day / YEAR, useYears: 3 + (2 * day) / YEAR }) }, 0);
/** The same, but use begins a year from now. */
const later = wearAhead(
  { momentAt: (day) => ({ years: 1 + day / YEAR, useYears: Math.max(0, (2 * (day - YEAR)) / YEAR) }) },
  0,
);

describe("wearAhead", () => {
  // By hand: half of 1 + 2 years plus half of 3 + 2 * 2 years.
  it("mixes the two clocks by the share of use", () => {
    expect(wearOn(even, 0.5, 2 * YEAR)).toBeCloseTo(5, 12);
    expect(wearOn(later, 0.5, 2 * YEAR)).toBeCloseTo(2.5, 12);
  });

  it("knows even clocks from those that start later", () => {
    expect(even.even).toBe(true);
    expect(later.even).toBe(false);
  });

  it("finds the day on which a wear is reached, be the clocks even or not", () => {
    const days = fc.double({ min: 1, max: 20_000, noNaN: true });
    fc.assert(
      fc.property(days, fc.double({ min: 0, max: 0.95, noNaN: true }), (day, share) => {
        for (const ahead of [even, later]) {
          expect(Math.abs(daysToWear(ahead, share, wearOn(ahead, share, day)) - day)).toBeLessThan(1);
        }
      }),
      { seed: 12, numRuns: 200 },
    );
  });

  it("says that what has come has come, and that what lies beyond the grid never comes", () => {
    expect(daysToWear(even, 0.5, 1)).toBe(0);
    expect(daysToWear(later, 0.5, 1e6)).toBe(Infinity);
  });
});
