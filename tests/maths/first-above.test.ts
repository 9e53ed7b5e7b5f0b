import { expect, it } from "vitest";
import { firstAbove } from "../../src/maths/first-above.ts";

it("finds the first value above a limit in a stretch, and says where none is", () => {
  const values = Float64Array.from([9, 0.1, 0.4, 0.4, 0.8]);
  // by hand, in the stretch that begins at index 1
  expect(firstAbove(values, 1, 4, 0)).toBe(0);
  expect(firstAbove(values, 1, 4, 0.1)).toBe(1);
  expect(firstAbove(values, 1, 4, 0.4)).toBe(3);
  expect(firstAbove(values, 1, 4, 0.8)).toBe(4);
});
