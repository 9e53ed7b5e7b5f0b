import { describe, expect, it } from "vitest";
import { dayCovered } from "../../src/supplies/day-covered.ts";
import { day, ordered } from "../fleet/make-rows.ts";

const AS_OF = day("2026-11-25");
const coming = (quantity: number, days: number | null) =>
  ordered("Pads", quantity, { arrives: days === null ? null : AS_OF + days });

describe("dayCovered", () => {
  // By hand, of 5 units lacking; days from as-of
  it.each([
    ["the day of the order that completes them", [coming(2, 9), coming(3, 20), coming(9, 25)], 30, 20],
    ["in whatever order the rows stand", [coming(9, 25), coming(3, 20), coming(2, 9)], 30, 20],
    ["an order of today, where what is coming falls one short", [coming(2, 9), coming(2, 20)], 30, 30],
    ["an order of today, where that is sooner", [coming(5, 31)], 30, 30],
    ["what is coming, where nobody knows how long an order takes", [coming(5, 31)], null, 31],
    ["no known day, where neither has one", [coming(4, 31)], null, null],
    ["as-of, where what was to come before has not", [coming(5, -40)], 30, 0],
    ["an order without a date as one of today", [coming(5, null)], 30, 30],
    ["no known day for an order without a date or a lead time", [coming(5, null)], null, null],
    ["no day before all of several of one day", [coming(3, 9), coming(2, 9)], 30, 9],
  ])("is %s", (_, orders, leadDays, days) => {
    expect(dayCovered(5, orders, leadDays, AS_OF)).toBe(days === null ? null : AS_OF + days);
  });

  it("is as-of where nothing is lacking, whatever is coming", () => {
    expect(dayCovered(0, [], null, AS_OF)).toBe(AS_OF);
    expect(dayCovered(0, [coming(5, 9)], 30, AS_OF)).toBe(AS_OF);
  });
});
