import { describe, expect, it } from "vitest";
import type { FadingPack } from "../../../src/fade/items-with-evidence.ts";
import type { PackRow } from "../../../src/fleet/rows.ts";
import { outcomeAfter } from "../../../src/life/prove/outcome.ts";
import { pack } from "../../fleet/make-rows.ts";

/** A pack by its tests: day, percent, and what the fit trusts them (1 where not said). */
function tested(tests: [number, number, number?][], facts: Partial<PackRow> = {}): FadingPack {
  const readings = tests.map(([day, percent]) => ({ day, capacity: percent / 100 }));
  const trust = tests.map(([, , one]) => one ?? 1);
  return { pack: pack("x", facts), evidence: { trust }, readings: { readings } } as unknown as FadingPack;
}

describe("outcomeAfter", () => {
  it("ends a pack between its last good test and the first below", () => {
    const one = tested([
      [100, 95],
      [300, 84],
      [400, 78],
    ]);
    expect(outcomeAfter(one, 200, 0.8)).toEqual({ kind: "ended", after: 300, by: 400 });
    expect(outcomeAfter(one, 350, 0.8)).toEqual({ kind: "ended", after: 350, by: 400 });
    expect(outcomeAfter(one, 400, 0.8)).toEqual({ kind: "unknown" });
  });

  it("ends it at its retirement as faded where no test was below", () => {
    const one = tested([[300, 84]], { retired: 500, retiredBecause: "faded" });
    expect(outcomeAfter(one, 200, 0.8)).toEqual({ kind: "ended", after: 300, by: 500 });
  });

  it("foretells nothing of a pack whose end was seen by the cut-off, whatever came of it afterwards", () => {
    const tests: [number, number][] = [
      [300, 84],
      [400, 78],
      [500, 76],
    ];
    expect(outcomeAfter(tested(tests), 450, 0.8)).toEqual({ kind: "unknown" });
    expect(outcomeAfter(tested(tests, { retired: 600, retiredBecause: "faded" }), 550, 0.8)).toEqual({
      kind: "unknown",
    });
  });

  it("ends none by a test that the fit doubts", () => {
    const one = tested([
      [100, 95],
      [300, 55, 0.04],
      [400, 88],
    ]);
    expect(outcomeAfter(one, 200, 0.8)).toEqual({ kind: "lasted", until: 400 });
  });
});
