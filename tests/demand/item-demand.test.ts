import { describe, expect, it } from "vitest";
import { type DemandParts, itemDemand } from "../../src/demand/item-demand.ts";
import type { SpanNeeds } from "../../src/demand/span-needs.ts";

/** A part that is 0 or 2 in every span, with equal chance. */
const NONE_OR_TWO: SpanNeeds = {
  countsIn: () => Float64Array.of(0.5, 0, 0.5),
  quantileIn: () => null,
  addPath: (draw, random, into) => {
    into[draw] = into[draw]! + (random() < 0.5 ? 0 : 2);
  },
};
const unitMass = (count: number) => Float64Array.from({ length: count + 1 }, (_, n) => (n === count ? 1 : 0));
const parts = (random: SpanNeeds[], certain = [1, 0, 3]): DemandParts => {
  const use = Float64Array.of(1, 0, 3);
  return {
    ...{ item: "Pads", from: 0, months: 3, draws: 2, certain: Int32Array.from(certain), random },
    causes: { use, expiry: Float64Array.of(0.5, 0, 1) },
  };
};

describe("itemDemand", () => {
  it("needs what is certain, where nothing is random", () => {
    const { needsQuantile } = itemDemand(parts([]));
    const spans: [number, number, number][] = [
      [-1, 0, 1],
      [-1, 2, 4],
      [0, 1, 0],
      [1, 2, 3],
      [2, 2, 0],
      [2, 1, 0],
    ];
    for (const [after, through, units] of spans) expect(needsQuantile(after, through, 0.95)).toBe(units);
  });

  // By hand: two parts of 0 or 2 are 0, 2 or 4 with chances 1/4, 1/2 and 1/4; a level that is met exactly is met
  it.each([
    [0.2, 0],
    [0.25, 0],
    [0.26, 2],
    [0.75, 2],
    [0.76, 4],
    [1, 4],
  ])("adds independent parts: at a level of %d they are %i", (level, units) => {
    const { needsQuantile } = itemDemand(parts([NONE_OR_TWO, NONE_OR_TWO]));
    expect(needsQuantile(-1, 1, level)).toBe(1 + units);
    expect(needsQuantile(0, 1, level)).toBe(units);
    // asked again
    expect(needsQuantile(-1, 1, level)).toBe(1 + units);
  });

  // By hand: a unit for certain in each month of the span, beside 0 or 2, is 1 more than those at a level of 0.5
  it("keeps spans and levels apart", () => {
    const oneAMonth = { ...NONE_OR_TWO, countsIn: (after: number, through: number) => unitMass(through - after) };
    const { needsQuantile } = itemDemand(parts([NONE_OR_TWO, oneAMonth], [0, 0, 0]));
    const asked = () => [-1, 0, 1].flatMap((after) => [0.5, 0.9].map((level) => needsQuantile(after, 2, level)));
    expect([asked(), asked()]).toEqual([
      [3, 5, 2, 4, 1, 3],
      [3, 5, 2, 4, 1, 3],
    ]);
  });

  it("has the means of its causes, none of those that are not told, and paths of all parts", () => {
    const demand = itemDemand(parts([NONE_OR_TWO, NONE_OR_TWO]));
    expect([...demand.mean]).toEqual([1.5, 0, 4]);
    expect([...demand.causes.fade]).toEqual([0, 0, 0]);
    const numbers = [0.9, 0.1, 0.9, 0.9];
    const path = () => [...demand.samplePath(1, () => numbers.shift()!)];
    expect([path(), path()]).toEqual([
      [1, 2, 3],
      [1, 4, 3],
    ]);
  });
});
