import { describe, expect, it } from "vitest";
import { quantileOfCounts } from "../../src/maths/convolution.ts";
import { normalCdf, normalDensity, normalQuantile } from "../../src/maths/normal.ts";
import { poissonCounts } from "../../src/maths/poisson.ts";
import type { LotSource } from "../../src/orders/lot-problem.ts";
import { planLots } from "../../src/orders/lot-sizing.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import { catalogueRow, fleetWith, poissonDemand, policyWith, supplierRow } from "./made-up.ts";

interface Year {
  perYear: number;
  lotCost: number;
  /** Of one unit for a year, at a unit's price. */
  holding: (unitPrice: number) => number;
  prices: readonly (readonly [number, number])[];
}

/**
 * Sizes and yearly cost of lots where demand is even, `step` units a period, over the years given. Stock is held at a period's end, after
 * its need, so that the textbook's continuous stock is half a step more: that is added to the cost.
 */
function planYear({ perYear, lotCost, holding, prices }: Year, step: number, years = 1) {
  const periods = (years * perYear) / step;
  const source: LotSource = {
    unitsPerBox: 1,
    lastServed: () => periods,
    tiersAt: () =>
      prices.map(([fromUnits, unitCost]) => ({
        fromUnits,
        unitCost,
        lotCost,
        holdingCost: (holding(unitCost) * step) / perYear,
      })),
  };
  const cumulativeNeed = Array.from({ length: periods }, (_, period) => step * (period + 1));
  const plan = planLots({ cumulativeNeed, sources: [source], surplusAtEnd: false })!;
  const sizes = plan.lots.map(({ units }) => units);
  const priceOf = (units: number) => prices.filter(([from]) => from <= units).at(-1)![1];
  // every unit is bought, so the half step is held all year at the price of the lot in use
  const halfStep = sizes.reduce((sum, units) => sum + holding(priceOf(units)) * (units / perYear) * (step / 2), 0);
  return { sizes, cost: (plan.cost + halfStep) / years };
}

describe("planLots over a year of even demand", () => {
  // Economic order quantity sqrt(2 D K / h) (Harris 1913): D 1000, K 10, h 0.50 gives 200 at a cost of 100 a year
  it("buys the economic order quantity", () => {
    const { sizes, cost } = planYear({ perYear: 1000, lotCost: 10, holding: () => 0.5, prices: [[0, 0]] }, 4);
    expect(sizes).toEqual([200, 200, 200, 200, 200]);
    expect(cost).toBeCloseTo(100, 9);
  });

  // Source: worked answer with its full table at nursingexpertshelp.com: D 800, S 60, i 0.30; 200 a lot, 40,080.00
  it("buys up to the third of four price breaks and no further", () => {
    const prices = [[0, 53], [50, 51.5], [100, 49.5], [200, 48], [500, 47]] as const; // biome-ignore format: one table
    const { sizes, cost } = planYear({ perYear: 800, lotCost: 60, holding: (price) => 0.3 * price, prices }, 10);
    expect(sizes).toEqual([200, 200, 200, 200]);
    expect(cost).toBeCloseTo(40_080, 6);
  });

  // Source: Heizer & Render (from memory): D 5000, S 49, i 0.20; 1000 a lot, 24,725
  it("buys up to the first of two price breaks", () => {
    const prices = [[0, 5], [1000, 4.8], [2000, 4.75]] as const; // biome-ignore format: one table
    const { sizes, cost } = planYear({ perYear: 5000, lotCost: 49, holding: (price) => 0.2 * price, prices }, 50);
    expect(sizes).toEqual([1000, 1000, 1000, 1000, 1000]);
    expect(cost).toBeCloseTo(24_725, 6);
  });
});

describe("planLots over years of even demand", () => {
  // Source: Nahmias's trash bags (from memory): D 600, K 8, i 0.20; 500 a lot, 198.10 a year; five years hold six lots
  it("buys up to the first break of the trash bags, and not to the second", () => {
    const prices = [[0, 0.3], [500, 0.29], [1000, 0.28]] as const; // biome-ignore format: one table
    const bags = { perYear: 600, lotCost: 8, holding: (price: number) => 0.2 * price, prices };
    const { sizes, cost } = planYear(bags, 50, 5);
    expect(sizes).toEqual([500, 500, 500, 500, 500, 500]);
    expect(cost).toBeCloseTo(198.1, 9);
  });

  // Source: inputs of an exercise at homeworksource.com; cost by the all-units formula D c + S D / Q + i c Q / 2 at the last
  // break: 2000 * 2 + 20 * 2 + 0.20 * 2 * 500 = 4,240
  it("buys up to the last break where that is best", () => {
    const prices = [[0, 2.5], [200, 2.4], [300, 2.25], [1000, 2]] as const; // biome-ignore format: one table
    const { sizes, cost } = planYear({ perYear: 2000, lotCost: 20, holding: (price) => 0.2 * price, prices }, 50);
    expect(sizes).toEqual([1000, 1000]);
    expect(cost).toBeCloseTo(4240, 9);
  });
});

describe("the newsvendor under Poisson demand", () => {
  // Source: mean, cost of one short to one over, best stock: the least n whose chance of no more is at least the critical
  // ratio; chances of the stock and of one less computed with R 4.2.2 ppois
  const CASES = [
    [3.5, 9, 1, 6, 0.8576135530957782, 0.9347119029710463],
    [10, 4, 1, 13, 0.7915564763948745, 0.8644644226193109],
    [0.8, 20, 1, 2, 0.8087921354109989, 0.9525774039285098],
    [25, 3, 2, 26, 0.5529214200244148, 0.6293857964360162],
  ] as const;

  it.each(CASES)("of mean %f at %i to %i stocks %i", (mean, short, over, stock, before, at) => {
    const chances = poissonCounts(mean, 200);
    const upTo = (units: number) => chances.subarray(0, units + 1).reduce((sum, chance) => sum + chance, 0);
    expect(upTo(stock - 1)).toBeCloseTo(before, 12);
    expect(upTo(stock)).toBeCloseTo(at, 12);
    expect(quantileOfCounts(chances, short / (short + over))).toBe(stock);
  });

  // the critical ratio as the service level: one month, one lot, nothing in stock
  it.each(CASES)("of mean %f at %i to %i is what the schedule buys for a month at that level: %i", (...one) => {
    const [mean, short, over, stock] = one;
    const fleet = fleetWith({ catalogue: [catalogueRow({ item: "Pads" })], suppliers: [supplierRow()] });
    const policy = policyWith({ horizonMonths: 1, serviceLevel: short / (short + over) });
    const { orders } = scheduleOrders(fleet, policy, [poissonDemand("Pads", [mean])], []);
    expect(orders.map(({ quantity }) => quantity)).toEqual([stock]);
  });
});

describe("a reorder level for a chance of no shortage", () => {
  // Source: Nahmias's specialty shop, lead-time demand N(100, 25) (25 from memory), 0.98; computed with R 4.2.2 qnorm
  it("is 151.34 at 0.98", () => {
    expect(100 + 25 * normalQuantile(0.98)).toBeCloseTo(151.34372276579558, 9);
  });
});

describe("the newsvendor under normal demand", () => {
  // Source: Nahmias's newsstand, N(11.73, 4.74), 50 short and 15 over (inputs from memory); computed with R 4.2.2 qnorm
  it("stocks 15.22 of the newsstand's papers", () => {
    expect(11.73 + 4.74 * normalQuantile(50 / 65)).toBeCloseTo(15.220137448362856, 10);
  });

  // Source: computed with R 4.2.2: N(100, 20), 7 short and 3 over
  it("is short by 3.81 and left with 14.30 at a critical ratio of 0.7", () => {
    const z = normalQuantile(0.7);
    const short = 20 * (normalDensity(z) - z * (1 - normalCdf(z)));
    const left = 20 * z + short;
    expect(z).toBeCloseTo(0.5244005127080407, 10);
    expect(short).toBeCloseTo(3.8074492077532316, 9);
    expect(left).toBeCloseTo(14.295459461914044, 9);
    expect(7 * short + 3 * left).toBeCloseTo(69.53852284001476, 8);
  });
});

describe("unit normal loss", () => {
  // Source: G(k) = dnorm(k) - k (1 - pnorm(k)), computed with R 4.2.2
  it.each([
    [-1, 1.08331547059],
    [-0.5, 0.697796557401],
    [0.5, 0.197796557401],
    [1, 0.0833154705877],
    [1.5, 0.0293067937626],
    [2, 0.00849070261683],
    [2.5, 0.00200413717913],
    [3, 0.000382154317048],
    [4, 7.14525843241e-6],
    [2.8781617390955, 0.000583869762449],
    [0.216513497692, 0.3],
    [0.492887327207, 0.2],
    [0.90234634751, 0.1],
    [1.2555817153, 0.05],
    [1.66305094179, 0.02],
    [1.93835630729, 0.01],
    [2.71780551523, 0.001],
  ])("at %f is %f", (k, loss) => {
    expect(normalDensity(k) - k * (1 - normalCdf(k))).toBeCloseTo(loss, 11);
  });
});
