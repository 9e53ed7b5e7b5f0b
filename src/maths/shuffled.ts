import type { Random } from "./random.ts";

/** The numbers 0 to count - 1 in random order. */
export function shuffled(count: number, random: Random): Uint32Array {
  const order = Uint32Array.from({ length: count }, (_, i) => i);
  for (let i = count - 1; i > 0; i--) {
    const j = Math.floor(random.uniform() * (i + 1));
    const kept = order[i]!;
    order[i] = order[j]!;
    order[j] = kept;
  }
  return order;
}
