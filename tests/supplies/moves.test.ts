import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DAYS_PER_MONTH } from "../../src/calendar/mean-year.ts";
import { bestAllocation } from "../../src/supplies/best-allocation.ts";
import { chancesUsed } from "../../src/supplies/chance-used.ts";
import { exchangeSteps } from "../../src/supplies/exchange-steps.ts";
import type { MovePlace } from "../../src/supplies/move-place.ts";
import { searchMoves } from "../../src/supplies/move-search.ts";

const ONE = Float64Array.of(0, 1);
const COST = 0.1;

function madeUpPlace(days: readonly number[], perMonth: number): MovePlace {
  const rate = { shape: 4, exposure: 4 / perMonth };
  const use = { key: "p", name: "P", device: null, events: 0, months: 0, rate, common: null, prior: null };
  const place = { from: 0, until: Number.POSITIVE_INFINITY, use, routinePerYear: 0, routineStarted: 0 };
  return {
    days: [...days].sort((a, b) => a - b),
    value: (of) => chancesUsed(of, place, ONE).reduce((a, b) => a + b, 0),
    expectedUses: (day) => (perMonth * day) / DAYS_PER_MONTH,
  };
}

/** Units saved less what carrying them costs. */
function net(places: readonly MovePlace[], after: readonly (readonly number[])[]): number {
  return places.reduce((sum, place, index) => {
    const before = [...place.days];
    const arrived = after[index]!.filter((day) => {
      const at = before.indexOf(day);
      if (at >= 0) before.splice(at, 1);
      return at < 0;
    }).length;
    return sum + place.value(after[index]!) - place.value(place.days) - COST * arrived;
  }, 0);
}

/** The best allocation, by dealing single units out in every order: no shortcuts shared with the code under test. */
function bruteForce(places: readonly MovePlace[]): number {
  const units = places.flatMap((place) => place.days);
  let best = 0;
  const dealt: number[][] = places.map(() => []);
  const deal = (unit: number) => {
    if (unit === units.length) {
      best = Math.max(
        best,
        net(
          places,
          dealt.map((days) => [...days].sort((a, b) => a - b)),
        ),
      );
      return;
    }
    places.forEach((place, index) => {
      if (dealt[index]!.length === place.days.length) return;
      dealt[index]!.push(units[unit]!);
      deal(unit + 1);
      dealt[index]!.pop();
    });
  };
  deal(0);
  return best;
}

/** The baseline: the shortest-dated unit of the slowest place for the longest-dated of the busiest, while that helps. */
function shortToBusy(places: readonly MovePlace[]): number {
  const state = places.map((place) => [...place.days]);
  const busyFirst = places.map((_, i) => i).sort((a, b) => places[b]!.expectedUses(1) - places[a]!.expectedUses(1));
  for (let turn = 0; turn < places.length / 2; turn++) {
    const busy = state[busyFirst[turn]!]!;
    const quiet = state[busyFirst[places.length - 1 - turn]!]!;
    for (let swap = 0; swap < Math.min(busy.length, quiet.length); swap++) {
      const short = Math.min(...quiet);
      const long = Math.max(...busy);
      if (short >= long) break;
      quiet[quiet.indexOf(short)] = long;
      busy[busy.indexOf(long)] = short;
    }
  }
  return net(
    places,
    state.map((days) => days.sort((a, b) => a - b)),
  );
}

const smallCase = fc.array(
  fc.record({
    months: fc.array(fc.integer({ min: 1, max: 20 }), { minLength: 1, maxLength: 2 }),
    perMonth: fc.double({ min: 0.01, max: 1.2, noNaN: true }),
  }),
  { minLength: 2, maxLength: 3 },
);
const placesOf = (made: readonly { months: number[]; perMonth: number }[]) =>
  made.map(({ months, perMonth }) =>
    madeUpPlace(
      months.map((m) => m * DAYS_PER_MONTH),
      perMonth,
    ),
  );

describe("searchMoves", () => {
  it("finds the best of all allocations on small cases, and keeps every place's count and every unit", () => {
    fc.assert(
      fc.property(smallCase, (made) => {
        const places = placesOf(made);
        const { days, saved } = searchMoves(places, COST);
        expect(days.map((of) => of.length)).toEqual(places.map((place) => place.days.length));
        expect(days.flat().sort((a, b) => a - b)).toEqual(places.flatMap((place) => place.days).sort((a, b) => a - b));
        expect(net(places, days)).toBeCloseTo(bruteForce(places), 8);
        const value = days.reduce((sum, of, i) => sum + places[i]!.value(of) - places[i]!.value(places[i]!.days), 0);
        expect(saved).toBeCloseTo(value, 8);
      }),
      { seed: 31, numRuns: 60 },
    );
  });

  it("step by step it reaches at least nine tenths of what is best, in all cases together", () => {
    let best = 0;
    let reached = 0;
    let baseline = 0;
    const cases = fc.sample(
      fc.array(
        fc.record({
          months: fc.array(fc.integer({ min: 1, max: 24 }), { minLength: 1, maxLength: 3 }),
          perMonth: fc.double({ min: 0.01, max: 1.2, noNaN: true }),
        }),
        { minLength: 3, maxLength: 4 },
      ),
      { seed: 32, numRuns: 150 },
    );
    for (const made of cases) {
      const places = placesOf(made);
      const exact = bestAllocation(places, COST);
      if (!exact) continue;
      const steps = exchangeSteps(places, COST);
      const gained = net(places, steps.days);
      expect(gained).toBeGreaterThanOrEqual(0);
      best += net(places, exact.days);
      reached += gained;
      baseline += shortToBusy(places);
    }
    expect(best).toBeGreaterThan(5);
    expect(reached / best).toBeGreaterThan(0.9);
    expect(reached).toBeGreaterThan(baseline * 1.1);
  });

  // By hand: a place by itself has nobody to exchange with; the ways in which its 40 days cannot be dealt are 2^40
  it("comes to an end where a place holds many units of many days", () => {
    const many = Array.from({ length: 40 }, (_, n) => (n + 1) * 20);
    const busy = madeUpPlace(many, 3);
    expect(searchMoves([busy], COST)).toMatchObject({ days: [many], saved: 0 });
    const quiet = madeUpPlace([100], 0.01);
    const { days } = searchMoves([busy, quiet], COST);
    expect(days.map((of) => of.length)).toEqual([40, 1]);
    expect(days.flat().sort((a, b) => a - b)).toEqual([...many, 100].sort((a, b) => a - b));
  });

  // By hand, four events behind each rate: a unit with 3 months at 0.05 a month is used with 1 - (80/83)^4 = 0.137, one
  // with 24 months at 0.5 a month with 1 - (8/32)^4 = 0.996; exchanged, 1 - (8/11)^4 = 0.720 and 1 - (80/104)^4 = 0.650
  it("moves a short-dated unit to where it gets used", () => {
    const places = [madeUpPlace([3 * DAYS_PER_MONTH], 0.05), madeUpPlace([24 * DAYS_PER_MONTH], 0.5)];
    const { days, saved } = searchMoves(places, COST);
    expect(days).toEqual([[24 * DAYS_PER_MONTH], [3 * DAYS_PER_MONTH]]);
    expect(saved).toBeCloseTo(0.72 + 0.65 - 0.137 - 0.996, 2);
  });

  // By hand: where nothing is ever used, whatever stands there lapses: the long-dated unit would, too
  it("leaves a short-dated unit where an exchange only makes a longer one lapse", () => {
    const places = [madeUpPlace([DAYS_PER_MONTH], 0.001), madeUpPlace([24 * DAYS_PER_MONTH], 4)];
    expect(searchMoves(places, COST).saved).toBe(0);
  });
});
