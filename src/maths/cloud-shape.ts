import type { Point } from "./point-cloud.ts";

/** Where a cloud of points lies and how it spreads: mean, and the lower triangle L with covariance L L'. */
export interface CloudShape {
  mean: Float64Array;
  triangle: Float64Array[];
}

/** Variance added in every direction, so that points which agree in one still have a shape. */
const LEAST_VARIANCE = 1e-4;

/** The shape of a cloud; covariances are drawn towards 0 where the points are few. */
export function shapeOf(cloud: readonly Point[]): CloudShape {
  const n = cloud.length;
  const dimensions = cloud[0]!.x.length;
  const mean = new Float64Array(dimensions);
  for (const { x } of cloud) for (let i = 0; i < dimensions; i++) mean[i] = mean[i]! + x[i]! / n;
  const covariance = mean.map(() => 0);
  const triangle = Array.from(covariance, (_, i) => new Float64Array(i + 1));
  for (const { x } of cloud) {
    triangle.forEach((row, i) => {
      const off = (x[i]! - mean[i]!) / n;
      for (let j = 0; j <= i; j++) row[j] = row[j]! + off * (x[j]! - mean[j]!);
    });
  }
  const kept = n / (n + dimensions);
  triangle.forEach((row, i) => {
    for (let j = 0; j < i; j++) row[j] = row[j]! * kept;
    row[i] = row[i]! + LEAST_VARIANCE;
  });
  return { mean, triangle: cholesky(triangle) };
}

/** The lower triangle whose product with its transpose is a positive definite matrix, in place. */
function cholesky(rows: Float64Array[]): Float64Array[] {
  rows.forEach((row, i) => {
    for (let j = 0; j <= i; j++) {
      let rest = row[j]!;
      for (let k = 0; k < j; k++) rest -= row[k]! * rows[j]![k]!;
      row[j] = j < i ? rest / rows[j]![j]! : Math.sqrt(rest);
    }
  });
  return rows;
}

/** Squared distance of a place from the cloud's mean, in units of its spread. */
export function squaredDistance({ mean, triangle }: CloudShape, x: Float64Array): number {
  const solved = new Float64Array(x.length);
  let sum = 0;
  for (let i = 0; i < x.length; i++) {
    const row = triangle[i]!;
    let rest = x[i]! - mean[i]!;
    for (let k = 0; k < i; k++) rest -= row[k]! * solved[k]!;
    solved[i] = rest / row[i]!;
    sum += solved[i]! * solved[i]!;
  }
  return sum;
}
