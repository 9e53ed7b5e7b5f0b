import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { merged } from "../../src/fleet/merged.ts";

describe("merged: two ordered lists as one", () => {
  it("is both lists together, sorted stably", () => {
    const list = fc.array(fc.integer({ min: 0, max: 9 })).map((values) => values.sort((a, b) => a - b));
    fc.assert(
      fc.property(list, list, (a, b) => {
        // each value bears its list, so that equals are told apart
        const [first, second] = [a.map((value) => ({ value, of: "a" })), b.map((value) => ({ value, of: "b" }))];
        const sorted = [...first, ...second].sort((x, y) => x.value - y.value);
        expect(merged(first, second, (x, y) => x.value - y.value)).toStrictEqual(sorted);
      }),
    );
  });
});
