import { describe, expect, it } from "vitest";
import { alikeRuns, drawUses } from "../../src/demand/drawn-uses.ts";
import { seededRandom } from "../../src/maths/random.ts";

/** Days and sizes of the uses in every run. */
function drawn(runs: number, uses: number, sizes = Float64Array.of(0, 1), seed = 9) {
  const random = seededRandom(seed);
  const alike = alikeRuns(runs, uses, random);
  const into = { count: 0, days: new Float64Array(2), units: new Int32Array(2) };
  return Array.from({ length: runs }, (_, run) => {
    drawUses(alike, run, { from: 100, days: 200 }, sizes, random, into);
    expect(into.count).toBe(uses);
    return { days: [...into.days.subarray(0, uses)], units: [...into.units.subarray(0, uses)] };
  });
}

describe("drawUses", () => {
  it.each([
    [1, 3],
    [2, 2],
    [5, 1],
    [13, 2],
    [40, 6],
    [250, 40],
    [8, 64],
  ])("has in %i runs each of %i uses in every part of the time once, in the order of days", (runs, uses) => {
    const inPart = new Array<number>(runs).fill(0);
    for (const { days } of drawn(runs, uses)) {
      expect(days).toEqual([...days].sort((a, b) => a - b));
      for (const day of days) {
        const part = Math.floor(((day - 100) / 200) * runs);
        inPart[part] = inPart[part]! + 1;
      }
    }
    expect(inPart).toEqual(new Array<number>(runs).fill(uses));
  });

  // By hand: with no two uses hanging together, a fifth of 250 runs has the second use in the first use's fifth of the time
  it("has two uses fall anywhere against each other", () => {
    const near = drawn(250, 2).filter(
      ({ days: [a, b] }) => Math.floor((a! - 100) / 40) === Math.floor((b! - 100) / 40),
    );
    expect(Math.abs(near.length - 50)).toBeLessThan(15);
  });

  // By hand: half of 400 places, and three standard deviations of 10 more or less
  it("has the first run of a place begin anywhere", () => {
    let early = 0;
    for (let seed = 0; seed < 400; seed++) if (drawn(8, 1, Float64Array.of(0, 1), seed)[0]!.days[0]! < 200) early++;
    expect(Math.abs(early - 200)).toBeLessThan(30);
  });

  it("takes units by their chances, none that has none", () => {
    const units = drawn(250, 40, Float64Array.of(0, 0.5, 0, 0.25, 0.25)).flatMap((run) => run.units);
    const share = (count: number) => units.filter((one) => one === count).length / units.length;
    // 10 000 draws: three standard deviations are 0.015
    expect([0, 1, 2, 3, 4].map((count) => Math.round(share(count) * 40) / 40)).toEqual([0, 0.5, 0, 0.25, 0.25]);
  });
});
