import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { roundChance, roundParameter, roundTo, roundUnits } from "../../src/out/rounding.ts";

describe("roundTo: the stated digits", () => {
  it("keeps four digits of a chance", () => expect(roundChance(0.123449)).toBe(0.1234));
  it("never gives -0, which JSON and comparisons tell apart", () => {
    expect(Object.is(roundTo(-0.00001, 4), 0)).toBe(true);
    expect(Object.is(roundParameter(-0), 0)).toBe(true);
  });
  it("holds a chance inside 0 to 1, which sums may leave by an ulp", () => {
    expect(roundChance(1 + 2 ** -52)).toBe(1);
    expect(roundChance(-1e-17)).toBe(0);
  });
  it("keeps ten significant digits of a parameter", () => {
    expect(roundParameter(0.000123456789012345)).toBe(0.000123456789);
    expect(roundParameter(-98765.4321098765)).toBe(-98765.43211);
  });
  it("is the decimal that the number's own text rounds to", () => {
    fc.assert(
      fc.property(fc.double({ min: -1e7, max: 1e7, noNaN: true }), fc.integer({ min: 0, max: 4 }), (value, digits) => {
        expect(roundTo(value, digits)).toBe(Number(value.toFixed(digits)) + 0);
        const tie = Math.round(value) + 0.5;
        expect(roundTo(tie / 10 ** digits, digits)).toBe(Number((tie / 10 ** digits).toFixed(digits)) + 0);
      }),
      { seed: 3, numRuns: 1000 },
    );
  });
  it("is done once: rounding again changes nothing", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e6, noNaN: true }), (value) => {
        expect(roundUnits(roundUnits(value))).toBe(roundUnits(value));
        expect(Math.abs(roundUnits(value) - value)).toBeLessThanOrEqual(0.0005 + 1e-9);
      }),
      { seed: 2 },
    );
  });
});
