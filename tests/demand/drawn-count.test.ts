import { describe, expect, it } from "vitest";
import { drawnCount } from "../../src/demand/drawn-count.ts";

const LEVELS = 20_000;

/** Mean, variance and the share of each count, over evenly spaced levels: what a distribution is, up to their step. */
function told(mean: number, variance: number) {
  const counts = Array.from({ length: LEVELS }, (_, at) => drawnCount(mean, variance, (at + 0.5) / LEVELS));
  const middle = counts.reduce((sum, count) => sum + count, 0) / LEVELS;
  const spread = counts.reduce((sum, count) => sum + (count - middle) ** 2, 0) / LEVELS;
  const share = (wanted: number) => counts.filter((count) => count === wanted).length / LEVELS;
  return { middle, spread, share };
}

describe("drawnCount", () => {
  it.each([
    ["none", 0, 0],
    ["a certain whole number", 7, 0],
    ["one of two whole numbers", 7.25, 0],
    ["rare needs", 0.2, 0.2],
    ["rare needs beside certain ones", 3.3, 0.3],
    ["a Poisson count", 5, 5],
    ["a binomial count", 3, 2.1],
    ["a negative binomial count", 4, 8],
    ["a large count", 100, 50],
    ["a large count of wide spread", 80, 400],
  ])("keeps the mean and the variance of %s", (_, mean, variance) => {
    const { middle, spread } = told(mean, variance);
    expect(middle).toBeCloseTo(mean, 1);
    // a mean between whole numbers spreads by itself
    const least = (mean % 1) * (1 - (mean % 1));
    expect(Math.abs(spread - Math.max(variance, variance < 0.4 ? least : 0))).toBeLessThan(0.25 + variance / 50);
  });

  // By hand: e^-1; 0.7^10 and 10 * 0.3 * 0.7^9; (1/2)^4 and 4 * (1/2)^5 of four failures at even chance
  it("is Poisson, binomial or negative binomial by its ratio of variance to mean", () => {
    expect(told(1, 1).share(0)).toBeCloseTo(0.3679, 3);
    const binomial = told(3, 2.1);
    expect(binomial.share(0)).toBeCloseTo(0.0282, 3);
    expect(binomial.share(1)).toBeCloseTo(0.1211, 3);
    const wide = told(4, 8);
    expect(wide.share(0)).toBeCloseTo(0.0625, 3);
    expect(wide.share(1)).toBeCloseTo(0.125, 3);
  });

  // Source: normal table, .95 quantile 1.6449; by hand 100 + 1.6449 * 7.07 = 111.6
  it("is a rounded normal count where the mean is large", () => {
    expect(drawnCount(100, 50, 0.95)).toBe(112);
    expect(drawnCount(100, 50, 0.5)).toBe(100);
    expect(drawnCount(100, 50, 0.05)).toBe(88);
  });
});
