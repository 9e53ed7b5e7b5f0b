/** First index, from `at` on, whose value in an ascending stretch lies above a limit; `length` where none does. */
export function firstAbove(ascending: Float64Array, at: number, length: number, limit: number): number {
  let low = 0;
  let high = length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (ascending[at + middle]! > limit) high = middle;
    else low = middle + 1;
  }
  return low;
}
