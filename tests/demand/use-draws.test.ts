import { describe, expect, it } from "vitest";
import { dealEvents } from "../../src/demand/use-draws.ts";
import type { GammaRate } from "../../src/maths/gamma-poisson.ts";
import { seededRandom } from "../../src/maths/random.ts";
import { negativeBinomial } from "../maths/negative-binomial.ts";

const FUTURES = Uint32Array.from({ length: 500 }, (_, n) => 3 * n);

/** The events dealt to each future. */
function dealt(rate: GammaRate, time: number, among = FUTURES): Map<number, number> {
  const found = new Map<number, number>();
  dealEvents(rate, time, among, seededRandom(3), (future, events) => {
    expect(found.has(future)).toBe(false);
    expect(among).toContain(future);
    expect(events).toBeGreaterThan(0);
    found.set(future, events);
  });
  return found;
}

describe("dealEvents", () => {
  // Uses whose rate is gamma distributed are negative binomial (Greenwood & Yule 1920)
  it.each([
    [{ shape: 0.5, exposure: 10 }, 36],
    [{ shape: 3, exposure: 20 }, 12],
    [{ shape: 40, exposure: 2 }, 36],
    [{ shape: 100, exposure: 1 }, 36],
  ])("deals as many futures each number of events as it has chance, to the one: rate %j, %i months", (rate, time) => {
    const events = [...dealt(rate, time).values()];
    const most = Math.max(...events);
    const chances = negativeBinomial(rate, time, most);
    let below = 0;
    for (let n = 0; n < most; n++) {
      below += chances[n]!;
      const upTo = FUTURES.length - events.filter((one) => one > n).length;
      expect(Math.abs(upTo - below * FUTURES.length)).toBeLessThanOrEqual(1 + 1e-6);
    }
    expect(1 - below - chances[most]!).toBeLessThan(2 / FUTURES.length);
  });

  // A rate that is certain: Poisson with mean 30, whose variance is 30, too
  it("deals Poisson counts where the rate is certain", () => {
    const events = [...dealt({ shape: 1e9, exposure: 1e9 / 2.5 }, 12).values()];
    const mean = events.reduce((sum, n) => sum + n, 0) / FUTURES.length;
    expect(mean).toBeCloseTo(30, 1);
    expect(events.reduce((sum, n) => sum + (n - mean) ** 2, 0) / FUTURES.length).toBeCloseTo(30, 0);
  });

  it("deals nothing in no time", () => {
    expect(dealt({ shape: 5, exposure: 1 }, 0).size).toBe(0);
    expect(dealt({ shape: 5, exposure: 1 }, -3).size).toBe(0);
    expect(dealt({ shape: 5, exposure: 1 }, 12, new Uint32Array(0)).size).toBe(0);
  });
});
