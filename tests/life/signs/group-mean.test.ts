import { describe, expect, it } from "vitest";
import { SHIFTS } from "../../../src/fade/pack-paces.ts";
import { groupMean } from "../../../src/life/signs/group-mean.ts";

describe("groupMean", () => {
  // By hand: a normal likelihood is its own mean and variance, whatever was believed of the mean beforehand. Steps of
  // 0.03 add a twelfth of their square, 0.000075, to the variance.
  it.each([
    [0.3, 0.2],
    [-0.5, 0.1],
    [0, 0.05],
  ])("is what readings alone say: a mean of %d, unsure by %d", (mean, deviation) => {
    const logs = SHIFTS.map((shift) => -0.5 * ((shift - mean) / deviation) ** 2);
    const seen = groupMean(logs, 7);
    expect(seen.estimate).toBeCloseTo(mean, 2);
    expect(Math.sqrt(seen.variance)).toBeCloseTo(deviation, 2);
    expect(seen.weight).toBe(7);
  });

  it("is next to nothing where readings say nothing", () => {
    const { estimate, variance } = groupMean(new Float64Array(SHIFTS.length), 4);
    expect(estimate).toBeCloseTo(0, 9);
    expect(variance).toBeGreaterThan(1);
  });
});
