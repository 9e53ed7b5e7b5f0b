import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  dividedExact,
  exactFromText,
  exactText,
  minorUnits,
  numberFromExact,
  shareOut,
  timesExact,
} from "../../src/fleet/money.ts";

describe("exactFromText", () => {
  it("keeps decimals exact", () => {
    expect(exactFromText("38.50")).toEqual({ numerator: 77n, denominator: 2n });
    expect(exactFromText("0.1")).toEqual({ numerator: 1n, denominator: 10n });
    expect(exactFromText("1e-7")).toEqual({ numerator: 1n, denominator: 10_000_000n });
    expect(numberFromExact(exactFromText("-2.5"))).toBe(-2.5);
  });

  it("refuses what is no number", () => {
    for (const text of ["", ".", "1,50", "EUR 5"]) expect(() => exactFromText(text)).toThrow(RangeError);
  });
});

describe("minorUnits", () => {
  // By hand: a half of the last place goes up; 1.005 is no binary fraction, so a float would give 100
  it("rounds once, half up", () => {
    expect(minorUnits(exactFromText("1.005"), "EUR")).toBe(101);
    expect(minorUnits(exactFromText("1.0049999999999999999"), "EUR")).toBe(100);
  });

  // Source: ISO 4217 minor units (from memory): JPY none, KWD three
  it("uses the currency's own minor unit", () => {
    expect(minorUnits(exactFromText("1234.5"), "JPY")).toBe(1235);
    expect(minorUnits(exactFromText("1.2345"), "KWD")).toBe(1235);
    expect(minorUnits(exactFromText("12.34"), "USD")).toBe(1234);
  });

  // By hand: a box of 3 for 10.00 is 3.33... a unit; 3 units are 10.00 again, 2 are 6.67
  it("keeps a price per box exact until the line", () => {
    const unit = dividedExact(exactFromText("10.00"), 3);
    expect(minorUnits(timesExact(unit, 3), "EUR")).toBe(1000);
    expect(minorUnits(timesExact(unit, 2), "EUR")).toBe(667);
    expect(exactText(unit, "EUR")).toBe("3.333333");
  });
});

describe("exactText", () => {
  it("shows at least the currency's places and no zeros beyond", () => {
    expect(exactText(exactFromText("38.5"), "EUR")).toBe("38.50");
    expect(exactText(exactFromText("0.0375"), "EUR")).toBe("0.0375");
    expect(exactText(exactFromText("120"), "JPY")).toBe("120");
    expect(exactText(exactFromText("7"), "KWD")).toBe("7.000");
  });
});

describe("shareOut", () => {
  // By hand: 100 over 1:1:1 is 33.3 each; the first gets the unit left over
  it("gives what is left to the largest remainders, ties to the first", () => {
    expect(shareOut(100, [1, 1, 1])).toEqual([34, 33, 33]);
    expect(shareOut(10, [1, 2, 4])).toEqual([1, 3, 6]); // 1.43, 2.86, 5.71
    expect(shareOut(5, [0, 0])).toEqual([3, 2]);
  });

  it("adds up to the total and stays within a unit of the even share", () => {
    fc.assert(
      fc.property(fc.nat(1e9), fc.array(fc.nat(1e9), { minLength: 1, maxLength: 12 }), (total, weights) => {
        const shares = shareOut(total, weights);
        expect(shares.reduce((a, b) => a + b, 0)).toBe(total);
        const sum = weights.reduce((a, b) => a + b, 0);
        if (sum === 0) return;
        shares.forEach((share, index) => {
          expect(Math.abs(share - (total * weights[index]!) / sum)).toBeLessThan(1 + 1e-6);
        });
      }),
      { seed: 6, numRuns: 200 },
    );
  });
});
