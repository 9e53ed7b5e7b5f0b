/** What is known of a hazard: so many failures in so much exposure, and what was believed of its logarithm. */
interface HazardKnown {
  failures: number;
  exposure: number;
  mean: number;
  spread: number;
  /** The likeliest logarithm, all taken together. */
  likeliest: number;
}

/** Points over which the logarithm is summed. */
const POINTS = 1600;
/** Spreads before anything was seen that they reach to either side: what was seen only narrows the posterior. */
const REACH = 8;

/**
 * The posterior of a hazard whose logarithm is normal before failures are seen: its mean, and the means of equally
 * likely slices as factors on it, rising, of mean 1.
 */
export function hazardSlices(known: HazardKnown, slices: number): { mean: number; paces: Float64Array } {
  const { failures, exposure, mean: centre, spread, likeliest } = known;
  const logs = Float64Array.from(
    { length: POINTS },
    (_, i) => likeliest + spread * REACH * ((2 * i) / (POINTS - 1) - 1),
  );
  const weights = logs.map((log) => failures * log - exposure * Math.exp(log) - 0.5 * ((log - centre) / spread) ** 2);
  const highest = weights.reduce((most, weight) => Math.max(most, weight), -Infinity);
  let total = 0;
  weights.forEach((weight, i) => {
    weights[i] = Math.exp(weight - highest);
    total += weights[i]!;
  });
  const sums = new Float64Array(slices);
  let slice = 0;
  let room = total / slices;
  logs.forEach((log, i) => {
    let weight = weights[i]!;
    // a point on the border of two slices counts for its part in either
    while (weight > room && slice < slices - 1) {
      sums[slice] = sums[slice]! + room * Math.exp(log);
      weight -= room;
      slice++;
      room = total / slices;
    }
    sums[slice] = sums[slice]! + weight * Math.exp(log);
    room -= weight;
  });
  const mean = sums.reduce((sum, part) => sum + part, 0) / total;
  return { mean, paces: sums.map((sum) => (sum * slices) / (total * mean)) };
}
