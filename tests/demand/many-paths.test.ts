import { describe, expect, it } from "vitest";
import { addManyPath, FirstNeeds } from "../../src/demand/many-paths.ts";
import { seededRandom } from "../../src/maths/random.ts";

const SLOTS = 50;
/** Chances of one slot, due by the end of each of three months. */
const DUE = [0.3, 0.5, 0.6];
const group = { end: 3, due: Float64Array.from(DUE, (chance) => SLOTS * chance) };
const first = new FirstNeeds(3);
for (let slot = 0; slot < SLOTS; slot++) first.add(Float64Array.from(DUE));

describe("FirstNeeds", () => {
  // By hand: of 50 slots that are due in a month with chance 0.3, and in the next with 0.2, 18 came in the first instead of
  // 15: of the 32 left each is due with chance 0.2 / 0.7
  it("leaves fewer needs where more than expected came before", () => {
    const { mean, variance } = first.given(3, 15, 10, 1);
    expect(mean).toBeCloseTo((32 * 0.2) / 0.7, 9);
    // the variance is that of the 35 slots left in the mean
    expect(variance).toBeCloseTo(35 * (2 / 7) * (5 / 7), 9);
  });

  it("has needs of the first month spread as those of as many slots", () => {
    const { mean, variance } = first.given(0, 0, 15, 0);
    expect(mean).toBeCloseTo(15, 9);
    expect(variance).toBeCloseTo(50 * 0.3 * 0.7, 9);
  });
});

const FUTURES = 4000;

/** Mean needs by month over many futures, and the variance of their sum. */
function played(life: { due: number[]; steps: number[]; shortest: number }) {
  const random = seededRandom(3);
  const ofLife = { due: Float64Array.from(life.due), steps: Float64Array.from(life.steps), shortest: life.shortest };
  const paths = Array.from({ length: FUTURES }, () => {
    const into = new Int32Array(3);
    addManyPath({ group, at: 0, first, life: ofLife }, () => random.uniform(), into);
    return into;
  });
  const mean = [0, 1, 2].map((month) => paths.reduce((sum, path) => sum + path[month]!, 0) / FUTURES);
  const sums = paths.map((path) => path.reduce((sum, units) => sum + units, 0));
  const all = sums.reduce((sum, units) => sum + units, 0) / FUTURES;
  return { mean, variance: sums.reduce((sum, units) => sum + (units - all) ** 2, 0) / FUTURES };
}

describe("addManyPath", () => {
  // By hand: 50 slots need 15, 10 and 5 units in the mean; the sum of three months is binomial of 50 and 0.6, variance 12.
  // The sampling error of a mean of 4000 is 0.05, that of a variance 0.27
  it("plays first needs of slots that need one unit each at the most", () => {
    const { mean, variance } = played({ due: [0, 0, 0], steps: [0, 0, 0], shortest: 3 });
    [15, 10, 5].forEach((units, month) => {
      expect(Math.abs(mean[month]! - units)).toBeLessThan(0.2);
    });
    expect(Math.abs(variance - 12)).toBeLessThan(1);
  });

  // By hand: each new pack is due the month after: 15, 15 + 10, and 25 + 5 units
  it("has what came need a unit again", () => {
    const { mean } = played({ due: [0, 1, 1], steps: [0, 1, 0], shortest: 1 });
    [15, 25, 30].forEach((units, month) => {
      expect(Math.abs(mean[month]! - units)).toBeLessThan(0.4);
    });
  });
});
