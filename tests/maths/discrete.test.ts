import { describe, expect, it } from "vitest";
import { convolve, quantileOfCounts } from "../../src/maths/convolution.ts";
import { gammaCdf, gammaQuantile } from "../../src/maths/gamma-distribution.ts";
import { fitGammaPoisson, gammaPoissonLogLikelihood } from "../../src/maths/gamma-poisson.ts";
import { digamma, logGamma } from "../../src/maths/log-gamma.ts";
import { poissonCounts } from "../../src/maths/poisson.ts";
import { fullestCellChance, widestClusterChance } from "../../src/maths/scan-statistic.ts";
import { negativeBinomial } from "./negative-binomial.ts";

describe("logGamma and digamma", () => {
  // Source: R 4 lgamma(1.5), gamma(1 + 1/1.7208), computed outside this project
  it("match R", () => {
    expect(logGamma(1.5)).toBeCloseTo(-0.120782237635245, 13);
    expect(Math.exp(logGamma(1 + 1 / 1.7208))).toBeCloseTo(0.891529104411, 11);
  });
  // By definition: digamma(1) = -Euler's constant (Abramowitz and Stegun 1964, 6.3.2), digamma(x + 1) = digamma(x) + 1/x
  it("digamma(1) is minus Euler's constant", () => {
    expect(digamma(1)).toBeCloseTo(-0.5772156649015329, 13);
    expect(digamma(7.3) - digamma(6.3)).toBeCloseTo(1 / 6.3, 13);
  });
});

describe("gamma distribution", () => {
  // Source: R 4 pgamma(2, shape = 3), qgamma(.95, 2.5), computed outside this project
  it("matches R", () => {
    expect(gammaCdf(3, 2)).toBeCloseTo(0.32332358381694, 13);
    expect(gammaQuantile(2.5, 0.95)).toBeCloseTo(5.535248846758, 11);
  });
  // Source: Gelman et al., Bayesian Data Analysis, sec. 2.6 (from memory; chances computed in R)
  it("gives the posterior chances of the asthma example", () => {
    expect(gammaCdf(3, 1.44 * 5)).toBeCloseTo(0.97452649, 7);
    expect(1 - gammaCdf(6, 7)).toBeCloseTo(0.30070828, 7);
    expect(1 - gammaCdf(33, 25)).toBeCloseTo(0.92854397, 7);
    expect(gammaQuantile(33, 0.025) / 25).toBeCloseTo(0.9086272629, 9);
    expect(gammaQuantile(33, 0.975) / 25).toBeCloseTo(1.8069780832, 9);
  });
});

describe("limits of a Poisson mean", () => {
  // Source: Garwood (1936), Biometrika 28, 437-442: exact 95 % limits are gamma quantiles; computed in R outside this
  // project. For no event at all the one-sided limit is -ln 0.05.
  it("gammaQuantile gives Garwood's exact limits", () => {
    const published: [events: number, low: number, high: number][] = [
      [1, 0.025317808, 5.57164339],
      [2, 0.242209279, 7.22468767],
      [3, 0.618672123, 8.76727307],
      [4, 1.08986537, 10.2415887],
      [5, 1.62348639, 11.6683321],
      [10, 4.7953887, 18.390356],
    ];
    for (const [events, low, high] of published) {
      expect(gammaQuantile(events, 0.025)).toBeCloseTo(low, 7);
      expect(gammaQuantile(events + 1, 0.975)).toBeCloseTo(high, 6);
    }
    expect(gammaQuantile(1, 0.975)).toBeCloseTo(3.68887945, 8);
    expect(gammaQuantile(1, 0.95)).toBeCloseTo(2.99573227355, 10);
  });
});

describe("Gamma-Poisson rates", () => {
  // Source: pump failures, Gaver and O'Muircheartaigh (1987), Technometrics 29, 1-15; maximum computed outside
  const failures = [5, 1, 5, 14, 3, 19, 1, 1, 4, 22];
  const thousandHours = [94.32, 15.72, 62.88, 125.76, 5.24, 31.44, 1.048, 1.048, 2.096, 10.48];

  it("fitGammaPoisson finds the maximum of the pump data", () => {
    const prior = fitGammaPoisson(failures, thousandHours)!;
    // a general optimiser's digits, which stop short of the maximum by 3e-7 ...
    expect(prior.shape).toBeCloseTo(0.822268412503, 6);
    expect(prior.exposure).toBeCloseTo(1.25895404018, 6);
    // ... and the root of the two score equations, mpmath 40 digits, computed outside
    expect(prior.shape).toBeCloseTo(0.8222686496886464, 12);
    expect(prior.exposure).toBeCloseTo(1.2589544433707192, 12);
    expect(gammaPoissonLogLikelihood(failures, thousandHours, prior)).toBeCloseTo(-32.263067045, 8);
    const means = failures.map((y, i) => (y + prior.shape) / (thousandHours[i]! + prior.exposure));
    const published = [
      0.0609157996, 0.1073251278, 0.0907758553, 0.1166933591, 0.5881359352, 0.6062049688, 0.7899023478, 0.7899023478,
      1.4373575181, 1.9441483742,
    ];
    means.forEach((mean, i) => {
      expect(mean).toBeCloseTo(published[i]!, 6);
    });
    const deviations = failures.map((y, i) => Math.sqrt(y + prior.shape) / (thousandHours[i]! + prior.exposure));
    const publishedDeviations = [
      0.0252454919, 0.0795051462, 0.0376204718, 0.0303102002, 0.3008272163, 0.1361578909, 0.5851500293, 0.5851500293,
      0.654544405, 0.4069583859,
    ];
    deviations.forEach((deviation, i) => {
      expect(deviation).toBeCloseTo(publishedDeviations[i]!, 6);
    });
    const shape = 5 + prior.shape;
    const exposure = 94.32 + prior.exposure;
    expect(gammaQuantile(shape, 0.025) / exposure).toBeCloseTo(0.0219332418, 7);
    expect(gammaQuantile(shape, 0.975) / exposure).toBeCloseTo(0.119457552, 7);
  });

  // By hand: for long exposures the counts over them are the rates, and a gamma's likelihood over rates r is greatest where
  // ln a - digamma(a) = ln mean(r) - mean(ln r) = -(ln 0.9 + ln 1.1) / 2 = 0.005025; as ln a - digamma(a) is close to
  // 1 / (2 a) + 1 / (12 a^2), a is 99.67. Poisson noise takes away a hundredth of the spread: about 101.
  it("fitGammaPoisson tells places that differ by a tenth, where much was counted", () => {
    const counts = Array.from({ length: 20 }, (_, place) => (place % 2 === 0 ? 9000 : 11_000));
    const { shape, exposure } = fitGammaPoisson(counts, Array<number>(20).fill(10))!;
    expect(shape).toBeGreaterThan(99);
    expect(shape).toBeLessThan(103);
    expect(shape / exposure).toBeCloseTo(1000, 0);
  });

  it("fitGammaPoisson returns null where the counts spread less than chance would spread them", () => {
    expect(fitGammaPoisson([3, 3, 3, 3, 3], [10, 10, 10, 10, 10])).toBeNull();
    expect(fitGammaPoisson([0, 0, 0], [10, 10, 10])).toBeNull();
  });

  // Source: R 4 dnbinom, mean 3, size 2; and BDA sec. 2.6: Gamma(33, 25) over exposure 2, 95 % quantile 6
  it("negativeBinomial matches R", () => {
    const r = [0.16, 0.192, 0.1728, 0.13824, 0.10368, 0.0746496, 0.05225472];
    negativeBinomial({ shape: 2, exposure: 2 }, 3, 6).forEach((chance, n) => {
      expect(chance).toBeCloseTo(r[n]!, 12);
    });
    const predictive = negativeBinomial({ shape: 33, exposure: 25 }, 2, 30);
    const bda = [0.0788889306, 0.19283960814, 0.24283506211, 0.20985746108, 0.13990497405, 0.07668865244, 0.0359773925];
    bda.forEach((chance, n) => {
      expect(predictive[n]).toBeCloseTo(chance, 9);
    });
    expect(quantileOfCounts(predictive, 0.95)).toBe(6);
    const mean3 = negativeBinomial({ shape: 2, exposure: 2 }, 3, 60);
    expect([0.9, 0.95, 0.99].map((level) => quantileOfCounts(mean3, level))).toEqual([7, 8, 12]);
  });

  // By hand: 0.7 and 0.2 are nine tenths, though their sum as numbers lies a hair below
  it("quantileOfCounts takes a level for met that only rounding misses", () => {
    expect(0.7 + 0.2).toBeLessThan(0.9);
    expect(quantileOfCounts(Float64Array.of(0.7, 0.2, 0.1), 0.9)).toBe(1);
    expect(quantileOfCounts(Float64Array.of(0.7, 0.1999, 0.1001), 0.9)).toBe(2);
  });
});

describe("poissonCounts", () => {
  // Source: R 4 qpois and ppois, computed outside this project
  it("matches R's quantiles and distribution", () => {
    const levels = [0.5, 0.9, 0.95, 0.975, 0.99, 0.999];
    const quantiles = (mean: number) => levels.map((level) => quantileOfCounts(poissonCounts(mean, 60), level));
    expect(quantiles(0.5)).toEqual([0, 1, 2, 2, 3, 4]);
    expect(quantiles(1)).toEqual([1, 2, 3, 3, 4, 5]);
    expect(quantiles(2)).toEqual([2, 4, 5, 5, 6, 8]);
    expect(quantiles(3.5)).toEqual([3, 6, 7, 8, 8, 11]);
    expect(quantiles(10)).toEqual([10, 14, 15, 17, 18, 21]);
    let below = 0;
    const upTo = [
      0.1353352832, 0.4060058497, 0.6766764162, 0.8571234605, 0.9473469827, 0.9834363915, 0.9954661945, 0.998903281,
      0.9997625527,
    ];
    upTo.forEach((chance, n) => {
      below += poissonCounts(2, 40)[n]!;
      expect(below).toBeCloseTo(chance, 9);
    });
  });
  // Source: R 4 ppois at 3.5, and expected shortages E(D - q)+ at q = 0 ... 5, computed outside this project
  it("matches R's distribution at 3.5 and its expected shortages", () => {
    const upTo = [
      0.03019738342, 0.1358882254, 0.32084719886, 0.5366326679, 0.72544495331, 0.8576135531, 0.93471190297,
      0.97326107791, 0.99012634194,
    ];
    const chances = poissonCounts(3.5, 60);
    let below = 0;
    upTo.forEach((chance, n) => {
      below += chances[n]!;
      expect(below).toBeCloseTo(chance, 10);
    });
    const shortages: [mean: number, expected: number[]][] = [
      [1, [1, 0.3678794411714, 0.1036383235143, 0.0233369264429, 0.0043487695668, 0.0006889227394]],
      [2, [2, 1.13533528324, 0.54134113295, 0.21801754913, 0.07514100963, 0.02248799228]],
      [10, [10, 9.0000454, 8.000544799, 7.003314195, 6.013650246, 5.042902934]],
    ];
    for (const [mean, expected] of shortages) {
      const counts = poissonCounts(mean, 100);
      expected.forEach((shortage, q) => {
        const short = counts.reduce((sum, chance, n) => sum + chance * Math.max(0, n - q), 0);
        expect(short).toBeCloseTo(shortage, 9);
      });
    }
  });
  it("holds the rest in its last entry", () => {
    const cut = poissonCounts(4, 2);
    expect(cut.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 14);
    expect(poissonCounts(0, 3)[0]).toBe(1);
    expect(poissonCounts(900, 2000).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
  });
});

describe("convolve", () => {
  // By hand: two fair coins
  it("adds two coins", () => {
    const coin = Float64Array.of(0.5, 0.5);
    expect([...convolve(coin, coin)]).toEqual([0.25, 0.5, 0.25]);
  });
});

describe("scan statistics", () => {
  // Source: the birthday problem, Feller (1968), vol. 1, II.3 and II.5: 23 people make a shared birthday likely
  // (0.5073), 22 do not (0.4757); 88 people make three on one day likely, 87 do not (common knowledge since von Mises)
  it("fullestCellChance solves the birthday problem", () => {
    expect(fullestCellChance(23, 365, 2)).toBeCloseTo(0.5073, 4);
    expect(fullestCellChance(22, 365, 2)).toBeCloseTo(0.4757, 4);
    expect(fullestCellChance(88, 365, 3)).toBeGreaterThan(0.5);
    expect(fullestCellChance(87, 365, 3)).toBeLessThan(0.5);
  });
  // By hand: three points on two cells: all in one cell 2 * (1/2)^3; some cell holds two or more for certain
  it("fullestCellChance counts small cases", () => {
    expect(fullestCellChance(3, 2, 3)).toBeCloseTo(0.25, 12);
    expect(fullestCellChance(3, 2, 2)).toBeCloseTo(1, 12);
    expect(fullestCellChance(2, 10, 2)).toBeCloseTo(0.1, 12);
    expect(fullestCellChance(4, 2, 5)).toBe(0);
    expect(fullestCellChance(3, 1, 3)).toBe(1);
  });
  it("fullestCellChance bounds from above beyond a thousand points", () => {
    const exact = fullestCellChance(1000, 36, 55);
    const bound = fullestCellChance(1001, 36, 55);
    expect(bound).toBeGreaterThanOrEqual(exact);
    expect(bound).toBeLessThan(exact * 1.1);
  });
  // Source: Naus (1965), exact for atLeast > (points + 1) / 2; values computed outside, two checked by simulation
  it("widestClusterChance gives Naus's exact values", () => {
    expect(widestClusterChance(3, 0.2, 3)).toBeCloseTo(0.104, 12);
    expect(widestClusterChance(5, 0.25, 5)).toBeCloseTo(0.015625, 12);
    expect(widestClusterChance(4, 0.2, 3)).toBeCloseTo(0.3104, 10);
    expect(widestClusterChance(5, 0.2, 4)).toBeCloseTo(0.10304, 10);
    expect(widestClusterChance(6, 0.1, 4)).toBeCloseTo(0.042635, 10);
    expect(widestClusterChance(8, 0.1, 5)).toBeCloseTo(0.01760114, 10);
    expect(widestClusterChance(10, 0.1, 6)).toBeCloseTo(0.0070450742, 10);
  });
  // Source: Wallenstein and Neff (1987); simulated 0.14736 and 0.35387 lie below, as for an upper bound
  it("widestClusterChance is Wallenstein and Neff's bound elsewhere", () => {
    expect(widestClusterChance(12, 0.1, 5)).toBeCloseTo(0.148819, 6);
    expect(widestClusterChance(20, 0.1, 6)).toBeCloseTo(0.368321, 6);
    expect(widestClusterChance(20, 0.05, 4)).toBeCloseTo(0.818131, 6);
  });
  // By hand, from the spacings of uniform points: a pair, all of them, and three of four within a window
  const pair = (points: number, window: number) => 1 - (1 - (points - 1) * window) ** points;
  const all = (points: number, window: number) => points * window ** (points - 1) - (points - 1) * window ** points;
  const threeOfFour = (window: number) => 1 - 2 * (1 - window) ** 4 + (1 - 2 * window) ** 4;
  it("widestClusterChance equals the elementary formulas where it is exact", () => {
    for (const window of [0.01, 0.05, 0.1, 0.2, 0.35, 0.5]) {
      for (const points of [2, 3, 5, 8]) {
        expect(widestClusterChance(points, window, points)).toBeCloseTo(all(points, window), 11);
      }
      expect(widestClusterChance(2, window, 2)).toBeCloseTo(pair(2, window), 11);
      expect(widestClusterChance(4, window, 3)).toBeCloseTo(threeOfFour(window), 11);
    }
  });
  // Source: exact values of a pair, computed outside from the formula above, and the birthday problem on a line
  it("widestClusterChance is never below the exact chance of a pair", () => {
    const exact: [points: number, window: number, chance: number][] = [
      [5, 0.1, 0.92224],
      [10, 0.05, 0.9974670483788086],
      [23, 1 / 365, 0.7606525094368569],
    ];
    for (const [points, window, chance] of exact) {
      expect(pair(points, window)).toBeCloseTo(chance, 12);
      expect(widestClusterChance(points, window, 2)).toBeGreaterThanOrEqual(chance);
    }
    // close where small: five points and a thousandth
    expect(widestClusterChance(5, 0.001, 2) / pair(5, 0.001)).toBeCloseTo(1, 2);
  });
  // Source: Naus (1982), Journal of the American Statistical Association 77, 177-183: his approximation for a Poisson
  // number of points, computed outside this project, and simulations of 400,000 lines with their standard errors
  it("widestClusterChance, over a Poisson number of points, is Naus's chance where that is small, and above it elsewhere", () => {
    const cases: [atLeast: number, mean: number, windows: number, naus: number, simulated: number, error: number][] = [
      [3, 0.5, 4, 0.10909870298531577, 0.1092975, 0.0005],
      [4, 0.5, 12, 0.06126357232725921, 0.0609975, 0.0004],
      [5, 1, 12, 0.13198064556085087, 0.131785, 0.0005],
      [4, 0.25, 52, 0.0241037283070048, 0.024555, 0.00024],
      [5, 2, 10, 0.7176735555341938, 0.717335, 0.0007],
    ];
    for (const [atLeast, mean, windows, naus, simulated, error] of cases) {
      const bound = poissonCounts(mean * windows, 200).reduce(
        (sum, chance, points) => sum + chance * widestClusterChance(points, 1 / windows, atLeast),
        0,
      );
      expect(bound).toBeGreaterThan(naus);
      expect(bound).toBeGreaterThan(simulated - 3 * error);
      expect(bound / naus).toBeLessThan(naus < 0.07 ? 1.03 : 1.1);
    }
  });
  // Cells are some of the windows of their width, so a full cell is never likelier than a full window
  it("fullestCellChance is at most widestClusterChance", () => {
    for (const [points, cells, atLeast] of [
      [4, 5, 3],
      [6, 10, 4],
      [12, 10, 5],
      [20, 20, 4],
      [60, 36, 8],
    ] as const) {
      expect(fullestCellChance(points, cells, atLeast)).toBeLessThan(widestClusterChance(points, 1 / cells, atLeast));
    }
  });
});
