import fc from "fast-check";
import * as library from "simple-statistics";
import { describe, expect, it } from "vitest";
import { median, quantile } from "../../src/maths/quantiles.ts";

const values = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 40 });

describe("quantile and median", () => {
  // By hand: sorted 1 2 4 8; a quarter lies at place 0.75, between 1 and 2
  it("lie between the values, by straight lines", () => {
    expect(quantile([8, 1, 4, 2], 0.25)).toBe(1.75);
    expect(median([8, 1, 4, 2])).toBe(3);
    expect(median([5, -1, 3])).toBe(3);
    expect([0, 1].map((share) => quantile([8, 1, 4, 2], share))).toEqual([1, 8]);
  });

  it("are those that simple-statistics finds without sorting, and leave the list as it is", () => {
    fc.assert(
      fc.property(values, fc.double({ min: 0, max: 1, noNaN: true }), (some, share) => {
        const before = [...some];
        expect(quantile(some, share)).toBe(library.quantile(some, share));
        expect(median(some)).toBe(library.median(some));
        expect(some).toEqual(before);
      }),
      { seed: 20_261_201 },
    );
  });
});
