import { describe, expect, it } from "vitest";
import { expectedUses, pacedFutures, paceShared } from "../../src/demand/shared-pace.ts";
import type { PlaceUse } from "../../src/supplies/use-rates.ts";

const FUTURES = 2000;
const blank = { key: "d1", name: "D1", device: null, events: 4, months: 20 };
const COMMON: PlaceUse = { ...blank, rate: { shape: 4, exposure: 80 }, common: "all", prior: null };
/** Two events in 10 months of its own, on a prior of 1.5 events in 30 months. */
const OF_A_DUTY: PlaceUse = {
  ...blank,
  ...{ rate: { shape: 3.5, exposure: 40 }, common: null, prior: { duty: "ward", exposure: 30, logSpread: 0.4 } },
};

/** Mean and variance over the futures of the rates that a place has in them. */
function spreadOf(use: PlaceUse, places: number): { mean: number; variance: number } {
  const rates = pacedFutures(use, places, FUTURES).flatMap(({ rateOf, among }) => {
    const { shape, exposure } = rateOf(use);
    return new Array<number>(among.length).fill(shape / exposure);
  });
  const mean = rates.reduce((sum, rate) => sum + rate, 0) / FUTURES;
  return { mean, variance: rates.reduce((sum, rate) => sum + (rate - mean) ** 2, 0) / FUTURES };
}

describe("pacedFutures", () => {
  it.each([
    ["a common rate of one place", COMMON, 1, 1],
    ["a common rate of three", COMMON, 3, 200],
    ["a duty's prior, of one place, too", OF_A_DUTY, 1, 40],
  ])("deals every future once, equally many to each pace: %s", (_, use, places, paces) => {
    const groups = pacedFutures(use, places, FUTURES);
    expect(groups.map(({ among }) => among.length)).toEqual(new Array<number>(paces).fill(FUTURES / paces));
    expect(groups.flatMap(({ among }) => [...among]).sort((a, b) => a - b)).toEqual(
      Array.from({ length: FUTURES }, (_, future) => future),
    );
  });

  // By hand: a gamma distribution of shape 4 in 80 months has mean 4 / 80 and variance 4 / 80^2
  it("gives places with a common rate one rate in each future, spread as the distribution is", () => {
    const { mean, variance } = spreadOf(COMMON, 3);
    expect(mean).toBeCloseTo(4 / 80, 12);
    expect(variance / (4 / 80 ** 2)).toBeGreaterThan(0.98);
    expect(variance / (4 / 80 ** 2)).toBeLessThanOrEqual(1);
    // the rate of a pace is certain: what is left of its own variance is nothing
    const { shape } = pacedFutures(COMMON, 3, FUTURES)[0]!.rateOf(COMMON);
    expect(1 / shape).toBeLessThan(1e-6);
  });

  it("leaves the rate of a place that shares it with none as it is", () => {
    expect(pacedFutures(COMMON, 1, FUTURES)[0]!.rateOf(COMMON)).toEqual(COMMON.rate);
  });

  /*
   * By hand: at twice the pace the prior's 1.5 events stand for 15 months, so that the place's rate is 3.5 in 25 months. A
   * lognormal pace of spread 0.4 has a median of 1, between the 20th and the 21st of 40.
   */
  it("lets a duty's pace speed up the prior, not what the place's own events tell", () => {
    const rates = pacedFutures(OF_A_DUTY, 9, FUTURES).map(({ rateOf }) => rateOf(OF_A_DUTY));
    for (const { shape } of rates) expect(shape).toBe(3.5);
    const paces = rates.map(({ exposure }) => 30 / (exposure - 10));
    expect(Math.sqrt(paces[19]! * paces[20]!)).toBeCloseTo(1, 9);
    const logs = paces.map((pace) => Math.log(pace));
    expect(logs.reduce((sum, log) => sum + log * log, 0) / logs.length).toBeCloseTo(0.4 ** 2, 9);
  });

  it("shares a pace by duty, or by the name of a common rate", () => {
    expect([paceShared(COMMON), paceShared(OF_A_DUTY)]).toEqual(["all", "ward"]);
  });
});

describe("expectedUses", () => {
  it.each([
    ["of a common rate", COMMON],
    ["of a duty", OF_A_DUTY],
  ])("is what the futures have in the mean: %s", (_, use) => {
    expect(expectedUses(use)).toBeCloseTo(spreadOf(use, 2).mean, 12);
  });
});
