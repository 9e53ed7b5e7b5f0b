import { describe, expect, it } from "vitest";
import { highestCount, mixedCdf, mixedQuantile } from "../../src/demand/mixed-quantile.ts";

/** All cumulants of a Poisson count are its mean. */
const POISSON = { variance: 1, third: 1, fourth: 1 };
const CERTAIN = { variance: 0, third: 0, fourth: 0 };

/** Chance of at most n by adding up the Poisson chances of each draw. */
function exactCdf(n: number, means: readonly number[]): number {
  let sum = 0;
  for (const mean of means) {
    let chance = Math.exp(-mean);
    for (let k = 0; k <= n; k++) {
      sum += chance;
      chance *= mean / (k + 1);
    }
  }
  return sum / means.length;
}

describe("mixedCdf", () => {
  it.each([[[30]], [[30, 60]], [[12, 12, 40]]])("adds up Poisson counts with means %j, to 0.0003", (means) => {
    for (let n = 0; n < 120; n++) {
      expect(Math.abs(mixedCdf(n, Float64Array.from(means), POISSON) - exactCdf(n, means))).toBeLessThan(3e-4);
    }
  });
});

describe("mixedQuantile", () => {
  it.each([[[30]], [[30, 60]], [[20, 20, 20, 90]], [[100, 110, 150]]])(
    "is within the 0.0003 of the refined normal where Poisson counts with means %j are mixed",
    (means) => {
      for (const level of [0.01, 0.2, 0.5, 0.8, 0.95, 0.99]) {
        const found = mixedQuantile(level, Float64Array.from(means), POISSON);
        expect(exactCdf(found, means)).toBeGreaterThanOrEqual(level - 3e-4);
        expect(exactCdf(found - 1, means)).toBeLessThan(level + 3e-4);
      }
    },
  );

  it("is the smallest count that meets the level, however far apart the draws are", () => {
    for (const means of [
      [0, 1000],
      [0.1, 5, 400],
      [3, 3, 3],
      [50, 5000],
    ]) {
      const draws = Float64Array.from(means);
      for (let level = 0.05; level < 1; level += 0.037) {
        const found = mixedQuantile(level, draws, POISSON);
        expect(mixedCdf(found, draws, POISSON)).toBeGreaterThanOrEqual(level);
        expect(mixedCdf(found - 1, draws, POISSON)).toBeLessThan(level);
      }
    }
  });

  // By hand: of four draws that are certain, 2, 2, 5 and 9, half are at most 2, three in four at most 5
  it.each([
    [0.25, 2],
    [0.5, 2],
    [0.51, 5],
    [0.75, 5],
    [0.95, 9],
  ])("of needs that are certain given the draw is theirs: at %d %i", (level, units) => {
    expect(mixedQuantile(level, Float64Array.of(9, 2, 5, 2), CERTAIN)).toBe(units);
  });

  it("is nothing where nothing is needed", () => {
    expect(mixedQuantile(0.99, Float64Array.of(0, 0), POISSON)).toBe(0);
  });

  it("is never above the highest count, which has all but a millionth of the chance", () => {
    for (const mean of [0.2, 3, 40, 400]) {
      const most = highestCount(Float64Array.of(mean / 2, mean), POISSON);
      expect(exactCdf(most, [mean])).toBeGreaterThan(1 - 1e-6);
    }
  });
});
