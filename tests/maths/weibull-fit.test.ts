import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { kaplanMeier, type WatchedLife } from "../../src/maths/kaplan-meier.ts";
import { fitWeibull, type WeibullFit, type WeibullPrior } from "../../src/maths/weibull-fit.ts";

const watched = (ages: readonly number[], failed: boolean, entry = 0): WatchedLife[] =>
  ages.map((exit) => ({ entry, exit, failed }));

/** Ages as printed: "+" marks a life that had not failed when watching ended. */
const fromPrint = (text: string): WatchedLife[] =>
  text.split(" ").map((age) => ({ entry: 0, exit: Number.parseFloat(age), failed: !age.endsWith("+") }));

// Source: NIST/SEMATECH e-Handbook of Statistical Methods, 8.4.1.3, data and rounded results
const handbook = [
  ...watched([54, 187, 216, 240, 244, 335, 361, 373, 375, 386], true),
  ...watched(Array(10).fill(500), false),
];
// Source: Freireich et al. (1963), Blood 21, 699-716: weeks of remission, 6-MP and control
const sixMp = fromPrint("10 7 32+ 23 22 6 16 34+ 32+ 25+ 11+ 20+ 19+ 6 17+ 35+ 6 13 9+ 6+ 10+");
const control = fromPrint("1 22 3 12 8 17 2 11 8 12 2 5 4 15 8 23 5 11 4 1 8");
// Source: O'Connor (1985), in Meeker and Escobar (1998), Statistical Methods for Reliability Data, table C.2, km
const absorberFailures = [6700, 9120, 12200, 13150, 14300, 17520, 20100, 20900, 22700, 26510, 27490];
const absorberSurvivors = [
  6950, 7820, 8790, 9660, 9820, 11310, 11690, 11850, 11880, 12140, 12870, 13330, 13470, 14040, 17540, 17890, 18450,
  18960, 18980, 19410, 20100, 20150, 20320, 23490, 27410, 27890, 28100,
];
const absorbers = [...watched(absorberFailures, true), ...watched(absorberSurvivors, false)];

/** Relative agreement: the outside figures have 11 to 13 digits. */
const near = (found: number, printed: number, relative = 2e-10) =>
  expect(Math.abs(found / printed - 1), `${found} against ${printed}`).toBeLessThan(relative);

/** Of complete and right-censored lives: density of those that failed, survival of the others. */
const logLikelihood = (lives: readonly WatchedLife[], { scale, shape }: WeibullFit) =>
  lives.reduce((sum, { exit, failed }) => {
    const logDensity = Math.log(shape / scale) + (shape - 1) * Math.log(exit / scale);
    return sum + (failed ? logDensity : 0) - (exit / scale) ** shape;
  }, 0);

describe("fitWeibull", () => {
  // Printed by the handbook: 606.5280, 1.7208, 75.135; further digits from R 4 survreg, computed outside
  it("matches the handbook's ten failures of twenty", () => {
    const fit = fitWeibull(handbook)!;
    expect(fit.scale).toBeCloseTo(606.528, 3);
    expect(fit.shape).toBeCloseTo(1.7208, 4);
    expect(-logLikelihood(handbook, fit)).toBeCloseTo(75.135, 3);
    near(fit.scale, 606.52755800357);
    near(fit.shape, 1.7207972608014);
    near(-logLikelihood(handbook, fit), 75.134618164475);
  });

  // Source: R 4 survreg on MASS gehan, computed outside
  it("matches R on the remissions", () => {
    const treated = fitWeibull(sixMp)!;
    near(treated.scale, 33.765150967635);
    near(treated.shape, 1.3537345238262);
    near(logLikelihood(sixMp, treated), -41.658678476882);
    const untreated = fitWeibull(control)!;
    near(untreated.scale, 9.4821412555367);
    near(untreated.shape, 1.3704998592829);
    near(logLikelihood(control, untreated), -64.920107589012);
  });

  // Printed by Meeker and Escobar (from memory): 10.23, 0.3164; digits from R 4, outside
  it("matches the shock absorbers", () => {
    const fit = fitWeibull(absorbers)!;
    near(Math.log(fit.scale), 10.229863208675);
    near(1 / fit.shape, 0.31640860393503);
    near(logLikelihood(absorbers, fit), -123.99536118883);
  });

  it("finds nothing where there is nothing to find", () => {
    expect(fitWeibull([])).toBeNull();
    expect(fitWeibull(watched([3, 4, 5], false))).toBeNull();
    // a single failure at the greatest age: the steeper the likelier, without end
    expect(fitWeibull([...watched([1, 2], false), ...watched([3], true)])).toBeNull();
  });

  const held = { mean: 0, spread: 1e-7 };
  const unsure = { mean: 0, spread: 1e5 };

  // By derivation: with the shape held at 1 the hazard is constant, and the likelihood of d failures over the years
  // watched, sum of (exit - entry), has its maximum at d / years.
  it("with late entry and a shape of 1, gives failures over exposure", () => {
    const lives = [...watched([4, 5.5, 7], true, 3), ...watched([6, 8, 9], false, 2), ...watched([1, 2], true)];
    const years = 1 + 2.5 + 4 + 4 + 6 + 7 + 1 + 2;
    near(1 / fitWeibull(lives, { age: 5, logHazard: unsure, logShape: held })!.scale, 5 / years, 1e-9);
  });

  // By derivation: the log density d x - e^x E - (x - m)^2 / (2 s^2) of the log hazard x has its maximum where
  // d - e^x E = (x - m) / s^2
  it("weighs what was seen against what was believed", () => {
    const logHazard = { mean: Math.log(0.02), spread: 1.3 };
    const prior: WeibullPrior = { age: 5, logHazard, logShape: held };
    near(5 / fitWeibull([], prior)!.scale, 0.02, 1e-9);
    for (const failed of [0, 2, 15]) {
      const lives = [...watched(Array(20).fill(4), false), ...watched(Array(failed).fill(2), true)];
      const x = Math.log(5 / fitWeibull(lives, prior)!.scale);
      const exposure = (20 * 4 + failed * 2) / 5;
      expect(failed - Math.exp(x) * exposure).toBeCloseTo((x - logHazard.mean) / 1.3 ** 2, 6);
    }
    const many = Array.from({ length: 200 }, () => handbook).flat();
    const weak: WeibullPrior = { age: 500, logHazard, logShape: { mean: 0, spread: 0.3 } };
    near(fitWeibull(many, weak)!.scale, fitWeibull(many)!.scale, 0.01);
  });

  // By definition of late entry: (0, c] without failure, then (c, exit], is the same evidence as (0, exit]
  it("does not change where lives are cut in two", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.double({ min: 0.5, max: 20, noNaN: true }), fc.boolean()), {
          minLength: 6,
          maxLength: 40,
        }),
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        (pairs, share) => {
          const whole = pairs.map(([exit, failed]) => ({ entry: 0, exit, failed }));
          const cut = whole.flatMap((life) => [
            { entry: 0, exit: life.exit * share, failed: false },
            { ...life, entry: life.exit * share },
          ]);
          const one = fitWeibull(whole);
          const two = fitWeibull(cut);
          expect(two === null).toBe(one === null);
          if (one === null || two === null) return;
          near(two.scale, one.scale, 1e-6);
          near(two.shape, one.shape, 1e-6);
          const steps = kaplanMeier(cut);
          kaplanMeier(whole).forEach((step, i) => {
            expect(steps[i]).toEqual(step);
          });
        },
      ),
      { seed: 3, numRuns: 100 },
    );
  });

  it("scales with the unit of time, and balances failures and hazard", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e4, noNaN: true }), fc.nat(20), (unit, late) => {
        const lives = absorbers.map((life, i) => ({ ...life, entry: i < late ? life.exit / 2 : 0 }));
        const fit = fitWeibull(lives)!;
        const scaled = fitWeibull(
          lives.map(({ entry, exit, failed }) => ({ entry: entry * unit, exit: exit * unit, failed })),
        )!;
        near(scaled.shape, fit.shape, 1e-9);
        near(scaled.scale, fit.scale * unit, 1e-9);
        // the score equation of the scale: hazard gone through adds up to the failures
        const hazard = (age: number) => (age / fit.scale) ** fit.shape;
        near(
          lives.reduce((sum, { entry, exit }) => sum + hazard(exit) - hazard(entry), 0),
          11,
          1e-9,
        );
      }),
      { seed: 4, numRuns: 50 },
    );
  });
});

it("finds the maximum of thousands of lives under a weak prior: near the one without it", () => {
  // ages evenly up to 4.5 years, one in ten a failure
  for (const lives of [2000, 5000]) {
    const ages = Array.from({ length: lives }, (_, i) => (4.5 * (i + 0.5)) / lives);
    const record = ages.map((exit, i): WatchedLife => ({ entry: 0, exit, failed: i % 10 === 5 }));
    const prior: WeibullPrior = {
      age: 5,
      logHazard: { mean: -4.5, spread: 1.28 },
      logShape: { mean: Math.log(1.2), spread: 0.3 },
    };
    const [alone, weakly] = [fitWeibull(record)!, fitWeibull(record, prior)!];
    expect(weakly).not.toBe(null);
    expect(Math.log(weakly.shape / alone.shape)).toBeCloseTo(0, 1);
    expect(Math.log(weakly.scale / alone.scale)).toBeCloseTo(0, 1);
  }
});

describe("kaplanMeier", () => {
  // Source: Klein and Moeschberger (2003), Survival Analysis, section 4.6 (from memory): at risk at an age is who began to be
  // watched before it and is still watched at it. By hand: of four lives one begins at 4, too late for the failure at 4
  it("with late entry, counts who was watched before the failure, and until it", () => {
    const lives = [
      { entry: 0, exit: 4, failed: true },
      { entry: 4, exit: 9, failed: false },
      { entry: 0, exit: 4, failed: false },
      { entry: 3, exit: 7, failed: true },
    ];
    expect(kaplanMeier(lives)).toMatchObject([
      { age: 4, atRisk: 3, failures: 1, survival: expect.closeTo(2 / 3, 12) },
      { age: 7, atRisk: 2, failures: 1, survival: expect.closeTo(1 / 3, 12) },
    ]);
  });

  // Source: R 4 survfit on MASS gehan, computed outside
  it("matches R on the remissions under 6-MP", () => {
    const table = [
      [6, 21, 3, 0.857142857143, 0.07636035483],
      [7, 17, 1, 0.806722689076, 0.08693528518],
      [10, 15, 1, 0.752941176471, 0.09634965299],
      [13, 12, 1, 0.690196078431, 0.10681470778],
      [16, 11, 1, 0.627450980392, 0.11405386526],
      [22, 7, 1, 0.53781512605, 0.12823375169],
      [23, 6, 1, 0.448179271709, 0.13459145676],
    ] as const;
    const steps = kaplanMeier(sixMp);
    expect(steps).toHaveLength(table.length);
    table.forEach(([age, atRisk, failures, survival, standardError], i) => {
      expect(steps[i]).toMatchObject({ age, atRisk, failures });
      expect(steps[i]!.survival).toBeCloseTo(survival, 11);
      expect(steps[i]!.standardError).toBeCloseTo(standardError, 10);
    });
  });

  // By hand: ten of twenty fail one by one before 500 h
  it("steps down by twentieths in the handbook's example", () => {
    const steps = kaplanMeier(handbook);
    steps.forEach((step, i) => {
      expect(step.survival).toBeCloseTo(1 - (i + 1) / 20, 12);
    });
    // R 4, computed outside
    expect(steps.at(-1)!.standardError).toBeCloseTo(0.11180339887, 10);
  });

  // Source: R 4 survfit, computed outside
  it("matches R on the shock absorbers", () => {
    const survival = [
      0.973684210526, 0.945046439628, 0.908698499643, 0.870836062158, 0.82729425905, 0.783752455942, 0.71843975128,
      0.62863478237, 0.53882981346, 0.431063850768, 0.287375900512,
    ];
    kaplanMeier(absorbers).forEach((step, i) => {
      expect(step.age).toBe(absorberFailures[i]);
      expect(step.survival).toBeCloseTo(survival[i]!, 11);
    });
  });

  // By hand: at 2, one of the two watched; at 5, one of the three (the third entered at 3)
  it("counts a late entry from its entry on", () => {
    const lives = [
      { entry: 0, exit: 2, failed: true },
      { entry: 0, exit: 6, failed: false },
      { entry: 3, exit: 5, failed: true },
      { entry: 3, exit: 7, failed: false },
    ];
    expect(kaplanMeier(lives).map((step) => [step.atRisk, step.survival])).toEqual([
      [2, 1 / 2],
      [3, (1 / 2) * (1 - 1 / 3)],
    ]);
  });
});
