import { normalCdf } from "./normal.ts";

/** A mixture of normals: parts whose chances add up to 1. */
export interface NormalPart {
  chance: number;
  mean: number;
  deviation: number;
}

/** Chance of lying above a level. */
export function mixtureAbove(parts: readonly NormalPart[], level: number): number {
  return parts.reduce((sum, { chance, mean, deviation }) => sum + chance * normalCdf((mean - level) / deviation), 0);
}

/** Deviations beyond which no part has mass worth counting. */
const FAR = 8;
/** Halvings: enough for 1e-9 of the parts' span. */
const HALVINGS = 40;

/**
 * The level below which a share of the mixture lies.
 *
 * @param share  between 0 and 1
 */
export function mixtureQuantile(parts: readonly NormalPart[], share: number): number {
  let low = Math.min(...parts.map(({ mean, deviation }) => mean - FAR * deviation));
  let high = Math.max(...parts.map(({ mean, deviation }) => mean + FAR * deviation));
  for (let i = 0; i < HALVINGS; i++) {
    const middle = 0.5 * (low + high);
    if (1 - mixtureAbove(parts, middle) < share) low = middle;
    else high = middle;
  }
  return 0.5 * (low + high);
}
