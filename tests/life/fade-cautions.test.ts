import { describe, expect, it } from "vitest";
import type { FadingItem } from "../../src/fade/fade-items.ts";
import { fadeCautions } from "../../src/life/fade-cautions.ts";

/** An item by the last readings of its packs, with as many tests that only passed or failed. */
function item(
  capacities: number[],
  facts: { bounds?: number; completedLives?: number; trust?: number } = {},
): FadingItem {
  const { bounds = 0, completedLives = 0, trust = 1 } = facts;
  const packs = [0, ...capacities].map((capacity, index) => ({
    clock: { start: 0 },
    evidence: { trust: index === 0 ? [] : [trust] },
    readings: { readings: index === 0 ? [] : [{ day: 1, capacity }], bounds: Array(bounds).fill({}) },
  }));
  const group = { readings: capacities.length, parameters: { startCapacity: 1 } };
  return { item: "p", packs, completedLives, borrowsFrom: [], group } as unknown as FadingItem;
}

const cautions = (one: FadingItem) => fadeCautions([one], 0.8).join(" ");

describe("fadeCautions", () => {
  it("say that no life was seen to its end, unless a pack was retired as faded or read well below the threshold", () => {
    expect(cautions(item([0.95, 0.85]))).toContain("No p has been seen to its end of life");
    expect(cautions(item([0.95, 0.79]))).toContain("No p has been seen to its end of life");
    expect(cautions(item([0.95, 0.77]))).toBe("");
    expect(cautions(item([0.95, 0.85], { completedLives: 1 }))).toBe("");
  });

  it("see no life to its end in a test that the fit doubts", () => {
    expect(cautions(item([0.95, 0.6], { trust: 0.04 }))).toContain("No p has been seen to its end of life");
  });

  it("tell packs that were never tested from packs whose tests only passed or failed", () => {
    expect(cautions(item([]))).toBe("No p has been tested: its forecast rests on what is usual for such packs alone.");
    expect(cautions(item([], { bounds: 1 }))).toMatch(
      /^No test of p says how much it held, only that it passed or failed/,
    );
  });
});
