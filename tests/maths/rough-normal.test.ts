import { describe, expect, it } from "vitest";
import { roughLogNormalCdf } from "../../src/maths/rough-normal.ts";

describe("roughLogNormalCdf", () => {
  // Source: Abramowitz and Stegun (1964), table 26.1 (from memory): the distribution function at 0, 1, 2, 3 and 4
  it.each([
    [0, 0.5],
    [1, 0.841344746069],
    [-1, 0.158655253931],
    [2, 0.977249868052],
    [-2, 0.022750131948],
    [3, 0.998650101968],
    [-3, 0.001349898032],
    [-4, 0.000031671242],
  ])("at %d is the log of the tabled value", (x, tabled) => {
    expect(Math.abs(roughLogNormalCdf(x) - Math.log(tabled))).toBeLessThan(4e-5);
    // between two places of its own table, where it is least exact, by the density: the tabled value moved by a step
    const step = 1 / 128;
    const density = Math.exp(-0.5 * (x + step / 2) ** 2) / Math.sqrt(2 * Math.PI);
    expect(Math.abs(roughLogNormalCdf(x + step) - Math.log(tabled + step * density))).toBeLessThan(4.5e-5);
  });
  // By Mills' ratio: the tail below -x lies between density * (1/x - 1/x^3) and density / x
  it("goes on below its table, and is nothing above", () => {
    for (const x of [12, 12.5, 20, 37]) {
      const density = -0.5 * x * x - 0.5 * Math.log(2 * Math.PI);
      expect(roughLogNormalCdf(-x)).toBeGreaterThan(density + Math.log(1 / x - 1 / x ** 3));
      expect(roughLogNormalCdf(-x)).toBeLessThan(density - Math.log(x));
    }
    expect(roughLogNormalCdf(8)).toBe(0);
    expect(roughLogNormalCdf(50)).toBe(0);
  });
});
