import { describe, expect, it } from "vitest";
import { hearMore, logLikelihoodOf } from "../../src/maths/evidence-path.ts";
import { effectiveShare, weightsFrom } from "../../src/maths/point-cloud.ts";

/** Parts that each draw the first coordinate towards a value, with a weight. */
const towards = (values: readonly number[], weight: number) => ({
  parts: values.length,
  logsOf: (x: Float64Array, from: number, to: number) =>
    values.slice(from, to).map((value) => -weight * (x[0]! - value) ** 2),
});
const cloudOf = (places: readonly number[]) => places.map((place) => ({ x: Float64Array.of(place), logLikelihood: 0 }));

describe("logLikelihoodOf", () => {
  // By hand: at x = 1 the parts 0, 2 and 5 say -1, -1 and -16.
  it("adds up parts, the last by its fraction", () => {
    const likelihood = towards([0, 2, 5], 1);
    const x = Float64Array.of(1);
    expect([0, 1, 2, 2.25, 3].map((heard) => logLikelihoodOf(likelihood, x, heard))).toEqual([0, -1, -2, -6, -18]);
  });
});

describe("hearMore", () => {
  it("hears all that says little at once, but no more than as many parts again", () => {
    const likelihood = towards(new Array(20).fill(0), 1e-6);
    const cloud = cloudOf([-1, 0, 1, 2]);
    expect(hearMore(cloud, 0, likelihood).heard).toBe(4);
    expect(hearMore(cloud, 4, likelihood).heard).toBe(12);
    expect(hearMore(cloud, 12, likelihood).heard).toBe(20);
  });

  it("hears part of a part that says much, and the rest later, so that enough points count", () => {
    const likelihood = towards([0], 50);
    const cloud = cloudOf([-1.5, -0.7, -0.2, 0.1, 0.4, 0.9, 1.3, 2]);
    let heard = 0;
    const total = cloud.map(() => 0);
    let times = 0;
    while (heard < 1) {
      const next = hearMore(cloud, heard, likelihood);
      expect(next.heard).toBeGreaterThan(heard);
      // at the limit but for the halvings' last digit
      expect(effectiveShare(weightsFrom(next.gains))).toBeGreaterThan(0.4999);
      next.gains.forEach((gain, i) => {
        total[i] = total[i]! + gain;
      });
      heard = next.heard;
      times++;
    }
    expect(times).toBeGreaterThan(2);
    // what was gained by and by is the whole
    cloud.forEach(({ x }, i) => {
      expect(total[i]).toBeCloseTo(-50 * x[0]! ** 2, 9);
    });
  });

  it("stops before a part that says more than the points can stand, where some was heard in full", () => {
    const likelihood = {
      parts: 2,
      logsOf: (x: Float64Array, from: number, to: number) => [0, -1e5 * x[0]! ** 2].slice(from, to),
    };
    const next = hearMore(cloudOf([-1, 0.3, 0.6, 1]), 0, likelihood);
    expect(next.heard).toBe(1);
    expect([...next.gains]).toEqual([0, 0, 0, 0]);
  });
});
