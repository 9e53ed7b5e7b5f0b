import { describe, expect, it } from "vitest";
import { ratesDiffer } from "../../src/supplies/rates-differ.ts";
import type { ItemUse } from "../../src/supplies/use-rates.ts";
import { device } from "../fleet/make-rows.ts";

/** Places at which so many events were seen in 12 months each. */
function useAt(events: readonly number[], store = 0): ItemUse {
  const rate = { shape: 1, exposure: 12 };
  const places = events.map((count, n) => ({
    ...{ key: `d${n}`, name: `D${n}`, events: count, months: 12, rate, common: null, prior: null },
    device: device(`D${n}`),
  }));
  const stores = store === 0 ? [] : [{ ...places[0]!, key: "store", device: null, events: store }];
  return { places: [...places, ...stores], unitsPerUse: Float64Array.of(0, 1), meanUnitsPerUse: 1 };
}
const repeated = (count: number, ...events: number[]) => Array.from({ length: count }, () => events).flat();

/*
 * By hand: where the places' rates are gamma distributed with shape r about a mean of m events, counts have variance
 * m + m^2 / r; equal counts, or such as spread less than their mean, speak for one rate.
 */
describe("ratesDiffer", () => {
  it("does not see in counts that spread as chance would have it, or less, that places differ", () => {
    expect(ratesDiffer(useAt(repeated(20, 3)))).toBe(false);
    // Poisson with mean 2, as near as 40 places come: 5, 11, 11, 7, 4, 2
    const byChance = [5, 11, 11, 7, 4, 2].flatMap((places, count) => repeated(places, count));
    expect(ratesDiffer(useAt(byChance))).toBe(false);
    expect(ratesDiffer(useAt(repeated(20, 0)))).toBe(false);
    expect(ratesDiffer(useAt([7]))).toBe(false);
  });

  /*
   * By hand: of places with 0 and with 8 events one rate of 4 has a log likelihood of
   * (-4) + (-4 + 8 ln 4 - ln 8!) = -7.51 a pair. Rates of 0 and 8 each have 0 + (-8 + 8 ln 8 - ln 8!) = -1.97, to be found
   * with a chance of a half each: -3.35. The gain is at most 4.16 a pair, 4.78 is wanted: one pair is too little for any
   * spread of rates, and ten pairs are plenty.
   */
  it("sees it where they spread far more, and not from one pair", () => {
    expect(ratesDiffer(useAt(repeated(10, 0, 8)))).toBe(true);
    expect(ratesDiffer(useAt([0, 8]))).toBe(false);
  });

  it("does not ask what a store hands out", () => {
    expect(ratesDiffer(useAt(repeated(20, 3), 500))).toBe(false);
  });
});
