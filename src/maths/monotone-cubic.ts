/**
 * A smooth line through points that rises only where they rise and falls only where they fall: cubic between each two,
 * with the harmonic mean of the slopes on either side at each point, so that it overshoots none.
 *
 * @param xs  ascending, three or more
 * @param ys  as many
 * @param at  places, ascending, from the first of `xs` to the last
 * @returns the line's heights at those places
 * @see Fritsch, F. N., Butland, J. (1984), A method for constructing local monotone piecewise cubic interpolants, SIAM
 *   Journal on Scientific and Statistical Computing 5, 300-304
 */
export function monotoneCubic(xs: readonly number[], ys: readonly number[], at: readonly number[]): number[] {
  const steep = xs.slice(1).map((x, i) => (ys[i + 1]! - ys[i]!) / (x - xs[i]!));
  const slopes = steep.map((right, i) => {
    const left = steep[i - 1] ?? 0;
    return left * right > 0 ? (2 * left * right) / (left + right) : 0;
  });
  // at either end, that of the parabola that the next slope leaves
  slopes[0] = (3 * steep[0]! - slopes[1]!) / 2;
  slopes.push((3 * steep.at(-1)! - slopes.at(-1)!) / 2);
  let i = 0;
  return at.map((x) => {
    while (x > xs[i + 1]!) i++;
    const width = xs[i + 1]! - xs[i]!;
    const share = (x - xs[i]!) / width;
    const bend = 3 * steep[i]! - 2 * slopes[i]! - slopes[i + 1]!;
    const twist = slopes[i]! + slopes[i + 1]! - 2 * steep[i]!;
    return ys[i]! + width * share * (slopes[i]! + share * (bend + share * twist));
  });
}
