/** Longer lists are sorted by the engine, which is slower to start and faster to end. */
const SHORT = 24;

/** Places of some numbers, the smallest number first; of equal numbers the one that comes first. */
export function orderOf(numbers: readonly number[]): number[] {
  const order = Array.from(numbers.keys());
  if (order.length > SHORT) return order.sort((a, b) => numbers[a]! - numbers[b]! || a - b);
  for (let next = 1; next < order.length; next++) {
    const number = numbers[next]!;
    let at = next;
    for (; at > 0 && numbers[order[at - 1]!]! > number; at--) order[at] = order[at - 1]!;
    order[at] = next;
  }
  return order;
}
