import { normalQuantile } from "../maths/normal.ts";

/*
 * Points that stand in for a normal spread, dealt one a node: each node takes its own, so that the sum over a pack's
 * nodes and curves is smooth though each takes few. Two spreads at once need points that fill the plane evenly.
 */

/** Points dealt in turn. A prime, so that their order goes with no other count. */
export const POINTS = 251;

/** Standard normal points, in the order of Halton's sequence to one base. */
function haltonNormals(base: number): Float64Array {
  return Float64Array.from({ length: POINTS }, (_, i) => {
    let share = 1 / base;
    let place = 0;
    for (let rest = i + 1; rest > 0; rest = Math.floor(rest / base)) {
      place += share * (rest % base);
      share /= base;
    }
    return normalQuantile(place);
  });
}

/** Mean 0 and variance 1, exactly. */
function standardised(points: Float64Array): Float64Array {
  const mean = points.reduce((a, b) => a + b, 0) / POINTS;
  const variance = points.reduce((sum, point) => sum + (point - mean) ** 2, 0) / POINTS;
  return points.map((point) => (point - mean) / Math.sqrt(variance));
}

/** Two standard normal coordinates a point. @see Halton, J. H. (1960), Numerische Mathematik 2, 84-90 */
export const FIRST = standardised(haltonNormals(2));
export const SECOND = standardised(haltonNormals(3));

/** No coordinate of a point is greater. */
export const FARTHEST = [...FIRST, ...SECOND].reduce((a, b) => Math.max(a, b), 0);
