import { describe, expect, it } from "vitest";
import { posteriorDraws } from "../../src/maths/posterior-draws.ts";
import { seededRandom } from "../../src/maths/random.ts";

const inOnePart = (log: (x: Float64Array) => number) => ({ parts: 1, logsOf: (x: Float64Array) => [log(x)] });

describe("posteriorDraws", () => {
  const settings = { points: 200, stepsPerHearing: 4, lastSteps: 15, keptSteps: 2, seed: 11 };

  // By hand: prior N(0, 1), one reading of 2 with variance 1/9 has posterior mean 2·9/10 and variance 1/10; a
  // direction that no reading touches keeps its prior.
  it("finds a normal posterior worked out by hand", () => {
    const draws = posteriorDraws(
      2,
      inOnePart((x) => -0.5 * 9 * (x[0]! - 2) ** 2),
      settings,
    );
    const mean = (d: number) => draws.reduce((sum, x) => sum + x[d]!, 0) / draws.length;
    const variance = (d: number) => draws.reduce((sum, x) => sum + (x[d]! - mean(d)) ** 2, 0) / draws.length;
    expect(mean(0)).toBeCloseTo(1.8, 1);
    expect(variance(0)).toBeGreaterThan(0.07);
    expect(variance(0)).toBeLessThan(0.13);
    expect(Math.abs(mean(1))).toBeLessThan(0.2);
    expect(variance(1)).toBeGreaterThan(0.7);
    expect(variance(1)).toBeLessThan(1.35);
  });

  it("keeps both sides of a posterior with two peaks", () => {
    const draws = posteriorDraws(
      1,
      inOnePart((x) => -50 * (x[0]! ** 2 - 1) ** 2),
      settings,
    );
    const right = draws.filter((x) => x[0]! > 0).length / draws.length;
    expect(right).toBeGreaterThan(0.3);
    expect(right).toBeLessThan(0.7);
  });

  it("gives equal draws for equal seeds and survives a likelihood that is a cliff", () => {
    const cliff = inOnePart((x) => (x[0]! > 1.5 ? 0 : -1e6));
    const first = posteriorDraws(1, cliff, settings);
    expect(posteriorDraws(1, cliff, settings)).toEqual(first);
    expect(first.every((x) => x[0]! > 1.5)).toBe(true);
  });
});

describe("seededRandom", () => {
  it("gives equal numbers for equal seeds, spread as it should", () => {
    const one = seededRandom(5);
    const two = seededRandom(5);
    const values = Array.from({ length: 4000 }, () => one.uniform());
    expect(values.slice(0, 5)).toEqual(Array.from({ length: 5 }, () => two.uniform()));
    expect(Math.min(...values)).toBeGreaterThan(0);
    expect(Math.max(...values)).toBeLessThan(1);
    // standard deviation of the mean: sqrt(1 / 12 / 4000) = 0.0046
    expect(Math.abs(values.reduce((a, b) => a + b) / values.length - 0.5)).toBeLessThan(0.015);
    const normals = Array.from({ length: 4000 }, () => one.normal());
    expect(normals.reduce((a, b) => a + b * b, 0) / normals.length).toBeCloseTo(1, 1);
  });

  it("starts well for small seeds, too", () => {
    const firsts = Array.from({ length: 400 }, (_, seed) => seededRandom(seed).normal());
    expect(Math.max(...firsts.map(Math.abs))).toBeLessThan(4.5);
    // standard deviation of the mean square: sqrt(2 / 400) = 0.07
    expect(Math.abs(firsts.reduce((a, b) => a + b * b, 0) / firsts.length - 1)).toBeLessThan(0.22);
    expect(Math.abs(firsts.reduce((a, b) => a + b, 0) / firsts.length)).toBeLessThan(0.2);
  });
});
