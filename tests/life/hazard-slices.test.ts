import { describe, expect, it } from "vitest";
import { hazardSlices } from "../../src/life/hazard-slices.ts";

describe("hazardSlices", () => {
  // By hand: before anything is seen the hazard is log-normal. Its mean is exp(m + s^2 / 2), and the part of the mean that
  // lies below its quantile z is Phi(z - s) (partial expectation of the log-normal). In halves and s = 1: Phi(-1) = 0.158655
  // below the middle (Abramowitz and Stegun 1964, table 26.1, from memory), so factors of 0.317311 and 1.682689.
  it("is the prior's own where nothing was seen", () => {
    const { mean, paces } = hazardSlices({ failures: 0, exposure: 0, mean: -3, spread: 1, likeliest: -3 }, 2);
    expect(mean / Math.exp(-2.5)).toBeCloseTo(1, 4);
    expect(paces[0]).toBeCloseTo(0.317311, 3);
    expect(paces[1]).toBeCloseTo(1.682689, 3);
  });

  // By hand: in quarters, and s = 0.5, by Phi(-0.67449 - 0.5) = 0.120097, Phi(-0.5) = 0.308538 and Phi(0.17449) = 0.569259
  it("is told in as many equally likely slices as are asked for, rising, of mean 1", () => {
    const { paces } = hazardSlices({ failures: 0, exposure: 0, mean: 0, spread: 0.5, likeliest: 0.4 }, 4);
    [0.120097, 0.188441, 0.260721, 0.430741].forEach((part, i) => {
      expect(paces[i]).toBeCloseTo(4 * part, 3);
    });
    expect(paces.reduce((sum, pace) => sum + pace, 0) / 4).toBeCloseTo(1, 12);
  });

  // Source: with a flat prior of the logarithm, k failures in exposure E leave a gamma posterior of shape k and rate E (Gelman
  // et al., Bayesian Data Analysis, 3rd ed. 2013, section 2.6): its mean is k / E. The prior here is ten units wide, not flat.
  it("forgets its prior where much was seen", () => {
    const { mean, paces } = hazardSlices(
      { failures: 40, exposure: 800, mean: -1, spread: 10, likeliest: Math.log(0.05) },
      8,
    );
    expect(mean).toBeCloseTo(0.05, 3);
    // a gamma of shape 40 has a deviation of 1 / sqrt(40) of its mean; its outer eighths lie some 1.6 of that away
    expect(paces[0]).toBeCloseTo(1 - 1.6 / Math.sqrt(40), 1);
    expect(paces[7]).toBeCloseTo(1 + 1.7 / Math.sqrt(40), 1);
  });
});
