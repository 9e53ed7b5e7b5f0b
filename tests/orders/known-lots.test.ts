import { describe, expect, it } from "vitest";
import { seededRandom } from "../../src/maths/random.ts";
import { knownLots } from "../../src/orders/known-lots.ts";
import type { LotProblem, LotTier } from "../../src/orders/lot-problem.ts";
import { planLots } from "../../src/orders/lot-sizing.ts";

/** Problems of a few periods, some of which differ by one number alone. */
function problemOf(seed: number, changed: Partial<LotTier> & { served?: number; need?: number } = {}): LotProblem {
  const random = seededRandom(seed);
  const between = (low: number, high: number) => low + Math.floor((high - low + 1) * random.uniform());
  const periods = between(1, 8);
  let total = 0;
  const cumulativeNeed = Array.from({ length: periods }, () => {
    total += between(0, 6);
    return total;
  });
  if (changed.need) cumulativeNeed[periods - 1] = cumulativeNeed[periods - 1]! + changed.need;
  const { served = 0, need, ...tier } = changed;
  const tiers: LotTier[] = [{ fromUnits: 1, unitCost: 3, lotCost: between(1, 20), holdingCost: 0.5, ...tier }];
  const life = between(0, 4);
  const source = {
    unitsPerBox: between(1, 3),
    tiersAt: (period: number) => (period % 3 === 2 ? [] : tiers),
    lastServed: (period: number) => Math.max(period, period + life + served),
  };
  return { cumulativeNeed, sources: [source], surplusAtEnd: true };
}

describe("knownLots", () => {
  it("gives what planLots gives, at first and again, also of problems that differ by one number", () => {
    const seeds = Array.from({ length: 150 }, (_, seed) => seed);
    const changes = [
      {},
      { unitCost: 2 },
      { lotCost: 7 },
      { holdingCost: 0 },
      { fromUnits: 4 },
      { served: 1 },
      { need: 1 },
    ];
    for (const seed of [...seeds, ...seeds]) {
      for (const change of changes) {
        const problem = problemOf(seed, change);
        expect(knownLots(problem)).toEqual(planLots(problem));
      }
    }
  });

  it("plans no problem twice", () => {
    const asked = problemOf(9_001);
    expect(knownLots(problemOf(9_001))).toBe(knownLots(asked));
  });

  it("plans a problem of very many numbers too", () => {
    const small = problemOf(3);
    const sources = Array.from({ length: 400 }, () => small.sources[0]!);
    expect(knownLots({ ...small, sources })).toEqual(planLots(small));
  });
});
