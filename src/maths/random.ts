import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { normalQuantile } from "./normal.ts";

/** A seeded source of numbers, the same on every machine. */
export interface Random {
  /** Uniform in (0, 1). */
  uniform(): number;
  /** Standard normal. */
  normal(): number;
}

/** Numbers thrown away at the start. */
const WARM_UP = 64;

/** A seeded source: equal seeds give equal numbers. */
export function seededRandom(seed: number): Random {
  const generator = xoroshiro128plus(seed);
  // a small seed leaves most of the state's bits alike, and the first numbers extreme
  for (let i = 0; i < WARM_UP; i++) generator.next();
  // the upper 31 bits at half steps: never 0 or 1, so that quantiles stay finite
  const uniform = () => ((generator.next() >>> 1) + 0.5) / 2 ** 31;
  return { uniform, normal: () => normalQuantile(uniform()) };
}
