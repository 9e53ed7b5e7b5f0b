import fc from "fast-check";
import { expect, it } from "vitest";
import { curveFromCoordinates } from "../../src/fade/curve.ts";
import { LOG_LIFE_STEP, LOG_LIVES } from "../../src/fade/life-grid.ts";
import { nodeTables, SHAPE_LEVELS } from "../../src/fade/node-tables.ts";
import { PRIORS } from "../../src/fade/priors.ts";

/** Chance of every life, whatever the shape, where no pack is in a harder use. */
function livesOf(logMedianLife: number, lifeSpread: number): number[] {
  const usual = curveFromCoordinates(new Float64Array(PRIORS.length));
  const { logPrior } = nodeTables({ ...usual, logMedianLife, lifeSpread, hardUseShare: 0 });
  return Array.from(LOG_LIVES, (_, life) => {
    const levels = Array.from({ length: SHAPE_LEVELS }, (_, level) => logPrior[level * LOG_LIVES.length + life]!);
    return levels.reduce((sum, log) => sum + Math.exp(log), 0);
  });
}

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

it("leaves no chance out and counts none twice, wherever the median lies between two lives and however little packs differ", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 2, noNaN: true }),
      fc.double({ min: 0.005, max: 0.1, noNaN: true }),
      (median, spread) => {
        const chances = livesOf(median, spread);
        expect(sum(chances)).toBeCloseTo(1, 3);
        const mean = sum(chances.map((chance, life) => chance * LOG_LIVES[life]!));
        expect(Math.abs(mean - median)).toBeLessThan(LOG_LIFE_STEP / 2 + 0.002);
      },
    ),
    { seed: 3, numRuns: 200 },
  );
});

// Source: percentiles of Student's t with 4 degrees of freedom, NIST/SEMATECH e-Handbook of Statistical Methods,
// section 1.3.6.7.2, from memory.
it.each([
  [1.533, 0.9],
  [2.132, 0.95],
  [2.776, 0.975],
  [4.604, 0.995],
])("has %f scales below or above the median as t with four degrees of freedom has them: %f", (scales, share) => {
  // a whole number of steps, so that a border between two stretches of lives lies there
  const steps = 4;
  const border = LOG_LIVES[60]! + LOG_LIFE_STEP / 2;
  const spread = (steps * LOG_LIFE_STEP) / scales;
  expect(sum(livesOf(border - steps * LOG_LIFE_STEP, spread).slice(0, 61))).toBeCloseTo(share, 3);
  expect(sum(livesOf(border + steps * LOG_LIFE_STEP, spread).slice(61))).toBeCloseTo(share, 3);
});
