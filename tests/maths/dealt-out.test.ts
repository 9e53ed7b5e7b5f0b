import { describe, expect, it } from "vitest";
import { dealtOut, firstNumbers } from "../../src/maths/dealt-out.ts";

describe("dealtOut", () => {
  // By hand: 1 and 4 have rank 0, 0 and 2 rank 1, 3 rank 2; 4 comes before 1 because it was given first
  it("deals numbers out by rank, those of one rank in the order given", () => {
    const rank = Int32Array.of(1, 0, 1, 2, 0);
    expect([...dealtOut(Int32Array.of(4, 3, 2, 1, 0), rank, 3)]).toEqual([4, 1, 2, 0, 3]);
    expect([...dealtOut(Int32Array.of(3, 0), rank, 3)]).toEqual([0, 3]);
  });

  it("deals out nothing where there is nothing", () => {
    expect([...dealtOut(firstNumbers(0), firstNumbers(0), 0)]).toEqual([]);
  });
});
