import { describe, expect, it } from "vitest";
import { SAMPLED_PATHS, samplePaths } from "../../src/orders/sample-paths.ts";
import { certainDemand } from "./made-up.ts";

/** A demand whose paths tell the draw that they were drawn from, and the first number drawn for it. */
function drawn(item: string, draws: number, first: number[] = []) {
  const samplePath = (draw: number, random: () => number) => {
    first.push(random());
    return Int32Array.of(draw);
  };
  return { ...certainDemand(item, [0]), draws, samplePath };
}

describe("samplePaths", () => {
  it("takes every draw equally often, and path n of every item from the same draw", () => {
    const drawsOf = (draws: number) => samplePaths(drawn("Pads", draws)).map(([draw]) => draw!);
    const two = drawsOf(200);
    expect(two).toHaveLength(SAMPLED_PATHS);
    for (let draw = 0; draw < 200; draw++) expect(two.filter((one) => one === draw)).toHaveLength(2);
    expect(samplePaths(drawn("Gel", 200)).map(([draw]) => draw)).toEqual(two);
    // by hand: of 1000 draws every 2.5th, rounded down
    expect(drawsOf(1000).slice(0, 5)).toEqual([0, 2, 5, 7, 10]);
    expect(drawsOf(1000).at(-1)).toBe(997);
    expect(drawsOf(400)).toEqual(Array.from({ length: 400 }, (_, path) => path));
    expect(new Set(drawsOf(1))).toEqual(new Set([0]));
  });

  it("draws by the item's name alone, however it is written, and another item's by its own", () => {
    const numbers = (item: string) => {
      const first: number[] = [];
      samplePaths(drawn(item, 200, first));
      return first;
    };
    expect(numbers("Pads, adult")).toEqual(numbers(" pads,  ADULT"));
    expect(numbers("Pads, adult")).not.toEqual(numbers("Pads, child"));
  });

  it("draws once for all who ask", () => {
    const demand = drawn("Pads", 200);
    expect(samplePaths(demand)).toBe(samplePaths(demand));
    expect(samplePaths(demand, 7)).toHaveLength(7);
  });
});
