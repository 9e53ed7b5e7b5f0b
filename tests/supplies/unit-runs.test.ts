import { describe, expect, it } from "vitest";
import { eachUnit, sumsByRun, total } from "../../src/supplies/unit-runs.ts";

describe("runs of units of one day", () => {
  it.each([
    [[], [], [], [], []],
    [
      [10, 20],
      [1, 1],
      [10, 20],
      [0.5, 0.25],
      [0.5, 0.25],
    ],
    [
      [10, 20, 30],
      [2, 0, 3],
      [10, 10, 30, 30, 30],
      [1, 2, 4, 8, 16],
      [3, 0, 28],
    ],
    [[10], [3], [10, 10, 10], [1, 1, 1], [3]],
  ])("on days %j, of %j units", (days, units, each, ofUnits, sums) => {
    expect(total(units)).toBe(each.length);
    expect(eachUnit(days, units)).toEqual(each);
    expect([...sumsByRun(units, Float64Array.from(ofUnits))]).toEqual(sums);
  });
});
