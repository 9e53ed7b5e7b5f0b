import { describe, expect, it } from "vitest";
import { seededRandom } from "../../src/maths/random.ts";
import { shuffled } from "../../src/maths/shuffled.ts";

describe("shuffled", () => {
  it("holds every number once", () => {
    expect([...shuffled(50, seededRandom(1))].sort((a, b) => a - b)).toEqual(Array.from({ length: 50 }, (_, i) => i));
    expect(shuffled(0, seededRandom(1))).toHaveLength(0);
  });

  // By hand: each of the 3! orders comes one time in six; 6000 deals scatter by sqrt(6000 * 5 / 36) = 29 about 1000.
  it("deals every order equally often", () => {
    const random = seededRandom(2);
    const counts = new Map<string, number>();
    for (let i = 0; i < 6000; i++) {
      const order = shuffled(3, random).join("");
      counts.set(order, (counts.get(order) ?? 0) + 1);
    }
    expect(counts.size).toBe(6);
    for (const count of counts.values()) expect(Math.abs(count - 1000)).toBeLessThan(4 * 29);
  });
});
