import type { PackEvidence } from "./evidence.ts";
import { fitCurves } from "./item-fit.ts";
import type { ItemPrior } from "./item-prior.ts";

/** A fit with what it was made from. */
interface KeptFit {
  /** Prior and evidence, number by number. */
  said: Float64Array;
  coordinates: Float64Array[];
  /** Trust in every reading, pack by pack, as the fit set it. */
  trust: Float64Array[];
}

/** Fits kept: some fleets' worth of items. */
const KEPT_AT_MOST = 48;

/** Newest last. */
const kept: KeptFit[] = [];

/**
 * `fitCurves`, which is slow, or what it gave for the same evidence and prior before: who corrects a row, scans a label
 * or drops a newer sheet plans again, and most items' readings are then the same.
 *
 * @param packs  as for `fitCurves`; the trust of their readings is set
 * @returns coordinates that are not to be changed
 */
export function keptFit(packs: readonly PackEvidence[], prior: ItemPrior): Float64Array[] {
  // a pack without evidence says nothing: whether it is there makes no other fit
  const speaking = packs.filter(({ years, bounds }) => years.length + bounds.length > 0);
  const said = numbersOf(speaking, prior);
  const at = kept.findIndex((one) => same(one.said, said));
  if (at >= 0) {
    const [found] = kept.splice(at, 1);
    kept.push(found!);
    speaking.forEach((pack, i) => void pack.trust.set(found!.trust[i]!));
    return found!.coordinates;
  }
  const coordinates = fitCurves(speaking, prior);
  kept.push({ said, coordinates, trust: speaking.map(({ trust }) => trust.slice()) });
  if (kept.length > KEPT_AT_MOST) kept.shift();
  return coordinates;
}

/** All that a fit hears, with the counts that tell packs and kinds of number apart. */
function numbersOf(packs: readonly PackEvidence[], prior: ItemPrior): Float64Array {
  const numbers: number[] = [...prior.mean, ...prior.deviation];
  for (const { years, useYears, capacity, trust, bounds } of packs) {
    numbers.push(years.length, bounds.length, ...years, ...useYears, ...capacity, ...trust);
    for (const bound of bounds) numbers.push(bound.years, bound.useYears, bound.threshold, bound.below ? 1 : 0);
  }
  return Float64Array.from(numbers);
}

const same = (a: Float64Array, b: Float64Array) =>
  a.length === b.length && a.every((value, i) => Object.is(value, b[i]));
