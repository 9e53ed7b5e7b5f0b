import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  GRID_DAYS,
  GRID_SIZE,
  gridIndex,
  gridValue,
  INDEX_PER_LOG_STRETCH,
  shiftedIndex,
} from "../../src/fade/time-grid.ts";

describe("the time grid", () => {
  it("starts at as-of and steps evenly in log time", () => {
    expect(GRID_DAYS[0]).toBe(0);
    const steps = Array.from({ length: GRID_SIZE - 2 }, (_, k) => Math.log(GRID_DAYS[k + 2]! / GRID_DAYS[k + 1]!));
    for (const step of steps) expect(step).toBeCloseTo(steps[0]!, 12);
  });

  it("finds its own times", () => {
    for (let k = 0; k < GRID_SIZE; k++) expect(gridIndex(GRID_DAYS[k]!, 0)).toBeCloseTo(k, 9);
    expect(gridIndex(1e9, 0)).toBe(GRID_SIZE - 1);
    expect(gridIndex(-5, 0)).toBe(0);
  });

  // By hand: the first step takes ten days, and a stretch by ln 2 makes 5 days of them ten and 2 days four
  it("runs straight in time up to its first step, a stretch included", () => {
    expect(gridIndex(5, 0)).toBeCloseTo(0.5, 12);
    expect(gridIndex(5, Math.log(2))).toBeCloseTo(1, 12);
    expect(gridIndex(2, Math.log(2))).toBeCloseTo(0.4, 12);
  });

  it("shifts as a stretch of the time itself would", () => {
    const days = fc.double({ min: 0, max: GRID_DAYS[GRID_SIZE - 1]!, noNaN: true });
    const stretch = fc.double({ min: -0.8, max: 0.8, noNaN: true });
    fc.assert(
      fc.property(days, stretch, (ahead, by) => {
        const index = shiftedIndex(gridIndex(ahead, 0), by * INDEX_PER_LOG_STRETCH);
        expect(index).toBeCloseTo(gridIndex(ahead, by), 6);
      }),
      { seed: 7, numRuns: 500 },
    );
  });

  it("reads a straight line between grid times", () => {
    const values = Float64Array.from({ length: GRID_SIZE }, (_, k) => 2 * k);
    expect(gridValue(values, 0, 3.25)).toBeCloseTo(6.5, 12);
    expect(gridValue(values, 0, GRID_SIZE - 1)).toBe(2 * (GRID_SIZE - 1));
  });
});
