import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { rememberStages } from "../../src/fleet/policy-reads.ts";

const policy = defaultPolicy(20_000);
const fleet = { packs: [] };

describe("rememberStages: a stage of a pipeline", () => {
  it("is computed again only where a value that it read has changed", () => {
    const remember = rememberStages();
    let runs = 0;
    const stage = (now: typeof policy) =>
      remember("life", [fleet], now, ({ endOfLifePercent }) => {
        runs += 1;
        return endOfLifePercent;
      });
    expect(stage(policy)).toBe(80);
    expect(stage({ ...policy, serviceLevel: 0.5 })).toBe(80);
    expect(runs).toBe(1);
    expect(stage({ ...policy, endOfLifePercent: 70 })).toBe(70);
    expect(runs).toBe(2);
  });

  it("is computed again where what it rests on is another thing", () => {
    const remember = rememberStages();
    const stage = (rests: object) => remember("life", [rests], policy, () => ({ of: rests }));
    expect(stage(fleet)).toBe(stage(fleet));
    const other = { packs: [] };
    expect(stage(other).of).toBe(other);
  });

  it("notes what its results read later, and shows them the policy of today", () => {
    const remember = rememberStages();
    const stage = (now: typeof policy) =>
      remember("life", [fleet], now, (seen) => ({ spares: () => seen.sparesPercent }));
    const first = stage(policy);
    const second = stage({ ...policy, sparesPercent: 10 });
    expect(second).toBe(first);
    expect(second.spares()).toBe(10);
    expect(stage({ ...policy, sparesPercent: 20 })).not.toBe(second);
  });

  it("does not stand after it failed", () => {
    const remember = rememberStages();
    expect(() =>
      remember("life", [fleet], policy, () => {
        throw new RangeError("no");
      }),
    ).toThrow("no");
    expect(remember("life", [fleet], policy, () => 1)).toBe(1);
  });
});
