import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../src/calendar/day.ts";
import { DAYS_PER_MONTH } from "../../src/calendar/mean-year.ts";
import { nameKey } from "../../src/fleet/name-key.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { type DatedStockRow, emptyFleet, type Fleet } from "../../src/fleet/rows.ts";
import { gammaQuantile } from "../../src/maths/gamma-distribution.ts";
import { type Random, seededRandom } from "../../src/maths/random.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { COST_PER_UNIT_MOVED } from "../../src/supplies/moves.ts";
import type { Move } from "../../src/supplies/types.ts";
import { day, device, stock, use } from "../fleet/make-rows.ts";

/*
 * A simulated year of 40 places: what is proposed from a two-year log, against the uses that then come. All figures
 * are made up; the point is that what is promised is what is seen.
 */

const asOf = day("2026-11-01");
const policy = { ...defaultPolicy(asOf), useLogFrom: asOf - 730, swapBeforeExpiryDays: 14 };
const PLACES = 40;
const SEEDS = 50;

interface World {
  fleet: Fleet;
  /** True uses a day, by place key. */
  rates: Map<string, number>;
}

function makeWorld(seed: number, rateOf: (random: Random) => number): World {
  const random = seededRandom(seed);
  const devices = Array.from({ length: PLACES }, (_, i) => device(`Van ${i}`, { duty: "ambulance" }));
  const rates = new Map(devices.map((d) => [nameKey(d.device), rateOf(random)]));
  const useLog = devices.flatMap((d) => {
    const days: string[] = [];
    for (let at = asOf - 730; ; ) {
      at -= Math.log(random.uniform()) / rates.get(nameKey(d.device))!;
      if (at >= asOf) break;
      days.push(isoFromDay(Math.floor(at)));
    }
    return days.map((date) => use(date, "Pads", d.device));
  });
  const datedStock = devices.flatMap((d) =>
    Array.from({ length: 3 }, (_, unit) => {
      const expiry = isoFromDay(asOf + 40 + Math.floor(random.uniform() * 340));
      return stock("Pads", expiry, d.device, { lot: `L${unit}` });
    }),
  );
  return { fleet: { ...emptyFleet(), devices, datedStock, useLog }, rates };
}

/** Uses of the year after as-of by place, the same whatever moves are made. */
function usesOfYear(world: World, seed: number): Map<string, number[]> {
  const random = seededRandom(seed + 10_000);
  return new Map(
    [...world.rates].map(([key, rate]) => {
      const days: number[] = [];
      for (let at = asOf; at < asOf + 400; ) {
        at -= Math.log(random.uniform()) / rate;
        days.push(at);
      }
      return [key, days];
    }),
  );
}

/** Units that lapse: FEFO at each place, replacements expiring later than everything that stands there now. */
function lapsed(stockOf: ReadonlyMap<string, number[]>, uses: ReadonlyMap<string, number[]>): number {
  let count = 0;
  for (const [key, days] of stockOf) {
    const left = [...days].sort((a, b) => a - b);
    for (const at of uses.get(key)!) {
      while (left.length > 0 && left[0]! <= at) {
        left.shift();
        count++;
      }
      if (left.length === 0) break;
      left.shift();
    }
    count += left.length;
  }
  return count;
}

const swapDay = (row: DatedStockRow) => row.expiry - policy.swapBeforeExpiryDays;

function stockByPlace(fleet: Fleet): Map<string, number[]> {
  const found = new Map<string, number[]>(fleet.devices.map((d) => [nameKey(d.device), []]));
  for (const row of fleet.datedStock) found.get(nameKey(row.place!))!.push(swapDay(row));
  return found;
}

/** Carries out the moves as a driver would: by place, item and lot, the unit of that lot that expires first. */
function afterMoves(fleet: Fleet, moves: readonly Move[]): Map<string, number[]> {
  const lots = new Map<string, { lot: string | null; day: number }[]>();
  for (const row of fleet.datedStock) {
    const key = nameKey(row.place!);
    lots.set(key, [...(lots.get(key) ?? []), { lot: row.lot, day: swapDay(row) }]);
  }
  const carried = moves.flatMap(({ from, to, lot, quantity }) =>
    Array.from({ length: quantity }, () => {
      const here = lots.get(nameKey(from))!;
      const at = here.findIndex((unit) => unit.lot === lot);
      expect(at).toBeGreaterThanOrEqual(0);
      return { to, unit: here.splice(at, 1)[0]! };
    }),
  );
  for (const { to, unit } of carried) lots.get(nameKey(to))!.push(unit);
  return new Map([...lots].map(([key, units]) => [key, units.map((unit) => unit.day)]));
}

/**
 * The baseline: short-dated units of slow places for long-dated ones of busy places, by the same estimated rates, the
 * places furthest apart first. What stands where after 0, 1, 2 ... exchanges.
 */
function shortToBusy(fleet: Fleet): Map<string, number[]>[] {
  const { needing } = forecastDatedStock(fleet, policy);
  const byRate = [...needing.items[0]!.use!.places].sort(
    (a, b) => b.rate.shape / b.rate.exposure - a.rate.shape / a.rate.exposure,
  );
  const state = stockByPlace(fleet);
  const states = [stockByPlace(fleet)];
  for (let turn = 0; turn < byRate.length / 2; turn++) {
    const busy = state.get(byRate[turn]!.key)!;
    const quiet = state.get(byRate[byRate.length - 1 - turn]!.key)!;
    const short = Math.min(...quiet);
    const long = Math.max(...busy);
    if (short < long) {
      quiet[quiet.indexOf(short)] = long;
      busy[busy.indexOf(long)] = short;
    }
    states.push(new Map([...state].map(([key, days]) => [key, [...days]])));
  }
  return states;
}

/**
 * A greedy rule with more sense: the soonest-dated units first, each from a place that is not expected to use it to
 * the busiest place that is expected to, by the same estimated rates, against that place's longest-dated unit.
 */
function shortToWhereUsed(fleet: Fleet): Map<string, number[]> {
  const { needing } = forecastDatedStock(fleet, policy);
  const perDay = new Map(
    needing.items[0]!.use!.places.map(({ key, rate }) => [key, rate.shape / rate.exposure / DAYS_PER_MONTH]),
  );
  const busiestFirst = [...perDay].sort(([, a], [, b]) => b - a).map(([key]) => key);
  const state = stockByPlace(fleet);
  const upTo = (key: string, day: number) => state.get(key)!.filter((other) => other <= day).length;
  const expected = (key: string, day: number) => perDay.get(key)! * (day - asOf);
  const units = [...state].flatMap(([key, days]) => days.map((day) => ({ key, day }))).sort((a, b) => a.day - b.day);
  for (const { key, day } of units) {
    if (!state.get(key)!.includes(day) || expected(key, day) >= upTo(key, day)) continue;
    const to = busiestFirst.find(
      (other) => expected(other, day) >= upTo(other, day) + 1 && Math.max(...state.get(other)!) > day,
    );
    if (to === undefined || to === key) continue;
    const long = Math.max(...state.get(to)!);
    state.get(key)!.splice(state.get(key)!.indexOf(day), 1, long);
    state.get(to)!.splice(state.get(to)!.indexOf(long), 1, day);
  }
  return state;
}

function meanAndError(values: readonly number[]): { mean: number; error: number } {
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  const variance = values.reduce((a, v) => a + (v - mean) ** 2, 0) / (values.length - 1);
  return { mean, error: Math.sqrt(variance / values.length) };
}

/** "12.3 (11.8 to 12.8)": a mean with its interval of 95 %. */
function told(values: readonly number[]): string {
  const { mean, error } = meanAndError(values);
  return `${mean.toFixed(2)} (${(mean - 1.96 * error).toFixed(2)} to ${(mean + 1.96 * error).toFixed(2)})`;
}

describe("moves in a simulated year of 40 places", () => {
  const worlds = Array.from({ length: SEEDS }, (_, seed) => {
    // rates from one in four months to a few a month
    const world = makeWorld(seed, (random) => (gammaQuantile(0.9, random.uniform()) * 0.35) / 30);
    const forecast = forecastDatedStock(world.fleet, policy);
    const promised = forecast.moves.reduce((sum, move) => sum + move.unitsSaved, 0);
    // each future is one of many: several a world make the comparison sharper
    const futures = Array.from({ length: 20 }, (_, future) => usesOfYear(world, seed * 20 + future));
    const meanLapsed = (of: ReadonlyMap<string, number[]>) =>
      futures.reduce((sum, uses) => sum + lapsed(of, uses), 0) / futures.length;
    const left = meanLapsed(stockByPlace(world.fleet));
    const moved = meanLapsed(afterMoves(world.fleet, forecast.moves));
    const sensible = meanLapsed(shortToWhereUsed(world.fleet));
    const greedyAfter = shortToBusy(world.fleet).map(meanLapsed);
    return { moves: forecast.moves, promised, left, moved, sensible, greedyAfter };
  });

  // greedy is let off lightly: it stops after the number of exchanges that turns out best over all worlds
  const exchanges = worlds[0]!.greedyAfter.map((_, count) => count);
  const meanAfter = exchanges.map((count) => meanAndError(worlds.map(({ greedyAfter }) => greedyAfter[count]!)).mean);
  const best = meanAfter.indexOf(Math.min(...meanAfter));
  const overGreedy = (count: number) => worlds.map(({ greedyAfter, moved }) => greedyAfter[count]! - moved);

  it("saves what it promises, within sampling error", () => {
    const gap = meanAndError(worlds.map(({ promised, left, moved }) => left - moved - promised));
    expect(Math.abs(gap.mean)).toBeLessThan(2.5 * gap.error);
    const saved = meanAndError(worlds.map(({ left, moved }) => left - moved));
    expect(saved.mean - 2 * saved.error).toBeGreaterThan(1);
  });

  it("is worth its moves: units lapsed with them, with greedy short-to-busy and under FEFO alone", () => {
    const unitsMoved = worlds.map(({ moves }) => moves.reduce((sum, { quantity }) => sum + quantity, 0));
    console.log(
      [
        `${SEEDS} years of ${PLACES} places and ${3 * PLACES} units, means with intervals of 95 %:`,
        `units lapsed under FEFO alone ${told(worlds.map(({ left }) => left))}`,
        `with greedy short-to-busy, all ${PLACES / 2} exchanges ${told(worlds.map(({ greedyAfter }) => greedyAfter[PLACES / 2]!))}`,
        `with greedy stopped after ${best}, the best in hindsight ${told(worlds.map(({ greedyAfter }) => greedyAfter[best]!))}`,
        `with greedy to where a unit is expected to be used ${told(worlds.map(({ sensible }) => sensible))}`,
        `with the moves proposed ${told(worlds.map(({ moved }) => moved))}, by ${told(unitsMoved)} units moved`,
        `saved ${told(worlds.map(({ left, moved }) => left - moved))}, more than by greedy at its best ${told(overGreedy(best))}`,
        `promised ${told(worlds.map(({ promised }) => promised))}`,
      ].join("\n"),
    );
    const net = meanAndError(worlds.map(({ left, moved }, at) => left - moved - COST_PER_UNIT_MOVED * unitsMoved[at]!));
    expect(net.mean - 2 * net.error).toBeGreaterThan(0);
  });

  it("beats doing nothing and greedy short-to-busy", () => {
    for (const count of [0, best, PLACES / 2]) {
      const over = meanAndError(overGreedy(count));
      expect(over.mean - 2 * over.error).toBeGreaterThan(0);
    }
  });

  it("beats greedy moves to where a unit is expected to be used", () => {
    const over = meanAndError(worlds.map(({ sensible, moved }) => sensible - moved));
    expect(over.mean - 2 * over.error).toBeGreaterThan(0);
  });

  it("lists no move whose share of what its exchange saves is within what it costs", () => {
    for (const { moves } of worlds) {
      for (const { quantity, unitsSaved } of moves) expect(unitsSaved).toBeGreaterThan(COST_PER_UNIT_MOVED * quantity);
    }
  });

  it("keeps every place's count", () => {
    for (const { moves } of worlds) {
      const balance = new Map<string, number>();
      for (const { from, to, quantity } of moves) {
        balance.set(from, (balance.get(from) ?? 0) - quantity);
        balance.set(to, (balance.get(to) ?? 0) + quantity);
      }
      expect([...balance.values()].every((units) => units === 0)).toBe(true);
    }
  });

  it("proposes no moves where rates do not differ", () => {
    for (let seed = 0; seed < SEEDS; seed++) {
      const world = makeWorld(seed + 500, () => 0.35 / 30);
      expect(forecastDatedStock(world.fleet, policy).moves).toEqual([]);
    }
  });
});
