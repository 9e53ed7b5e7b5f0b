import { describe, expect, it } from "vitest";
import { shapeOf, squaredDistance } from "../../src/maths/cloud-shape.ts";
import { seededRandom } from "../../src/maths/random.ts";

const cloudOf = (places: readonly (readonly number[])[]) =>
  places.map((place) => ({ x: Float64Array.from(place), logLikelihood: 0 }));

describe("shapeOf", () => {
  // By hand: the corners (0, 0), (4, 0), (0, 2), (4, 2) have mean (2, 1), variances 4 and 1, and no covariance; 1e-4
  // is added to each variance.
  it("has the mean and spread of a rectangle's corners", () => {
    const { mean, triangle } = shapeOf(
      cloudOf([
        [0, 0],
        [4, 0],
        [0, 2],
        [4, 2],
      ]),
    );
    expect([...mean]).toEqual([2, 1]);
    expect(triangle[0]![0]!).toBeCloseTo(Math.sqrt(4.0001), 12);
    expect(triangle[1]![0]!).toBeCloseTo(0, 12);
    expect(triangle[1]![1]!).toBeCloseTo(Math.sqrt(1.0001), 12);
  });

  // By hand: points (-1, -1) and (1, 1) have covariance 1, of which n / (n + dimensions) = 1/2 is kept: the lower
  // triangle of ((1, 1/2), (1/2, 1)) is 1; 1/2, sqrt(3)/2.
  it("draws covariances towards 0 where points are few", () => {
    const { triangle } = shapeOf(
      cloudOf([
        [-1, -1],
        [1, 1],
      ]),
    );
    expect(triangle[0]![0]!).toBeCloseTo(1, 3);
    expect(triangle[1]![0]!).toBeCloseTo(0.5, 3);
    expect(triangle[1]![1]!).toBeCloseTo(Math.sqrt(3) / 2, 3);
  });

  it("stands where all points are one", () => {
    const shape = shapeOf(
      cloudOf([
        [3, 5],
        [3, 5],
      ]),
    );
    expect(squaredDistance(shape, Float64Array.of(3, 5))).toBe(0);
    expect(Number.isFinite(squaredDistance(shape, Float64Array.of(4, 5)))).toBe(true);
  });
});

describe("squaredDistance", () => {
  // By hand: with mean 0 and covariance ((4, 2), (2, 5)), whose inverse is ((5, -2), (-2, 4)) / 16, the point (2, 3)
  // lies at (5·4 - 2·2·6 + 4·9) / 16 = 2.
  it("is what the inverse covariance says", () => {
    const shape = { mean: new Float64Array(2), triangle: [Float64Array.of(2), Float64Array.of(1, 2)] };
    expect(squaredDistance(shape, Float64Array.of(2, 3))).toBeCloseTo(2, 12);
  });

  // A property of any covariance: mean squared distances of a cloud's points add up to the number of dimensions.
  it("is, on average over a large cloud, the number of dimensions", () => {
    const random = seededRandom(3);
    const cloud = cloudOf(
      Array.from({ length: 4000 }, () => {
        const [a, b, c] = [random.normal(), random.normal(), random.normal()];
        return [a, 2 * a + b, 3 * c - b];
      }),
    );
    const shape = shapeOf(cloud);
    const mean = cloud.reduce((sum, { x }) => sum + squaredDistance(shape, x), 0) / cloud.length;
    expect(mean).toBeCloseTo(3, 1);
  });
});
