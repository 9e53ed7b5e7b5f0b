import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mixtureAbove, mixtureQuantile } from "../../src/maths/normal-mixture.ts";
import { seededRandom } from "../../src/maths/random.ts";
import { distancesFromOthers, type SeenGroup, shrinkages } from "../../src/maths/shrunk-means.ts";

const group = (estimate: number, variance: number, weight = 1): SeenGroup => ({ estimate, variance, weight });

/** Posterior mean of each group's true mean. */
function shrunkMeans(groups: readonly SeenGroup[], spreads: readonly number[]): number[] {
  const given = shrinkages(groups, spreads);
  return groups.map(({ estimate }, k) =>
    given.reduce((sum, { chance, centre, keep }) => sum + chance * (keep[k]! * estimate + (1 - keep[k]!) * centre), 0),
  );
}

describe("shrinkages", () => {
  // Source: Pinheiro & Bates (2000), Mixed-effects models in S and S-PLUS, section 1.1, Rail; REML in lme4 (R): mean
  // 66.5 (se 10.171037311897), SD between rails 24.8054653476026, sigma 4.02077936060494, and these predictions.
  it("gives the predictions of the one-way random-effects model where the spread is known", () => {
    const rails = [54, 31 + 2 / 3, 84 + 2 / 3, 96, 50, 82 + 2 / 3];
    const groups = rails.map((mean) => group(mean, 4.02077936060494 ** 2 / 3));
    const between = 24.8054653476026;
    const [given] = shrinkages(groups, [between]);
    expect(given!.chance).toBe(1);
    expect(given!.centre).toBeCloseTo(66.5, 10);
    expect(Math.sqrt(given!.centreVariance)).toBeCloseTo(10.171037311897, 6);
    const effects = shrunkMeans(groups, [between]).map((mean) => mean - 66.5);
    [-12.39147557417, -34.53091193336, 18.00894450113, 29.24388235505, -16.35674775791, 16.02630840926].forEach(
      (published, k) => {
        expect(effects[k]).toBeCloseTo(published, 5);
      },
    );
    // REML's spread between rails is where the likelihood peaks
    const spreads = Array.from({ length: 200 }, (_, i) => 0.25 * (i + 1));
    const chances = shrinkages(groups, spreads).map(({ chance }) => chance);
    expect(Math.abs(spreads[chances.indexOf(Math.max(...chances))]! - between)).toBeLessThanOrEqual(0.25);
  });

  // Source: Gelman et al., Bayesian Data Analysis, section 5.5, tables 5.2 and 5.3 (from memory): effects of coaching
  // in eight schools; medians of 200 simulated posteriors under a flat prior of the spread, printed as whole points.
  it("pulls the eight schools together as the textbook does", () => {
    const effects = [28, 8, -3, 7, -1, 1, 18, 12];
    const errors = [15, 10, 16, 11, 9, 11, 10, 18];
    const schools = effects.map((effect, k) => group(effect, errors[k]! ** 2));
    const means = shrunkMeans(
      schools,
      Array.from({ length: 400 }, (_, i) => 0.1 * (i + 0.5)),
    );
    [10, 8, 7, 8, 5, 6, 10, 8].forEach((median, k) => {
      expect(Math.abs(means[k]! - median)).toBeLessThan(2);
    });
    expect(means.indexOf(Math.max(...means))).toBe(0);
    expect(means.indexOf(Math.min(...means))).toBe(4);
  });
});

describe("distancesFromOthers", () => {
  // By hand: variances 0.01 and a spread of 0.1 keep half of each estimate, the rest is 0.2 for both: 0.3 and 0.1.
  // Their distance is 0.2, its variance 0.5 * 0.01 twice: the centre drops out.
  it("of two like groups is the difference of their shrunk means", () => {
    const groups = [group(0.4, 0.01), group(0, 0.01)];
    const [first, second] = distancesFromOthers(groups, shrinkages(groups, [0.1]));
    expect(first).toEqual([{ chance: 1, mean: expect.closeTo(0.2, 12), deviation: expect.closeTo(0.1, 12) }]);
    expect(second![0]!.mean).toBeCloseTo(-0.2, 12);
  });

  // By hand: with no shrinkage to speak of, 0.5 lies 0.5 - (3 * 0.2 + 1 * 0.4) / 4 = 0.25 above the others.
  it("weighs the other groups by their members", () => {
    const groups = [group(0.5, 1e-9, 2), group(0.2, 1e-9, 3), group(0.4, 1e-9, 1)];
    expect(distancesFromOthers(groups, shrinkages(groups, [10]))[0]![0]!.mean).toBeCloseTo(0.25, 6);
  });

  it("holds the true distance in its 80 % range four times in five, for groups drawn as it believes", () => {
    const random = seededRandom(3);
    const spreads = Array.from({ length: 12 }, (_, i) => 0.05 * (i + 0.5));
    let inside = 0;
    let sure = 0;
    let right = 0;
    for (let world = 0; world < 400; world++) {
      const spread = spreads[world % spreads.length]!;
      const truths = Array.from({ length: 6 }, () => 2 + spread * random.normal());
      const groups = truths.map((truth) => {
        const variance = 0.01 + 0.05 * random.uniform();
        return group(truth + Math.sqrt(variance) * random.normal(), variance, 1 + Math.floor(9 * random.uniform()));
      });
      const weights = groups.reduce((sum, { weight }) => sum + weight, 0);
      const mean = groups.reduce((sum, { weight }, k) => sum + weight * truths[k]!, 0);
      distancesFromOthers(groups, shrinkages(groups, spreads)).forEach((parts, k) => {
        const { weight } = groups[k]!;
        const distance = truths[k]! - (mean - weight * truths[k]!) / (weights - weight);
        if (mixtureQuantile(parts, 0.1) <= distance && distance <= mixtureQuantile(parts, 0.9)) inside++;
        const chance = mixtureAbove(parts, 0.1);
        if (chance < 0.9) return;
        sure += chance;
        if (distance >= 0.1) right++;
      });
    }
    // three standard errors of 2,400 distances, which hang together by sixes
    expect(Math.abs(inside / 2400 - 0.8)).toBeLessThan(0.04);
    // and what is told as sure is so as often as was said, whatever it was picked for
    expect(right / sure).toBeGreaterThan(0.95);
    expect(sure).toBeGreaterThan(100);
  });

  it("is nothing where groups do not differ at all, and grows with what a group shows", () => {
    const seen = fc.record({ estimate: fc.double({ min: -1, max: 1, noNaN: true }), variance: fc.constant(0.02) });
    fc.assert(
      fc.property(fc.array(seen, { minLength: 2, maxLength: 9 }), (list) => {
        const groups = list.map(({ estimate, variance }) => group(estimate, variance));
        for (const [part] of distancesFromOthers(groups, shrinkages(groups, [0]))) expect(part!.mean).toBeCloseTo(0, 9);
        const more = groups.map((one, k) => (k === 0 ? group(one.estimate + 0.3, one.variance) : one));
        const of = (all: SeenGroup[]) => distancesFromOthers(all, shrinkages(all, [0.2]))[0]![0]!.mean;
        expect(of(more)).toBeGreaterThan(of(groups));
      }),
      { seed: 9, numRuns: 100 },
    );
  });
});

describe("mixtures of normals", () => {
  // By hand: half at 0, half at 4, each of deviation 1: the middle is 2, and all but 0.0228 of the upper half is above 2.
  const parts = [
    { chance: 0.5, mean: 0, deviation: 1 },
    { chance: 0.5, mean: 4, deviation: 1 },
  ];
  it("tell the chance above a level and the level of a chance", () => {
    expect(mixtureQuantile(parts, 0.5)).toBeCloseTo(2, 8);
    expect(mixtureAbove(parts, 2)).toBeCloseTo(0.5, 12);
    expect(mixtureAbove(parts, 4)).toBeCloseTo(0.25 + 0.5 * 0.0000316712, 8);
  });
});
