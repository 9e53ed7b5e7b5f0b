import { expect, it } from "vitest";
import { learnedChances } from "../../web/learned-chances.ts";

it("learns quickly at first: by two fifths, then by two sevenths, in single precision", () => {
  const { of, hear } = learnedChances(2);
  hear(1, 0);
  const once = 0.5 + 0.4 * (4095 / 4096 - 0.5);
  expect(of[1]).toBeCloseTo(once, 6);
  hear(1, 1);
  expect(of[1]).toBeCloseTo(once - (2 / 7) * (once - 1 / 4096), 6);
  expect(of[0]).toBe(0.5);
});

it("never takes an answer for certain, and follows one that changes", () => {
  const { of, hear } = learnedChances(1);
  for (let times = 0; times < 10_000; times++) hear(0, 0);
  expect(of[0]).toBeGreaterThan(0.99);
  expect(of[0]).toBeLessThanOrEqual(4095 / 4096);
  // the quick one by 0.92^30 = 0.082, the slow one by 0.994^30 = 0.835
  for (let times = 0; times < 30; times++) hear(0, 1);
  expect(of[0]).toBeCloseTo((0.082 + 0.835) / 2, 2);
});
