import { describe, expect, it } from "vitest";
import { seededRandom } from "../../src/maths/random.ts";
import { supportPoints } from "../../src/maths/support-points.ts";

/** Energy distance between some of the points and all of them, by its definition (Székely and Rizzo 2013). */
function energy(points: readonly number[][], chosen: readonly number[]): number {
  const meanDistance = (some: readonly number[], others: readonly number[]) => {
    let sum = 0;
    for (const i of some) for (const j of others) sum += Math.hypot(...points[i]!.map((x, k) => x - points[j]![k]!));
    return sum / (some.length * others.length);
  };
  const all = points.map((_, i) => i);
  return 2 * meanDistance(chosen, all) - meanDistance(chosen, chosen) - meanDistance(all, all);
}

function cloud(count: number, dimensions: number, seed: number): number[][] {
  const random = seededRandom(seed);
  return Array.from({ length: count }, () => Array.from({ length: dimensions }, () => random.normal()));
}

/** All ways to choose some of n. */
function* choices(n: number, count: number, from = 0): Generator<number[]> {
  if (count === 0) yield [];
  else for (let i = from; i <= n - count; i++) for (const rest of choices(n, count - 1, i + 1)) yield [i, ...rest];
}

describe("supportPoints", () => {
  it("are the middles of equal parts where points lie evenly on a line", () => {
    // In one dimension the energy distance is twice the integral of the squared difference of the distribution
    // functions, which is least at the middles (2i - 1) / 2n (Mak and Joseph 2018, section 2; derived by hand).
    const line = Array.from({ length: 45 }, (_, i) => [i]);

    expect(supportPoints(line, 5)).toEqual([4, 13, 22, 31, 40]);
    expect(supportPoints(line, 9)).toEqual([2, 7, 12, 17, 22, 27, 32, 37, 42]);
  });

  it("are one point: that of least mean distance, the middle one on a line", () => {
    expect(supportPoints([[0], [1], [2], [10], [50]], 1)).toEqual([2]);
  });

  it.each([1, 2, 3, 4, 5, 6])("lie within a quarter of the best choice that there is (seed %i)", (seed) => {
    const points = cloud(12, 3, seed);
    const ours = energy(points, supportPoints(points, 4));
    const best = Math.min(...[...choices(12, 4)].map((chosen) => energy(points, chosen)));

    expect(ours).toBeGreaterThanOrEqual(best - 1e-12);
    expect(ours).toBeLessThanOrEqual(1.25 * best);
  });

  it("no exchange of one point brings nearer", () => {
    const points = cloud(40, 5, 7);
    const chosen = supportPoints(points, 6);
    const ours = energy(points, chosen);
    for (let at = 0; at < chosen.length; at++) {
      for (let other = 0; other < points.length; other++) {
        if (chosen.includes(other)) continue;
        const exchanged = chosen.map((point, i) => (i === at ? other : point));
        expect(energy(points, exchanged)).toBeGreaterThan(ours - 1e-8);
      }
    }
  });

  it("stand for a cloud better than the best of forty choices at random", () => {
    const points = cloud(200, 4, 11);
    const random = seededRandom(12);
    const atRandom = Array.from({ length: 40 }, () =>
      energy(
        points,
        Array.from({ length: 8 }, () => Math.floor(200 * random.uniform())),
      ),
    );

    expect(energy(points, supportPoints(points, 8))).toBeLessThan(Math.min(...atRandom));
  });

  it("are all points where no more are asked for, and rise", () => {
    expect(supportPoints([[3], [1]], 2)).toEqual([0, 1]);
    expect(supportPoints([[3], [1]], 5)).toEqual([0, 1]);
    const chosen = supportPoints(cloud(30, 2, 3), 7);
    expect(chosen).toEqual([...new Set(chosen)].sort((a, b) => a - b));
  });

  it("are as many where points are the same", () => {
    expect(
      new Set(
        supportPoints(
          Array.from({ length: 10 }, () => [1, 2]),
          4,
        ),
      ).size,
    ).toBe(4);
  });
});
