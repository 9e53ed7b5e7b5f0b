import { expect, it } from "vitest";
import { evenlySpread } from "../../src/maths/evenly-spread.ts";

const upTo = (count: number) => Array.from({ length: count }, (_, i) => i);

// By hand: the middles of fours, and of spans of two and a half
it.each([
  [12, 3, [2, 6, 10]],
  [10, 4, [1, 3, 6, 8]],
  [3, 3, [0, 1, 2]],
  [2, 5, [0, 1]],
  [0, 4, []],
])("of %i takes %i: %j", (length, count, taken) => {
  expect(evenlySpread(upTo(length), count)).toEqual(taken);
});
