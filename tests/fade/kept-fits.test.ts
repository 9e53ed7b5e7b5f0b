import { expect, it } from "vitest";
import { type PackEvidence, packEvidence } from "../../src/fade/evidence.ts";
import { fitCurves } from "../../src/fade/item-fit.ts";
import { usualPrior } from "../../src/fade/item-prior.ts";
import { keptFit } from "../../src/fade/kept-fits.ts";

/** Two packs, the second with a third reading far off its others. */
function evidence(thirdReading = 0.5): PackEvidence[] {
  const readings = (capacities: number[]) =>
    capacities.map((capacity, i) => ({ years: i + 0.5, useYears: i + 0.5, capacity }));
  return [
    packEvidence(readings([1, 0.97, 0.94]), [{ years: 5, useYears: 5, threshold: 0.8, below: true }]),
    packEvidence(readings([1, 0.97, thirdReading, 0.91, 0.88]), []),
  ];
}

const trusts = (packs: readonly PackEvidence[]) => packs.map(({ trust }) => [...trust]);

it("gives what a fit made anew gives, trust included, the second time as the first", () => {
  const anew = evidence();
  const expected = fitCurves(anew, usualPrior());
  const [first, second] = [evidence(), evidence()];
  expect(keptFit({ packs: first, prior: usualPrior() })).toEqual(expected);
  const again = keptFit({ packs: second, prior: usualPrior() });
  expect(again).toBe(keptFit({ packs: evidence(), prior: usualPrior() }));
  expect(keptFit({ packs: [packEvidence([], []), ...evidence()], prior: usualPrior() })).toBe(again);
  expect(trusts(first)).toEqual(trusts(anew));
  expect(trusts(second)).toEqual(trusts(anew));
  expect(anew[1]!.trust[2]).toBeLessThan(0.5);
});

it("fits anew where a reading, a bound or the prior is another", () => {
  const fit = keptFit({ packs: evidence(), prior: usualPrior() });
  expect(keptFit({ packs: evidence(0.9), prior: usualPrior() })).not.toBe(fit);
  const [first, second] = evidence();
  const notBelow = first!.bounds.map((bound) => ({ ...bound, below: false }));
  expect(keptFit({ packs: [{ ...first!, bounds: notBelow }, second!], prior: usualPrior() })).not.toBe(fit);
  expect(keptFit({ packs: evidence(), prior: { ...usualPrior(), mean: usualPrior().mean.fill(0.1) } })).not.toBe(fit);
  expect(keptFit({ packs: evidence(), prior: usualPrior() })).toBe(fit);
});
