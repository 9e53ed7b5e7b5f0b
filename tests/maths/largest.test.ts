import fc from "fast-check";
import { expect, it } from "vitest";
import { largest } from "../../src/maths/largest.ts";

it("largest: the places of the largest values, the first of equals first, minus infinity left out", () => {
  expect(largest(Float64Array.of(3, 9, 3, Number.NEGATIVE_INFINITY, 9), 3)).toEqual([1, 4, 0]);
  expect(largest(Float64Array.of(Number.NEGATIVE_INFINITY), 3)).toEqual([]);
});

it("largest: as a stable sort gives them", () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 0, max: 9 }), { maxLength: 40 }),
      fc.integer({ min: 1, max: 12 }),
      (values, most) => {
        const sorted = [...values.keys()].sort((a, b) => values[b]! - values[a]!).slice(0, most);
        expect(largest(Float64Array.from(values), most)).toEqual(sorted);
      },
    ),
    { seed: 7 },
  );
});
