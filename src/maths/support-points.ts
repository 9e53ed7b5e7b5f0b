import { evenlySpread } from "./evenly-spread.ts";

/** Rounds of exchanges at the most; a few do. */
const ROUNDS = 50;
/** Gain below which an exchange is not worth making, as a share of the mean distance: rounding errors are none. */
const NOTHING = 1e-9;

/**
 * Chooses the few points of a set that stand for all of it best, each for as many as any other: those of least energy
 * distance from the whole, so that means and spreads agree in every direction. Exchanges one point after another until
 * none brings them nearer.
 *
 * Source: Mak and Joseph 2018, Support points, Annals of Statistics 46, 2562-2592; energy distance by Székely and Rizzo
 * 2013.
 *
 * @param points  of one length each
 * @param count   how many to choose
 * @returns indices of the points chosen, rising; all where there are no more than asked for
 */
export function supportPoints(points: readonly ArrayLike<number>[], count: number): number[] {
  const all = points.map((_, i) => i);
  if (points.length <= count) return all;
  const distances = distancesBetween(points);
  const fromAll = distances.map((row) => row.reduce((sum, one) => sum + one, 0) / points.length);
  const nothing = NOTHING * (fromAll.reduce((sum, one) => sum + one, 0) / points.length);
  const chosen = evenlySpread(all, count);
  // a point's part in the energy distance: how far it lies from all, less how far from the others chosen
  const partOf = (point: number, without: number) =>
    chosen.reduce(
      (part, other, at) => (at === without ? part : part - distances[point]![other]! / count),
      fromAll[point]!,
    );
  for (let round = 0, moved = true; moved && round < ROUNDS; round++) {
    moved = false;
    for (let at = 0; at < count; at++) {
      let least = partOf(chosen[at]!, at) - nothing;
      for (const point of all) {
        if (chosen.includes(point)) continue;
        const part = partOf(point, at);
        if (part >= least) continue;
        least = part;
        chosen[at] = point;
        moved = true;
      }
    }
  }
  return chosen.sort((a, b) => a - b);
}

function distancesBetween(points: readonly ArrayLike<number>[]): Float64Array[] {
  const rows = points.map(() => new Float64Array(points.length));
  points.forEach((one, i) => {
    for (let j = 0; j < i; j++) {
      const other = points[j]!;
      let square = 0;
      for (let k = 0; k < one.length; k++) {
        const off = one[k]! - other[k]!;
        square += off * off;
      }
      rows[i]![j] = Math.sqrt(square);
      rows[j]![i] = rows[i]![j]!;
    }
  });
  return rows;
}
