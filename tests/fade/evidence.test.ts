import { expect, it } from "vitest";
import { packEvidence, speaks, wearAt } from "../../src/fade/evidence.ts";

const moment = { years: 2, useYears: 3 };

it("a pack speaks from its first reading on, or by a test that only says on which side of the threshold it was", () => {
  expect(speaks(packEvidence([], []))).toBe(false);
  expect(speaks(packEvidence([{ ...moment, capacity: 0.9 }], []))).toBe(true);
  expect(speaks(packEvidence([], [{ ...moment, threshold: 0.8, below: false }]))).toBe(true);
});

// by hand: a quarter of three years of use and three quarters of two years of age are 2.25
it("wear is shared between age and use", () => {
  expect(wearAt(moment, 0.25)).toBeCloseTo(2.25, 12);
  expect(wearAt(moment, 0)).toBe(2);
  expect(wearAt(moment, 1)).toBe(3);
});
