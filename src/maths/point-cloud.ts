/** A point of a search, with its log likelihood as far as it counts by now. */
export interface Point {
  x: Float64Array;
  logLikelihood: number;
}

/** As many points again, each as often as its weight says, to within one (systematic resampling). */
export function resampled(cloud: readonly Point[], weights: Float64Array): Point[] {
  const chosen: Point[] = [];
  let sum = 0;
  for (let i = 0; i < cloud.length; i++) {
    sum += weights[i]! * cloud.length;
    while (chosen.length + 0.5 < sum && chosen.length < cloud.length) chosen.push({ ...cloud[i]! });
  }
  while (chosen.length < cloud.length) chosen.push({ ...cloud.at(-1)! });
  return chosen;
}

/** Weights from their logarithms: they add up to 1. */
export function weightsFrom(logs: Float64Array): Float64Array {
  let largest = -Infinity;
  for (const log of logs) largest = Math.max(largest, log);
  const weights = logs.map((log) => Math.exp(log - largest));
  let total = 0;
  for (const weight of weights) total += weight;
  return weights.map((weight) => weight / total);
}

/** Share of the points that still count under these weights, 0 to 1. */
export function effectiveShare(weights: Float64Array): number {
  let squares = 0;
  for (const weight of weights) squares += weight * weight;
  return 1 / squares / weights.length;
}
