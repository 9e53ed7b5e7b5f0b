import { describe, expect, it } from "vitest";
import { monotoneCubic } from "../../src/maths/monotone-cubic.ts";
import { seededRandom } from "../../src/maths/random.ts";

const finely = (from: number, to: number) => Array.from({ length: 101 }, (_, i) => from + ((to - from) * i) / 100);

describe("monotoneCubic", () => {
  // By hand, from Fritsch and Butland's harmonic means: between (0, 0), (1, 1), (2, 4), (3, 9) the slopes are 1, 3 and 5, at
  // 1 the slope is 2 * 1 * 3 / 4 = 1.5 and at 2 it is 2 * 3 * 5 / 8 = 3.75. Half-way between two points one apart, a cubic
  // is their mean plus an eighth of the slopes' difference: 2.5 - 2.25 / 8. At the ends the slopes are
  // (3 * 1 - 1.5) / 2 = 0.75 and (3 * 5 - 3.75) / 2 = 5.625.
  it("has the harmonic mean of the slopes on either side", () => {
    const heights = monotoneCubic([0, 1, 2, 3], [0, 1, 4, 9], [0.5, 1, 1.5, 2.5]);
    expect(heights).toEqual([0.5 - 0.75 / 8, 1, 2.5 - 2.25 / 8, 6.5 - 1.875 / 8]);
  });

  // By hand: a peak is level, and so is a point beside a flat stretch.
  it("overshoots neither a peak nor a step", () => {
    const peak = monotoneCubic([0, 1, 2], [0, 1, 0], finely(0, 2));
    expect(Math.max(...peak)).toBe(1);
    const step = monotoneCubic([0, 1, 2, 3], [0, 0, 1, 1], finely(0, 3));
    expect(Math.min(...step)).toBe(0);
    expect(Math.max(...step)).toBe(1);
  });

  it("is straight along a line", () => {
    monotoneCubic([0, 1, 5, 7], [3, 1, -7, -11], finely(0, 7)).forEach((y, i) => {
      expect(y).toBeCloseTo(3 - 2 * 0.07 * i, 12);
    });
  });

  it("rises and falls only where its points do, wherever they lie", () => {
    const random = seededRandom(3);
    for (let round = 0; round < 200; round++) {
      const xs = [0];
      const ys = [random.normal()];
      for (let i = 0; i < 6; i++) {
        xs.push(xs.at(-1)! + 0.1 + random.uniform());
        ys.push(ys.at(-1)! - random.uniform() ** 4);
      }
      const line = monotoneCubic(xs, ys, finely(0, xs.at(-1)!));
      expect(line.every((y, i) => i === 0 || y <= line[i - 1]! + 1e-12)).toBe(true);
      monotoneCubic(xs, ys, xs).forEach((y, i) => {
        expect(y).toBeCloseTo(ys[i]!, 12);
      });
    }
  });
});
