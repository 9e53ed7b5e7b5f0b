import { describe, expect, it } from "vitest";
import { chancesServed, type KnownNeed } from "../../src/supplies/chance-served.ts";
import { onDays } from "./on-days.ts";

const MONTH_DAYS = 365.25 / 12;
const ONE = Float64Array.of(0, 1);

describe("chancesServed", () => {
  // By hand: with one use a month on average, none falls in a month with chance 1/e, and one with the same chance
  it("serves a unit where a use falls before its last day, a second one where two do", () => {
    const [first, second] = chancesServed([MONTH_DAYS, MONTH_DAYS], {
      ...{ from: 0, known: [], usesPerMonth: 1 },
      unitsPerUse: ONE,
    });
    expect(first).toBeCloseTo(1 - Math.exp(-1), 12);
    expect(second).toBeCloseTo(1 - 2 * Math.exp(-1), 12);
  });

  // By hand: a use takes one or two units with even chance, so that no unit is taken where no use falls, 1/e, and one
  // where a single use takes one, 1/(2e)
  it("has a use take several units", () => {
    const [first, second] = chancesServed([MONTH_DAYS, MONTH_DAYS], {
      ...{ from: 0, known: [], usesPerMonth: 1 },
      unitsPerUse: Float64Array.of(0, 0.5, 0.5),
    });
    expect(first).toBeCloseTo(1 - Math.exp(-1), 12);
    expect(second).toBeCloseTo(1 - 1.5 * Math.exp(-1), 12);
  });

  // By hand: thirty uses a month of two or four units each take ninety of a thousand units in a month
  it("follows many units in their mean", () => {
    const served = chancesServed(new Array<number>(1000).fill(MONTH_DAYS), {
      ...{ from: 0, known: [], usesPerMonth: 30 },
      unitsPerUse: Float64Array.of(0, 0, 0.5, 0, 0.5),
    });
    expect(served.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(90, 6);
  });

  // By hand: the need of day 10 takes the first unit, that of day 50 comes after the second's last day
  it("has a unit that lapsed serve no later need", () => {
    const needs = { from: 0, known: onDays([10, 50]), usesPerMonth: 0, unitsPerUse: ONE };
    expect([...chancesServed([20, 40, 60], needs)]).toEqual([1, 0, 1]);
  });

  // By hand: a unit that may be fitted today for the last time goes to the one of two needs of today; of many units, two do
  it("serves today's needs with what may be fitted today for the last time", () => {
    const needs = { from: 10, known: onDays([10, 10]), usesPerMonth: 3, unitsPerUse: ONE };
    expect([...chancesServed([10], needs)]).toEqual([1]);
    expect(chancesServed(new Array<number>(401).fill(10), needs).slice(0, 3)).toEqual(Float64Array.of(1, 1, 0));
  });

  // By hand: of two units in devices that lapse with chances 1/2 and 1/4 none does with chance 3/8, both with 1/8; the
  // third lapses after the last day
  it("serves what lapses in a device as likely as it does, and of many units in the mean", () => {
    const known: KnownNeed[] = [
      [10, 0.5],
      [20, 0.25],
      [21, 1],
    ];
    const needs = { from: 0, known, usesPerMonth: 0, unitsPerUse: ONE };
    expect([...chancesServed([20, 20, 20], needs)]).toEqual([0.625, 0.125, 0]);
    expect([...chancesServed(new Array<number>(401).fill(20), needs)].slice(0, 2)).toEqual([0.75, 0]);
  });
});
