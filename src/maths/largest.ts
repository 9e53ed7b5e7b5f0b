/** Indices of the largest values, descending; of equals the first. Minus infinity does not count. */
export function largest(values: Float64Array, most: number): number[] {
  const found: number[] = [];
  for (let index = 0; index < values.length; index++) {
    const value = values[index]!;
    if (value === Number.NEGATIVE_INFINITY) continue;
    if (found.length === most && value <= values[found[most - 1]!]!) continue;
    let at = found.length < most ? found.length : most - 1;
    for (; at > 0 && values[found[at - 1]!]! < value; at--) found[at] = found[at - 1]!;
    found[at] = index;
  }
  return found;
}
