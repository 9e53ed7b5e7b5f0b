/** Sums of the values so far, begun anew in each row. */
export function runningSums(values: Float64Array, rowLength: number): Float64Array {
  const sums = new Float64Array(values.length);
  let sum = 0;
  for (let i = 0; i < values.length; i++) {
    sum = i % rowLength === 0 ? values[i]! : sum + values[i]!;
    sums[i] = sum;
  }
  return sums;
}
