import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { roughExp } from "../../src/maths/rough-exp.ts";

describe("roughExp", () => {
  // By hand: a straight line over a step h misses exp by h^2 / 8 of it at the most, and is never below it.
  it("is within the step squared over eight of the exponential, down to where it is nothing", () => {
    fc.assert(
      fc.property(fc.double({ min: -11.99, max: 0, noNaN: true }), (x) => {
        const off = roughExp(x) / Math.exp(x) - 1;
        expect(off).toBeGreaterThan(-1e-12);
        expect(off).toBeLessThan((1 / 128) ** 2 / 8);
      }),
      { seed: 4, numRuns: 500 },
    );
    expect(roughExp(0)).toBe(1);
    expect(roughExp(-12)).toBe(0);
    expect(roughExp(-Infinity)).toBe(0);
  });
});
