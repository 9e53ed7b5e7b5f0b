import { describe, expect, it } from "vitest";
import type { LotSource, LotTier } from "../../src/orders/lot-problem.ts";
import { planLots } from "../../src/orders/lot-sizing.ts";

// Source: Wagner, H. M. & Whitin, T. M. (1958), Management Science 5(1), 89-96, table 1
const DEMAND = [69, 29, 36, 61, 61, 26, 34, 67, 45, 67, 79, 56];
const SETUP = [85, 102, 102, 101, 98, 114, 105, 86, 119, 110, 98, 114];

interface Options {
  setup?: readonly number[];
  holding?: number;
  box?: number;
  minimum?: number;
  prices?: readonly (readonly [number, number])[];
  life?: number;
  surplus?: boolean;
}

function solve(demand: readonly number[], options: Options = {}) {
  const { setup = SETUP, holding = 1, box = 1, minimum = 0, prices = [[0, 0]], life = 99, surplus = false } = options;
  const source: LotSource = {
    unitsPerBox: box,
    lastServed: (period) => period + life - 1,
    tiersAt: (period): LotTier[] =>
      prices.map(([from, unitCost]) => ({
        fromUnits: Math.max(from, minimum),
        unitCost,
        lotCost: setup[period]!,
        holdingCost: holding,
      })),
  };
  let sum = 0;
  const cumulativeNeed = demand.map((units) => {
    sum += units;
    return sum;
  });
  const plan = planLots({ cumulativeNeed, sources: [source], surplusAtEnd: surplus });
  const lots = demand.map((_, period) => plan?.lots.find((lot) => lot.period === period)?.units ?? 0);
  return { cost: plan?.cost, lots, plan };
}

describe("planLots: the 1958 example", () => {
  it("finds the published cost 864 and its plan", () => {
    const { cost, lots } = solve(DEMAND);
    expect(cost).toBe(864);
    expect(lots).toEqual([98, 0, 97, 0, 121, 0, 0, 112, 0, 67, 135, 0]);
  });

  it("finds every F(t) of the table", () => {
    const published = [85, 114, 186, 277, 348, 400, 469, 555, 600, 710, 789, 864];
    expect(published.map((_, t) => solve(DEMAND.slice(0, t + 1)).cost)).toEqual(published);
  });

  // The rest of this block is a construction on the same data (no published source): exact optima found outside
  // the project by dynamic programming over integer stock.
  it("keeps a lot within a life of m periods", () => {
    expect(solve(DEMAND, { life: 1 }).cost).toBe(1234);
    expect(solve(DEMAND, { life: 2 })).toMatchObject({
      cost: 901,
      lots: [98, 0, 97, 0, 87, 0, 34, 112, 0, 67, 135, 0],
    });
    expect(solve(DEMAND, { life: 3 }).cost).toBe(864);
  });

  it("meets a minimum order with nothing left at the end", () => {
    expect(solve(DEMAND, { minimum: 100 })).toMatchObject({
      cost: 902,
      lots: [100, 0, 100, 0, 116, 0, 0, 179, 0, 0, 135, 0],
    });
    expect(solve(DEMAND, { minimum: 120 })).toMatchObject({
      cost: 921,
      lots: [134, 0, 0, 182, 0, 0, 0, 179, 0, 0, 135, 0],
    });
  });

  it("buys whole boxes", () => {
    expect(solve(DEMAND, { box: 10 })).toMatchObject({
      cost: 899,
      lots: [100, 0, 100, 0, 120, 0, 0, 110, 0, 70, 130, 0],
    });
  });

  it("takes all-units price breaks, buying up to them where that pays", () => {
    const small = solve(DEMAND, { prices: [[0, 2], [150, 1.8]] }); // biome-ignore format: one line a case
    expect(small.cost).toBeCloseTo(2108.8, 9);
    expect(small.lots).toEqual([134, 0, 0, 182, 0, 0, 0, 179, 0, 0, 135, 0]);
    const large = solve(DEMAND, { prices: [[0, 10], [150, 9]] }); // biome-ignore format: one line a case
    expect(large.cost).toBeCloseTo(6728, 9);
    expect(large.lots).toEqual([150, 0, 0, 166, 0, 0, 0, 150, 0, 164, 0, 0]);
  });
});

describe("planLots: small examples", () => {
  // Source: University of Southampton exercise, edshare.soton.ac.uk/id/document/4121
  it("finds 320, and 380 with 40 units more in the last period", () => {
    const options = { setup: [100, 100, 100, 100, 100], holding: 2 };
    expect(solve([40, 20, 10, 30, 20], options)).toMatchObject({ cost: 320, lots: [70, 0, 0, 50, 0] });
    expect(solve([40, 20, 10, 30, 60], options)).toMatchObject({ cost: 380, lots: [70, 0, 0, 30, 60] });
  });

  // Source: Nahmias, Production and Operations Analysis, lot-sizing example (five periods); optimum 310, a tie of plans
  it("finds 310 for Nahmias's five periods", () => {
    expect(solve([18, 30, 42, 5, 20], { setup: [80, 80, 80, 80, 80], holding: 2 }).cost).toBe(310);
  });

  // Source: Nahmias, four-period example (from memory)
  it("finds 248 for Nahmias's four periods", () => {
    expect(solve([52, 87, 23, 56], { setup: [75, 75, 75, 75] })).toMatchObject({ cost: 248, lots: [52, 110, 0, 56] });
  });
});

describe("planLots: what lapses", () => {
  // By hand: one box of 10 a period is the least that can be bought; life 1, needs 3 each: 7 of every box lapse.
  it("buys a surplus beyond its life where a box forces it, and says how much lapses", () => {
    const { plan, lots } = solve([3, 3], { setup: [1, 1], box: 10, life: 1, surplus: true });
    expect(lots).toEqual([10, 10]);
    expect(plan?.lots.map((lot) => lot.lapsing)).toEqual([7, 0]); // the last box is left over, not lapsed
    expect(plan?.cost).toBe(2 + 7 + 7);
  });

  it("plans millions of units on a coarser lattice, in whole boxes, and still meets every need", () => {
    const demand = new Array<number>(60).fill(100_001);
    const setup = new Array<number>(60).fill(1_000_000);
    const { plan } = solve(demand, { setup, box: 7, life: 12, surplus: true });
    let bought = 0;
    for (const lot of plan!.lots) {
      expect(lot.units % 7).toBe(0);
      bought += lot.units;
    }
    expect(bought).toBeGreaterThanOrEqual(60 * 100_001);
    expect(bought).toBeLessThan(60 * 100_001 * 1.001);
  });

  it("says so where nothing can meet the needs", () => {
    const source: LotSource = { unitsPerBox: 1, lastServed: () => 9, tiersAt: () => [] };
    expect(planLots({ cumulativeNeed: [1], sources: [source], surplusAtEnd: true })).toBeNull();
  });
});

// by hand: each source is a crown dearer than the next, so the last is the cheapest
it("planLots names the source that it buys from, however many there are", () => {
  const sources = Array.from({ length: 300 }, (_, at): LotSource => {
    const tier = { fromUnits: 1, unitCost: 300 - at, lotCost: 0, holdingCost: 0 };
    return { unitsPerBox: 1, lastServed: () => 0, tiersAt: () => [tier] };
  });
  const plan = planLots({ cumulativeNeed: [7], sources, surplusAtEnd: false });
  expect(plan).toMatchObject({ cost: 7, lots: [{ source: 299, units: 7 }] });
});
