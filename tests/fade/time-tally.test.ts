import { describe, expect, it } from "vitest";
import { GRID_DAYS, GRID_SIZE } from "../../src/fade/time-grid.ts";
import { addArrival, chancesOf, spreadOverSteps, spreadTally, TALLY_SIZE } from "../../src/fade/time-tally.ts";
import { normalCdf } from "../../src/maths/normal.ts";

function chancesFor(arrivals: [days: number, weight: number][], sd: number): Float32Array {
  const tally = new Float64Array(TALLY_SIZE);
  for (const [days, weight] of arrivals) addArrival(tally, days, weight);
  const chances = new Float32Array(GRID_SIZE);
  const spread = new Float64Array(TALLY_SIZE);
  spreadTally(tally, spreadOverSteps(sd), spread);
  chancesOf(spread, 1, chances);
  return chances;
}

describe("a tally by time", () => {
  it("has come by now what came before, and never what comes after the grid", () => {
    const chances = chancesFor(
      [
        [-5, 0.25],
        [0, 0.25],
        [1e9, 0.5],
      ],
      1.5,
    );
    expect(chances[0]).toBe(0.5);
    expect(chances[GRID_SIZE - 1]).toBe(0.5);
  });

  it("spreads an arrival over log time as a normal, on average over where it falls between grid times", () => {
    const sd = 2;
    const middle = 60;
    const places = Array.from({ length: 20 }, (_, i) => middle + (i + 0.5) / 20);
    const step = Math.log(GRID_DAYS[51]! / GRID_DAYS[50]!);
    const arrivals = places.map((place): [number, number] => [GRID_DAYS[1]! * Math.exp((place - 1) * step), 1 / 20]);
    const chances = chancesFor(arrivals, sd);
    for (let k = 50; k < 72; k++) {
      const expected = places.reduce((sum, place) => sum + normalCdf((k - place) / sd) / 20, 0);
      expect(Math.abs(chances[k]! - expected), `grid time ${k}`).toBeLessThan(0.005);
    }
  });

  it("never falls", () => {
    const chances = chancesFor(
      [
        [3, 0.2],
        [40, 0.3],
        [900, 0.5],
      ],
      1.2,
    );
    for (let k = 1; k < GRID_SIZE; k++) expect(chances[k]!).toBeGreaterThanOrEqual(chances[k - 1]!);
    expect(chances[GRID_SIZE - 1]).toBeCloseTo(1, 5);
  });

  it("adds up its weights to one", () => {
    for (const sd of [0, 0.4, 1.2, 4]) {
      const weights = spreadOverSteps(sd);
      expect(weights.length % 2).toBe(1);
      expect(weights.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
    }
  });
});
