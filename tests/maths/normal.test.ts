import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { logNormalCdf, normalCdf, normalDensity, normalQuantile } from "../../src/maths/normal.ts";

describe("the normal distribution", () => {
  // Source: safety factors and unit normal loss G(k), computed with R 4.2.2 qnorm and dnorm.
  it.each([
    [0.5, 0, 0.398942280401],
    [0.8, 0.84162123357291, 0.111637673693],
    [0.85, 1.0364333894938, 0.0776937668296],
    [0.9, 1.2815515655446, 0.047343175378],
    [0.95, 1.6448536269515, 0.0208929590278],
    [0.975, 1.9599639845401, 0.00944597019153],
    [0.98, 2.0537489106318, 0.00734315766811],
    [0.99, 2.3263478740408, 0.00338866346305],
    [0.995, 2.5758293035489, 0.00158059650917],
    [0.999, 3.0902323061678, 0.000276857770896],
    [0.9999, 3.7190164854557, 2.39463182144e-5],
  ])("at %f has quantile %f and loss %f", (p, k, loss) => {
    expect(normalQuantile(p)).toBeCloseTo(k, 12);
    expect(normalCdf(k)).toBeCloseTo(p, 12);
    expect(normalDensity(k) - k * (1 - normalCdf(k))).toBeCloseTo(loss, 11);
  });

  // Source: computed with scipy 1.10.1 norm.ppf.
  it("is right far in the tail", () => {
    expect(normalQuantile(1e-9)).toBeCloseTo(-5.99780701501, 10);
    expect(normalCdf(1.96)).toBeCloseTo(0.9750021048517795, 15);
  });

  it("has symmetric halves that undo the quantile", () => {
    fc.assert(
      fc.property(fc.double({ min: -8, max: 8, noNaN: true }), (x) => {
        expect(normalCdf(x) + normalCdf(-x)).toBeCloseTo(1, 14);
        if (Math.abs(x) < 5) expect(normalQuantile(normalCdf(x))).toBeCloseTo(x, 8);
      }),
      { seed: 4, numRuns: 300 },
    );
  });

  it("joins its log smoothly where the plain function would underflow", () => {
    expect(logNormalCdf(-20 + 1e-9)).toBeCloseTo(logNormalCdf(-20 - 1e-9), 6);
    // by the Mills ratio, log Φ(-40) = -800 - ln(40 √(2π)) + ln(1 - 1/1600 + 3/1600²)
    expect(logNormalCdf(-40)).toBeCloseTo(
      -800 - Math.log(40 * Math.sqrt(2 * Math.PI)) + Math.log(1 - 1 / 1600 + 3 / 1600 ** 2),
      8,
    );
    expect(logNormalCdf(9)).toBe(0);
  });

  // By symmetry, log Φ(x) is log(1 - Φ(-x))
  it("keeps the log of what is nearly certain", () => {
    for (const x of [3, 4, 5, 6]) expect(logNormalCdf(x)).toBeCloseTo(Math.log1p(-normalCdf(-x)), 14);
  });

  it("refuses what is no chance", () => {
    expect(() => normalQuantile(1.1)).toThrow(RangeError);
    expect(() => normalQuantile(Number.NaN)).toThrow(RangeError);
    expect(normalQuantile(0)).toBe(-Infinity);
    expect(normalQuantile(1)).toBe(Infinity);
    expect(normalCdf(-40)).toBe(0);
    expect(normalCdf(Infinity)).toBe(1);
  });
});
