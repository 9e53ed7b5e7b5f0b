import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../src/calendar/day.ts";
import { DAYS_PER_MONTH } from "../../src/calendar/mean-year.ts";
import { forecastDemand } from "../../src/demand/forecast-demand.ts";
import type { ItemDemand } from "../../src/demand/types.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { type DatedStockRow, emptyFleet, type Fleet } from "../../src/fleet/rows.ts";
import { convolve } from "../../src/maths/convolution.ts";
import { gammaQuantile } from "../../src/maths/gamma-distribution.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { catalogued, day, device, stock, use } from "../fleet/make-rows.ts";
import { negativeBinomial } from "../maths/negative-binomial.ts";
import { madeUpLife } from "./made-up-life.ts";

const MONTHS = 36;
const logFrom = day("2024-11-01");
const policy = { ...defaultPolicy(day("2026-11-01")), horizonMonths: MONTHS, useLogFrom: logFrom };
/** The chance error of 2000 futures at a level is 0.011 at the most (one standard deviation); of a 95 % level 0.005. */
const CLOSE = 0.02;

/** One use a device in the log: they spread less than chance would have it, so all devices have one rate in common. */
function demandOf(devices: number, stockAt: (name: string) => DatedStockRow[]): ItemDemand {
  const names = Array.from({ length: devices }, (_, i) => `D${i}`);
  const fleet: Fleet = {
    ...emptyFleet(),
    devices: names.map((name) => device(name, { duty: "ward" })),
    catalogue: [catalogued("Pads", "pads", { carriedBy: ["ward"] })],
    datedStock: names.flatMap(stockAt),
    useLog: names.map((name) => use("2026-01-15", "Pads", name)),
  };
  const life = madeUpLife(MONTHS, [], () => 0);
  return forecastDemand(policy, life, forecastDatedStock(fleet, policy))[0]!;
}
const rateOf = (devices: number) => ({
  shape: devices,
  exposure: (devices * (policy.asOf - logFrom)) / DAYS_PER_MONTH,
});
const monthsOf = (from: string, to: string) => (day(to) - day(from)) / DAYS_PER_MONTH;

/** At every level asked for, the quantile is the exact one but for a small error of the level. */
function expectClose(demand: ItemDemand, after: number, through: number, exact: Float64Array): void {
  const upTo = exact.map((_, n) => exact.subarray(0, n + 1).reduce((sum, chance) => sum + chance, 0));
  for (const level of [0.05, 0.2, 0.5, 0.8, 0.95]) {
    const found = demand.needsQuantile(after, through, level);
    expect(upTo[found]!, `${found} in ${after + 1}-${through} at ${level}`).toBeGreaterThan(level - CLOSE);
    expect(upTo[found - 1] ?? 0, `${found} in ${after + 1}-${through} at ${level}`).toBeLessThan(level + CLOSE);
  }
}

describe.each([120, 150, 240, 600])("forecastDemand: %i places that share runs", (devices) => {
  const rate = rateOf(devices);

  // The uses of places with one gamma distributed rate are negative binomial in any span (Greenwood & Yule 1920,
  // Journal of the Royal Statistical Society 83, 255-279)
  it.each<[string, string, number, number]>([
    ["2026-11-01", "2029-11-01", -1, 35],
    ["2027-11-01", "2028-11-01", 11, 23],
    ["2027-03-01", "2027-06-01", 3, 6],
    ["2029-10-01", "2029-11-01", 34, 35],
  ])("uses from %s to %s have the negative binomial's quantiles", (from, to, after, through) => {
    const demand = demandOf(devices, () => []);
    expectClose(demand, after, through, negativeBinomial(rate, devices * monthsOf(from, to), 4 * devices));
  });

  // By hand: given a rate u, each device's unit lasts unused to its swap day, 1 November 2028, with chance exp(-u R), and
  // leaves on it; uses of that month come on top
  it("units that nobody used leave by expiry, as many as the binomial has it", () => {
    const demand = demandOf(devices, (name) => [stock("Pads", "2028-11-15", name)]);
    const RATES = 200;
    const exact = new Float64Array(4 * devices);
    for (let i = 0; i < RATES; i++) {
      const u = gammaQuantile(rate.shape, (i + 0.5) / RATES) / rate.exposure;
      const unused = binomial(devices, Math.exp(-u * monthsOf("2026-11-01", "2028-11-01")));
      const certain = { shape: 1e9, exposure: 1e9 / u };
      const inMonth = negativeBinomial(certain, devices * monthsOf("2028-11-01", "2028-12-01"), devices);
      convolve(unused, inMonth).forEach((chance, n) => {
        exact[n] = exact[n]! + chance / RATES;
      });
    }
    expectClose(demand, 23, 24, exact);
  });
});

describe("forecastDemand: a busy place", () => {
  // By hand: 1,500 uses in the log's two years leave a rate with a standard deviation of 1/sqrt(1500) of its mean; in three
  // years 2,251 are expected, with a standard deviation of sqrt(2251 + 2251 * 2251 / 1500) = 75.0, nearly normal
  it("expects thousands of uses, whose chance of being none is too small for a number", () => {
    const uses = Array.from({ length: 1500 }, (_, n) =>
      use(isoFromDay(logFrom + Math.floor((n * 729) / 1500)), "Pads", "Store"),
    );
    const fleet: Fleet = { ...emptyFleet(), catalogue: [catalogued("Pads", "pads")], useLog: uses };
    const demand = forecastDemand(
      policy,
      madeUpLife(MONTHS, [], () => 0),
      forecastDatedStock(fleet, policy),
    )[0]!;
    const mean = (1500 * (day("2029-11-01") - policy.asOf)) / (policy.asOf - logFrom);
    expect(demand.causes.use.reduce((sum, units) => sum + units, 0)).toBeCloseTo(mean, 6);
    const deviation = Math.sqrt(mean + (mean * mean) / 1500);
    for (const [level, k] of [
      [0.05, -1.645],
      [0.5, 0],
      [0.95, 1.645],
    ] as const) {
      expect(Math.abs(demand.needsQuantile(-1, 35, level) - (mean + k * deviation))).toBeLessThan(0.05 * deviation);
    }
  });
});

function binomial(trials: number, chance: number): Float64Array {
  let sum: Float64Array = Float64Array.of(1);
  for (let trial = 0; trial < trials; trial++) sum = convolve(sum, Float64Array.of(1 - chance, chance));
  return sum;
}
