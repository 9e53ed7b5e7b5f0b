import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DAYS_PER_MONTH } from "../../src/calendar/mean-year.ts";
import { chancesServed, unitsServed } from "../../src/supplies/chance-served.ts";
import { chancesUsed, unitsUsed } from "../../src/supplies/chance-used.ts";
import type { PlaceUse } from "../../src/supplies/use-rates.ts";
import { onDays } from "./on-days.ts";

const ONE = Float64Array.of(0, 1);

/** A place whose rate is known: a gamma so narrow that it is one number. */
function place(perMonth: number, sure = 1e9) {
  const rate = { shape: perMonth * sure, exposure: sure };
  const use: PlaceUse = { key: "p", name: "P", device: null, events: 0, months: 0, rate, common: null, prior: null };
  return { from: 0, until: Number.POSITIVE_INFINITY, use, routinePerYear: 0, routineStarted: 0 };
}

const sum = (chances: Float64Array) => chances.reduce((a, b) => a + b, 0);

describe("chancesUsed: FEFO at one place, units coupled", () => {
  // By hand: four units of one expiry and one use expected until then lose E[(4 - N)+], N Poisson of mean 1:
  // 4 - E[min(N, 4)], and the tail sums P(N >= 1) .. P(N >= 4) give E[min(N, 4)]; not 4/e = 1.47
  it("loses E[(4 - N)+] of four units", () => {
    const days = new Array(4).fill(10 * DAYS_PER_MONTH);
    const lost = 4 - sum(chancesUsed(days, place(0.1), ONE));
    // (4 + 3 + 2/2 + 1/6) / e
    expect(lost).toBeCloseTo(49 / 6 / Math.E, 8);
  });

  // By hand: one unit and a gamma rate (shape a, exposure b): used with chance 1 - (b / (b + t))^a
  it("uses one unit with the negative binomial's chance of any event", () => {
    const p = place(0.05, 40);
    const used = chancesUsed([12 * DAYS_PER_MONTH], p, ONE);
    expect(used[0]).toBeCloseTo(1 - (40 / 52) ** 2, 12);
  });

  // By hand: two units, days t1 < t2, known rate u. The second goes if two uses come by t2, or - the first having
  // expired - one use after t1: P(N1 >= 1) * P(N1 + N2 >= 2 | N1 >= 1) + P(N1 = 0) * P(N2 >= 1)
  it("counts an expiry as a unit gone", () => {
    const u = 0.3;
    const [a, b] = [2 * u, 3 * u];
    const used = chancesUsed([2 * DAYS_PER_MONTH, 5 * DAYS_PER_MONTH], place(u), ONE);
    const oneFirst = a * Math.exp(-a);
    const expected = 1 - Math.exp(-a) - oneFirst + oneFirst * (1 - Math.exp(-b)) + Math.exp(-a) * (1 - Math.exp(-b));
    expect(used[0]).toBeCloseTo(1 - Math.exp(-a), 8);
    expect(used[1]).toBeCloseTo(expected, 8);
  });

  // Source: R 4 dnbinom, mean 3, size 2: units of one day are used with the chances of at least 1, 2, 3 ... events
  it("uses units of one day with the negative binomial's tails", () => {
    const rate = { shape: 2, exposure: 2 };
    const p = {
      ...place(1),
      use: { key: "p", name: "P", device: null, events: 0, months: 0, rate, common: null, prior: null },
    };
    const used = chancesUsed(new Array(7).fill(3 * DAYS_PER_MONTH), p, ONE);
    let upTo = 0;
    [0.16, 0.192, 0.1728, 0.13824, 0.10368, 0.0746496, 0.05225472].forEach((chance, k) => {
      upTo += chance;
      expect(used[k]).toBeCloseTo(1 - upTo, 12);
    });
  });

  it("counts what routine consumes as used", () => {
    const weekly = { ...place(0), use: null, routinePerYear: 365.25 / 10, routineStarted: 0 };
    expect([...chancesUsed([15, 15, 35], weekly, ONE)]).toEqual([1, 0, 1]);
  });

  it("a use of two units takes two", () => {
    const twos = Float64Array.of(0, 0, 1);
    const used = chancesUsed([DAYS_PER_MONTH, DAYS_PER_MONTH], place(0.5), twos);
    expect(used[0]).toBeCloseTo(1 - Math.exp(-0.5), 8);
    expect(used[1]).toBeCloseTo(1 - Math.exp(-0.5), 8);
  });

  // By hand: one use expected by then, each of one unit or two alike. With q = 1/e: nothing is taken with q, one unit with
  // q / 2, two with q / 2 + q / 8; so one or more with 1 - q, two or more with 1 - 3q/2, three or more with 1 - 17q/8
  it("uses of one unit or two take what they take together", () => {
    const mixed = Float64Array.of(0, 0.5, 0.5);
    const used = chancesUsed(new Array(3).fill(2 * DAYS_PER_MONTH), place(0.5), mixed);
    const q = 1 / Math.E;
    [1 - q, 1 - (3 * q) / 2, 1 - (17 * q) / 8].forEach((chance, k) => {
      expect(used[k]).toBeCloseTo(chance, 8);
    });
  });

  // By hand: every use takes two of two units. The first lapses after a month without a use; then one unit is left, which the
  // first use takes, wherever its second unit comes from: 1 - q in all that month and q (1 - q) in the next, q = 1 / sqrt(e)
  it("a use of two units takes the one that is left", () => {
    const twos = Float64Array.of(0, 0, 1);
    const used = chancesUsed([DAYS_PER_MONTH, 2 * DAYS_PER_MONTH], place(0.5), twos);
    const q = Math.exp(-0.5);
    expect(used[0]).toBeCloseTo(1 - q, 8);
    expect(used[1]).toBeCloseTo(1 - q + q * (1 - q), 8);
  });

  it("is non-increasing among units of one day, and never lower for a later day", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 900 }), { minLength: 1, maxLength: 7 }),
        fc.double({ min: 0.01, max: 2, noNaN: true }),
        fc.double({ min: 0.2, max: 50, noNaN: true }),
        (days, perMonth, sure) => {
          const sorted = [...days].sort((a, b) => a - b);
          const used = chancesUsed(sorted, place(perMonth, sure), ONE);
          for (let k = 0; k < used.length; k++) {
            expect(used[k]).toBeGreaterThanOrEqual(0);
            expect(used[k]).toBeLessThanOrEqual(1);
            if (k > 0 && sorted[k] === sorted[k - 1]) expect(used[k]).toBeLessThanOrEqual(used[k - 1]! + 1e-12);
          }
          const later = chancesUsed(
            [...sorted.slice(0, -1), sorted[sorted.length - 1]! + 100],
            place(perMonth, sure),
            ONE,
          );
          expect(later[used.length - 1]).toBeGreaterThanOrEqual(used[used.length - 1]! - 1e-12);
        },
      ),
      { seed: 11, numRuns: 60 },
    );
  });
});

describe("chancesServed: a shelf that serves known needs and a stream", () => {
  it("equals chancesUsed where the rate is known and nothing else is needed", () => {
    const days = [40, 40, 90, 300, 300, 301];
    const used = chancesUsed(days, place(0.4), ONE);
    const served = chancesServed(days, { from: 0, known: [], usesPerMonth: 0.4, unitsPerUse: ONE });
    served.forEach((chance, k) => {
      expect(chance).toBeCloseTo(used[k]!, 7);
    });
  });

  it("gives known needs the units that expire first", () => {
    const needs = { from: 0, known: onDays([5, 20, 30]), usesPerMonth: 0, unitsPerUse: ONE };
    expect([...chancesServed([10, 10, 40, 40], needs)]).toEqual([1, 0, 1, 1]);
  });

  it("follows a large shelf in its mean", () => {
    const days = new Array(500).fill(100);
    const needs = {
      from: 0,
      known: onDays(new Array(120).fill(7)),
      usesPerMonth: 10 * DAYS_PER_MONTH,
      unitsPerUse: ONE,
    };
    // 120 known and 1000 expected: all 500 go
    expect(sum(chancesServed(days, needs))).toBe(500);
    expect(sum(chancesServed(days, { ...needs, usesPerMonth: DAYS_PER_MONTH }))).toBeCloseTo(220, 6);
  });
});

describe("units used of runs of one day", () => {
  const sizes = [
    { first: 3, second: 4 },
    { first: 30, second: 90 },
    { first: 300, second: 500 },
  ];

  it.each(sizes)("are the chances of $first and $second units added up", ({ first, second }) => {
    const runs = [
      [60, 400],
      [first, second],
    ] as const;
    const days = [...new Array<number>(first).fill(60), ...new Array<number>(second).fill(400)];
    const ofRuns = (chances: Float64Array) => [sum(chances.slice(0, first)), sum(chances.slice(first))];
    const needs = { from: 0, known: onDays([30, 80]), usesPerMonth: 20, unitsPerUse: ONE };
    const pairs = [
      [unitsServed(...runs, needs), ofRuns(chancesServed(days, needs))],
      [unitsUsed(...runs, place(20), ONE), ofRuns(chancesUsed(days, place(20), ONE))],
    ] as const;
    for (const [units, chances] of pairs) {
      expect(units[0]).toBeCloseTo(chances[0]!, 9);
      expect(units[1]).toBeCloseTo(chances[1]!, 9);
    }
  });
});
