/** Two lists that are in order as one; of equals those of the first list come first. */
export function merged<Value>(
  a: readonly Value[],
  b: readonly Value[],
  compare: (a: Value, b: Value) => number,
): Value[] {
  const together: Value[] = [];
  let next = 0;
  for (const value of a) {
    while (next < b.length && compare(b[next]!, value) < 0) together.push(b[next++]!);
    together.push(value);
  }
  while (next < b.length) together.push(b[next++]!);
  return together;
}
