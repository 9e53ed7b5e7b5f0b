import { describe, expect, it } from "vitest";
import { borrowedPrior, type ItemPrior, usualPrior, withStatedLife } from "../../src/fade/item-prior.ts";
import { PRIORS } from "../../src/fade/priors.ts";
import { normalCdf, normalDensity } from "../../src/maths/normal.ts";

const LIFE = PRIORS.findIndex(({ name }) => name === "medianLifeYears");

/** Many draws of one coordinate with a given mean and variance, the others as under the usual prior. */
function draws(mean: number, variance: number): Float64Array[] {
  // a two-point distribution has any mean and variance wanted
  return Array.from({ length: 100 }, (_, i) => {
    const sign = i % 2 === 0 ? 1 : -1;
    return Float64Array.from(PRIORS, (_prior, d) => (d === LIFE ? mean + sign * Math.sqrt(variance) : sign));
  });
}

/** Median life in years by a prior's mean. */
const yearsOf = ({ mean }: ItemPrior) => Math.exp(PRIORS[LIFE]!.mean + PRIORS[LIFE]!.spread * mean[LIFE]!);

describe("withStatedLife", () => {
  // By hand: usual life 5 years, stated 8; both believed alike, so the mean lies half way in log life.
  it("goes half way to a stated life, and is a little surer", () => {
    const heeding = withStatedLife(usualPrior(), { years: 8, yearsAtMost: null });
    expect(yearsOf(heeding)).toBeCloseTo(Math.sqrt(5 * 8), 9);
    expect(heeding.deviation[LIFE]).toBeCloseTo(Math.SQRT1_2, 12);
    expect(withStatedLife(usualPrior(), { years: null, yearsAtMost: null })).toEqual(usualPrior());
  });

  // By hand: 500 cycles at 5 a year take 100 years, in which age has long ended the pack
  it("expects no long life of a cycle life that is used up slowly", () => {
    const heeding = withStatedLife(usualPrior(), { years: null, yearsAtMost: 100 });
    expect(yearsOf(heeding)).toBeCloseTo(5, 2);
    expect(heeding.deviation[LIFE]).toBeCloseTo(1, 2);
  });

  // By hand, in small steps: prior times the chance that a bound, unsure by one deviation, lies above
  it.each([0.5, 2, 5, 12])("weighs lives by the chance that they end before %d years of cycling do", (years) => {
    const { mean: usual, spread } = PRIORS[LIFE]!;
    const bound = (Math.log(years) - usual) / spread;
    let [total, sum, squares] = [0, 0, 0];
    for (let x = -9; x <= 9; x += 0.002) {
      const weight = normalDensity(x) * normalCdf(bound - x);
      total += weight;
      sum += weight * x;
      squares += weight * x * x;
    }
    const { mean, deviation } = withStatedLife(usualPrior(), { years: null, yearsAtMost: years });
    expect(mean[LIFE]).toBeCloseTo(sum / total, 6);
    expect(deviation[LIFE]).toBeCloseTo(Math.sqrt(squares / total - (sum / total) ** 2), 6);
  });
});

const lent = (mean: number, variance: number, under = usualPrior()) => ({ under, coordinates: draws(mean, variance) });

describe("borrowedPrior", () => {
  it("is the usual prior where the other items say nothing", () => {
    const { mean, deviation } = borrowedPrior([]);
    expect([...mean].every((value) => value === 0)).toBe(true);
    expect([...deviation].every((value) => Math.abs(value - 1) < 1e-12)).toBe(true);
  });

  // By hand: another item whose readings say x = 2 beyond doubt tells g with variance 1/2; with g's own prior
  // variance 1/2 that gives mean 1 and variance 1/4, and the new item's own half on top.
  it("takes half of what a well known item says", () => {
    const { mean, deviation } = borrowedPrior([lent(2, 1e-6)]);
    expect(mean[LIFE]).toBeCloseTo(1, 4);
    expect(deviation[LIFE]).toBeCloseTo(Math.sqrt(0.75), 4);
    expect(deviation[0]).toBeGreaterThan(0.98);
  });

  it("is surer with more items, but never surer than items differ", () => {
    const one = borrowedPrior([lent(1, 0.01)]).deviation[LIFE]!;
    const many = borrowedPrior(Array.from({ length: 20 }, () => lent(1, 0.01))).deviation[LIFE]!;
    expect(many).toBeLessThan(one);
    expect(many).toBeGreaterThan(Math.sqrt(0.5));
  });

  // By hand: draws that are as the prior with the stated life has them have heard nothing besides.
  it("lends no life that the catalogue states for the other item", () => {
    const under = withStatedLife(usualPrior(), { years: 12, yearsAtMost: null });
    const { mean, deviation } = borrowedPrior([lent(under.mean[LIFE]!, under.deviation[LIFE]! ** 2, under)]);
    expect(mean[LIFE]).toBeCloseTo(0, 9);
    expect(deviation[LIFE]).toBeGreaterThan(0.99);
  });

  // By hand: a stated life at m with variance 1/2, and readings of variance 1/2 about 2, give a posterior half way
  // between and of variance 1/4. The readings tell g with variance 1/2 + 1/2, so that g's mean is 2 (1 / (1 + 2)).
  it("lends what the other item's readings say, whatever was stated", () => {
    const under = withStatedLife(usualPrior(), { years: 12, yearsAtMost: null });
    const { mean, deviation } = borrowedPrior([lent((under.mean[LIFE]! + 2) / 2, 1 / 4, under)]);
    expect(mean[LIFE]).toBeCloseTo(2 / 3, 9);
    expect(deviation[LIFE]).toBeCloseTo(Math.sqrt(1 / 3 + 1 / 2), 9);
  });
});
