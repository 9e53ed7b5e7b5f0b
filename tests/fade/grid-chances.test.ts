import { describe, expect, it } from "vitest";
import { chanceAt, type GridChances, gridChances } from "../../src/fade/grid-chances.ts";
import { GRID_SIZE } from "../../src/fade/time-grid.ts";

/** Chances that begin, and settle, at chosen grid times, rising evenly between. */
const rising = (after: number, by: number, to: number) =>
  Float32Array.from({ length: GRID_SIZE }, (_, k) => to * Math.min(1, Math.max(0, (k - after) / (by - after))));

const CURVES = [
  rising(40, 60, 1),
  rising(0, 30, 0.75),
  rising(100, GRID_SIZE - 1, 0.5),
  new Float32Array(GRID_SIZE),
  new Float32Array(GRID_SIZE).fill(1),
  Float32Array.from({ length: GRID_SIZE }, (_, k) => (k < 1 ? 0.25 : 0.5)),
];

const kept: GridChances = gridChances(CURVES.length, (curve, into) => into.set(CURVES[curve]!));

describe("chances kept where they change", () => {
  it("are, at every grid time and between, what they were", () => {
    CURVES.forEach((all, curve) => {
      for (let k = 0; k < GRID_SIZE; k++) {
        expect(chanceAt(kept, curve, k), `curve ${curve} at ${k}`).toBe(all[k]);
        const next = all[Math.min(GRID_SIZE - 1, k + 1)]!;
        if (k < GRID_SIZE - 1) {
          expect(chanceAt(kept, curve, k + 0.25)).toBeCloseTo(0.75 * all[k]! + 0.25 * next, 12);
        }
      }
    });
  });

  it("take no more room than the times at which they change", () => {
    // from the last time without a chance to the first with all of it: 21, 31 and 21 times, and one or two of the others
    expect(kept.values).toHaveLength(21 + 31 + (GRID_SIZE - 100) + 1 + 1 + 2);
  });

  it("keep those of more curves than there is room for at first", () => {
    const many = gridChances(300, (curve, into) => into.set(CURVES[curve % CURVES.length]!));
    for (let curve = 0; curve < 300; curve++) {
      expect(chanceAt(many, curve, 50.5)).toBe(chanceAt(kept, curve % CURVES.length, 50.5));
    }
  });
});
