/** At most `count` of a list, evenly spread over it; all of it where there are no more. */
export function evenlySpread<T>(list: readonly T[], count: number): T[] {
  if (list.length <= count) return [...list];
  return Array.from({ length: count }, (_, i) => list[Math.floor(((i + 0.5) * list.length) / count)]!);
}
