import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { LotSource, LotTier } from "../../src/orders/lot-problem.ts";
import { planLots } from "../../src/orders/lot-sizing.ts";

interface Case {
  demand: number[];
  box: number;
  minimum: number;
  life: number;
  fee: number;
  breakAt: number;
  cheaper: number;
  closed: boolean[];
}

const PRICE = 5;
const HOLDING = 0.5;

/** Every sequence of lots up to a bound, with stock used first in, first out and lapsed units held to their end. */
function bruteForce({ demand, box, minimum, life, fee, breakAt, cheaper, closed }: Case): number {
  const most = demand.reduce((a, b) => a + b, 0) + Math.max(box, minimum, breakAt) + box;
  let best = Number.POSITIVE_INFINITY;
  const visit = (period: number, stock: number[], cost: number): void => {
    if (cost >= best) return;
    if (period === demand.length) {
      best = cost;
      return;
    }
    for (let units = 0; units <= most; units += box) {
      if (units > 0 && (units < minimum || closed[period])) continue;
      // stock[a] = units with a periods of life left after this one
      const now = [...stock];
      now[life - 1] = (now[life - 1] ?? 0) + units;
      let wanted = demand[period]!;
      for (let age = 0; age < life; age++) {
        const used = Math.min(wanted, now[age] ?? 0);
        now[age] = (now[age] ?? 0) - used;
        wanted -= used;
      }
      if (wanted > 0) continue;
      const price = units >= breakAt ? PRICE - cheaper : PRICE;
      const held = now.reduce((a, b) => a + b, 0);
      const paid = cost + (units > 0 ? fee + price * units : 0) + HOLDING * held;
      visit(period + 1, now.slice(1), paid);
    }
  };
  visit(0, new Array<number>(life).fill(0), 0);
  return best;
}

function byProgram({ demand, box, minimum, life, fee, breakAt, cheaper, closed }: Case): number {
  const tier = (fromUnits: number, unitCost: number): LotTier => {
    return { fromUnits: Math.max(fromUnits, minimum), unitCost, lotCost: fee, holdingCost: HOLDING };
  };
  const source: LotSource = {
    unitsPerBox: box,
    lastServed: (period) => period + life - 1,
    tiersAt: (period) => {
      if (closed[period]) return [];
      return minimum >= breakAt ? [tier(0, PRICE - cheaper)] : [tier(0, PRICE), tier(breakAt, PRICE - cheaper)];
    },
  };
  let sum = 0;
  const cumulativeNeed = demand.map((units) => {
    sum += units;
    return sum;
  });
  return planLots({ cumulativeNeed, sources: [source], surplusAtEnd: true })?.cost ?? Number.POSITIVE_INFINITY;
}

describe("planLots: all features at once", () => {
  // Source: plain enumeration of every plan, written beside the programme and knowing none of its state
  it("costs what the best of all plans costs", () => {
    const any = fc.record({
      demand: fc.array(fc.nat(4), { minLength: 1, maxLength: 4 }),
      box: fc.integer({ min: 1, max: 3 }),
      minimum: fc.nat(5),
      life: fc.integer({ min: 1, max: 4 }),
      fee: fc.integer({ min: 0, max: 12 }),
      breakAt: fc.integer({ min: 2, max: 8 }),
      cheaper: fc.integer({ min: 0, max: 3 }),
      closed: fc.tuple(fc.constant(false), fc.boolean(), fc.boolean(), fc.boolean()),
    });
    fc.assert(
      fc.property(any, (one) => {
        expect(byProgram(one)).toBeCloseTo(bruteForce(one), 9);
      }),
      { seed: 1958, numRuns: 250 },
    );
  });
});
