import { expect, it } from "vitest";
import { inOrderOfLapse, unmetNeeds } from "../../src/short/unmet-needs.ts";

// By hand: one unit serves the first month alone, the other both; the first must go first, or the second month lacks one
it("what lapses first serves first", () => {
  const supply = inOrderOfLapse([
    { units: 1, from: 0, to: 1 },
    { units: 1, from: 0, to: 0 },
  ]);
  const unmet = new Float64Array(2);
  unmetNeeds(Int32Array.of(1, 1), supply, unmet);
  expect([...unmet]).toEqual([0, 0]);
});
