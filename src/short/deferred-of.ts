import { sortBy } from "../maths/sort-by.ts";
import type { DeferrableLine } from "./deferrable-line.ts";

/** Lines of which something is put off, the least harmful per unit of money first. */
export function deferredOf(within: readonly DeferrableLine[]): DeferrableLine[] {
  const deferred = within.filter((one) => one.deferredUnits > 0);
  return sortBy(deferred, (one) => [perUnit(one.harm, one.saved), -one.saved, one.line.id]);
}

/** Harm for each minor unit: what spares nothing is put off last. */
export const perUnit = (harm: number, saved: number) => (saved > 0 ? harm / saved : Infinity);
