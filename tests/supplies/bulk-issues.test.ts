import { describe, expect, it } from "vitest";
import { splitBulk } from "../../src/supplies/bulk-issues.ts";
import { use } from "../fleet/make-rows.ts";

const bulkOf = (sizes: readonly number[]) => {
  const { uses, bulk, usual } = splitBulk(sizes.map((quantity) => use("2026-05-01", "Pads", "D1", { quantity })));
  expect([...uses, ...bulk].map(({ quantity }) => quantity).sort()).toEqual([...sizes].sort());
  return { usual, bulk: bulk.map(({ quantity }) => quantity) };
};

describe("splitBulk", () => {
  // By hand: of sizes that hardly differ the deviation counts as one unit, so that all over five more than usual is bulk
  it("parts single rows far larger than usual, and counts a row of just the limit as use", () => {
    expect(bulkOf([1, 1, 1, 1, 1, 12])).toEqual({ usual: 1, bulk: [12] });
    expect(bulkOf([1, 1, 1, 1, 1, 7])).toEqual({ usual: 1, bulk: [7] });
    expect(bulkOf([1, 1, 1, 1, 1, 6])).toEqual({ usual: 1, bulk: [] });
  });

  // By hand: the median is 7, the deviations from it are 5, 3, 1, 1, 3 and the large row's, their median 3, and five times
  // 3 * 1.4826 more than 7 is 29.2. Source of 1.4826, one over the normal's upper quartile .6745: Hampel 1974
  it("goes by the median deviation where sizes differ", () => {
    expect(bulkOf([2, 4, 6, 8, 10, 30])).toEqual({ usual: 7, bulk: [30] });
    expect(bulkOf([2, 4, 6, 8, 10, 29])).toEqual({ usual: 7, bulk: [] });
  });

  it("takes large rows for use where they are not single, and where there are too few rows to tell", () => {
    const many = Array.from({ length: 18 }, () => 1);
    expect(bulkOf([...many, 50, 50]).bulk).toEqual([50, 50]);
    expect(bulkOf([...many, 50, 50, 50]).bulk).toEqual([]);
    expect(bulkOf([1, 1, 1, 40]).bulk).toEqual([]);
    expect(bulkOf([40])).toEqual({ usual: 40, bulk: [] });
    expect(bulkOf([])).toEqual({ usual: 0, bulk: [] });
  });
});
