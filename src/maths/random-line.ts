/** Weighted sums over the points of one line. */
export interface LineSums {
  points: number;
  weight: number;
  x: number;
  y: number;
  xx: number;
  xy: number;
  yy: number;
  logWeight: number;
}

/** Sums over points; a point of weight w has noise variance / w. */
export function lineSums(points: readonly { x: number; y: number; weight: number }[]): LineSums {
  const sums: LineSums = { points: points.length, weight: 0, x: 0, y: 0, xx: 0, xy: 0, yy: 0, logWeight: 0 };
  for (const { x, y, weight } of points) {
    sums.weight += weight;
    sums.x += weight * x;
    sums.y += weight * y;
    sums.xx += weight * x * x;
    sums.xy += weight * x * y;
    sums.yy += weight * y * y;
    sums.logWeight += Math.log(weight);
  }
  return sums;
}

/** A line whose start and slope are jointly normal. */
export interface RandomLine {
  start: number;
  slope: number;
  startVariance: number;
  slopeVariance: number;
  covariance: number;
}

/**
 * What points say of one line of a family: y = start + slope x + noise, start and slope jointly normal over the
 * family.
 *
 * @param family         both variances > 0
 * @param noiseVariance  of a point of weight 1, > 0
 * @param posterior      receives the line given its points
 * @returns log marginal likelihood of the points
 * @see Laird, N. M., Ware, J. H. (1982), Random-effects models for longitudinal data, Biometrics 38, 963-974
 */
export function fitRandomLine(
  sums: LineSums,
  family: RandomLine,
  noiseVariance: number,
  posterior: RandomLine,
): number {
  const { start, slope, startVariance, slopeVariance, covariance } = family;
  const familyDeterminant = startVariance * slopeVariance - covariance * covariance;
  const a = slopeVariance / familyDeterminant + sums.weight / noiseVariance;
  const b = -covariance / familyDeterminant + sums.x / noiseVariance;
  const c = startVariance / familyDeterminant + sums.xx / noiseVariance;
  const determinant = a * c - b * b;
  // residuals from the family's own line: figures near zero do not cancel
  const y = sums.y - start * sums.weight - slope * sums.x;
  const xy = sums.xy - start * sums.x - slope * sums.xx;
  const yy = sums.yy - start * (sums.y + y) - slope * (sums.xy + xy);
  const u = y / noiseVariance;
  const v = xy / noiseVariance;
  const startOff = (c * u - b * v) / determinant;
  const slopeOff = (a * v - b * u) / determinant;
  posterior.start = start + startOff;
  posterior.slope = slope + slopeOff;
  posterior.startVariance = c / determinant;
  posterior.slopeVariance = a / determinant;
  posterior.covariance = -b / determinant;
  const square = yy / noiseVariance - startOff * u - slopeOff * v;
  return (
    -0.5 * (sums.points * Math.log(2 * Math.PI * noiseVariance) - sums.logWeight) -
    0.5 * (Math.log(familyDeterminant * determinant) + square)
  );
}
