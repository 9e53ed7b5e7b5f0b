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
    pack: { retired: null, retiredBecause: null },
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

  // By hand: the last tests 0.82, 0.81, 0.83 lie 2 points above 80 %, as where packs are tested twice a year, and 12 above 70 %
  it("say that an end of life far below what retired packs held makes them fall steeply", () => {
    const retired = (lastTests: number[], daysAfter: number) => {
      const one = item(lastTests);
      const rows = one.packs.map((pack) => ({ ...pack, pack: { retired: 1 + daysAfter, retiredBecause: "faded" } }));
      return { ...one, packs: rows, completedLives: lastTests.length } as unknown as FadingItem;
    };
    expect(fadeCautions([retired([0.82, 0.81, 0.83], 60)], 0.8)).toEqual([]);
    expect(fadeCautions([retired([0.82, 0.81, 0.83], 60)], 0.7)).toEqual([
      expect.stringContaining("held some 82 % at their last tests, far above the policy sheet's end of life"),
    ]);
    // a test of long ago says little of what a pack held in the end, and one pack little of the others
    expect(fadeCautions([retired([0.82, 0.81, 0.83], 400)], 0.7)).toEqual([]);
    expect(fadeCautions([retired([0.82], 60)], 0.7)).toEqual([]);
  });

  it("tell packs that were never tested from packs whose tests only passed or failed", () => {
    expect(cautions(item([]))).toBe("No p has been tested: its forecast rests only on what is usual for such packs.");
    expect(cautions(item([], { bounds: 1 }))).toMatch(/^No test of p says how much it held: its forecast rests/);
  });
});
