import { describe, expect, it } from "vitest";
import { shapeOf } from "../../src/maths/cloud-shape.ts";
import { moveByDifferences } from "../../src/maths/difference-moves.ts";
import { posteriorDraws } from "../../src/maths/posterior-draws.ts";
import { seededRandom } from "../../src/maths/random.ts";
import { moveByShape } from "../../src/maths/shape-moves.ts";

/** Readings of sums and differences, in several dimensions: prior N(0, 1) each, reading of x0 + x1 and of x1 - x2. */
const READINGS: readonly { of: readonly number[]; value: number; precision: number }[] = [
  { of: [1, 1, 0], value: 2, precision: 4 },
  { of: [0, 1, -1], value: -1, precision: 9 },
];
const logOf = (x: Float64Array, { of, value, precision }: (typeof READINGS)[number]) =>
  -0.5 * precision * (of.reduce((sum, factor, d) => sum + factor * x[d]!, 0) - value) ** 2;
const logLikelihood = (x: Float64Array) => READINGS.reduce((sum, reading) => sum + logOf(x, reading), 0);

/**
 * By hand: posterior precision is I + 4 aa' + 9 bb' = ((5, 4, 0), (4, 14, -9), (0, -9, 10)), of determinant
 * 5·(140 - 81) - 4·40 = 135; the mean solves it for 4·2 a - 9 b = (8, -1, 9).
 * Cofactors: (59, -40, -36; -40, 50, 45; -36, 45, 54) / 135.
 */
const MEAN = [(59 * 8 + 40 - 36 * 9) / 135, (-40 * 8 - 50 + 45 * 9) / 135, (-36 * 8 - 45 + 54 * 9) / 135];
const VARIANCE = [59 / 135, 50 / 135, 54 / 135];

function expectPosterior(draws: readonly Float64Array[]) {
  for (const d of [0, 1, 2]) {
    const mean = draws.reduce((sum, x) => sum + x[d]!, 0) / draws.length;
    const variance = draws.reduce((sum, x) => sum + (x[d]! - mean) ** 2, 0) / draws.length;
    expect(Math.abs(mean - MEAN[d]!)).toBeLessThan(0.06);
    expect(variance / VARIANCE[d]!).toBeGreaterThan(0.88);
    expect(variance / VARIANCE[d]!).toBeLessThan(1.13);
  }
}

const START = () => {
  const random = seededRandom(8);
  return Array.from({ length: 400 }, () => {
    const x = Float64Array.from({ length: 3 }, () => random.normal());
    return { x, logLikelihood: logLikelihood(x) };
  });
};

describe("moves that keep a target", () => {
  // A shape that is not the target's: what is accepted must make up for it.
  for (const renewal of [1, 0.6]) {
    it(`reach a normal posterior from the prior, by a fixed shape and a renewal of ${renewal}`, () => {
      const cloud = START();
      const shape = shapeOf(START());
      const random = seededRandom(21);
      const kept: Float64Array[] = [];
      for (let step = 0; step < 400; step++) {
        const accepted = moveByShape(cloud, shape, renewal, logLikelihood, random);
        expect(accepted).toBeGreaterThan(0);
        if (step >= 30) for (const { x } of cloud) kept.push(x);
      }
      expectPosterior(kept);
    });
  }

  it("reach it along differences", () => {
    const cloud = START();
    const random = seededRandom(22);
    const kept: Float64Array[] = [];
    for (let step = 0; step < 120; step++) {
      moveByDifferences(cloud, 0.9, logLikelihood, random);
      if (step >= 60) for (const { x } of cloud) kept.push(x);
    }
    expectPosterior(kept);
  });

  it("reach it where its parts are heard one after another", () => {
    const logsOf = (x: Float64Array, from: number, to: number) =>
      READINGS.slice(from, to).map((reading) => logOf(x, reading));
    const settings = { points: 600, stepsPerHearing: 2, lastSteps: 30, keptSteps: 25, seed: 4 };
    expectPosterior(posteriorDraws(3, { parts: READINGS.length, logsOf }, settings));
  });
});
