import { type PackEvidence, speaks } from "./evidence.ts";
import { fitCurves } from "./item-fit.ts";
import type { ItemPrior } from "./item-prior.ts";

/** What a fit hears. */
export interface FitTask {
  /** In an order that does not hang on the order of rows. */
  packs: readonly PackEvidence[];
  prior: ItemPrior;
}

/** What a fit gives: coordinates, not to be changed, and the trust in every reading, by pack that has evidence. */
export interface FitMade {
  coordinates: Float64Array[];
  trust: Float64Array[];
}

/** Fits kept, of some 30 KB each: well over twice a fleet's items, else each is dropped before it is asked for again. */
const KEPT_AT_MOST = 1000;

/** Newest last, each with all that it heard, number by number. */
const kept: { heard: Float64Array; made: FitMade }[] = [];

/**
 * An item's fit, which is slow, or what was made of the same evidence and prior before: who corrects a row, scans a
 * label or drops a newer sheet plans again, and most items' readings are then the same.
 *
 * @param task  the trust of its packs' readings is set
 * @returns coordinates that are not to be changed
 */
export function keptFit(task: FitTask): Float64Array[] {
  const heard = heardBy(task);
  const made = find(heard) ?? keep(heard, fitFor(task));
  speaking(task).forEach((pack, i) => void pack.trust.set(made.trust[i]!));
  return made.coordinates;
}

/** True where the fit need not be made. */
export function isKept(task: FitTask): boolean {
  return find(heardBy(task)) !== null;
}

/** Makes a fit and leaves the task as it is. */
export function fitFor(task: FitTask): FitMade {
  const packs = speaking(task).map((pack) => ({ ...pack, trust: pack.trust.slice() }));
  const coordinates = fitCurves(packs, task.prior);
  return { coordinates, trust: packs.map(({ trust }) => trust) };
}

/** Keeps a fit that was made elsewhere. */
export function keepFit(task: FitTask, made: FitMade): void {
  keep(heardBy(task), made);
}

function keep(heard: Float64Array, made: FitMade): FitMade {
  kept.push({ heard, made });
  if (kept.length > KEPT_AT_MOST) kept.shift();
  return made;
}

/** Packs with evidence: whether others are there makes no other fit. */
const speaking = ({ packs }: FitTask) => packs.filter(speaks);

/** Finds a fit and marks it as the newest. */
function find(heard: Float64Array): FitMade | null {
  const at = kept.findIndex((one) => same(one.heard, heard));
  if (at < 0) return null;
  const [found] = kept.splice(at, 1);
  kept.push(found!);
  return found!.made;
}

/** All that a fit hears, with the counts that tell packs and kinds of number apart. */
function heardBy(task: FitTask): Float64Array {
  const numbers: number[] = [...task.prior.mean, ...task.prior.deviation];
  for (const { years, useYears, capacity, trust, bounds } of speaking(task)) {
    numbers.push(years.length, bounds.length, ...years, ...useYears, ...capacity, ...trust);
    for (const bound of bounds) numbers.push(bound.years, bound.useYears, bound.threshold, bound.below ? 1 : 0);
  }
  return Float64Array.from(numbers);
}

const same = (a: Float64Array, b: Float64Array) =>
  a.length === b.length && a.every((value, i) => Object.is(value, b[i]));
