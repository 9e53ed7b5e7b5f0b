import type { KnownNeed } from "../../src/supplies/chance-served.ts";

/** A need that is certain on each of some days. */
export function onDays(days: readonly number[]): KnownNeed[] {
  return days.map((day) => [day, 1]);
}
