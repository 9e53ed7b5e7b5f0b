import { describe, expect, it } from "vitest";
import { routineDays } from "../../src/supplies/routine-days.ts";

/** A unit every 10 days, as a year has 365.25. */
const EVERY_TEN = 36.525;
const place = (routineStarted: number, from = 100, until = Number.POSITIVE_INFINITY) => {
  return { from, until, routinePerYear: EVERY_TEN, routineStarted };
};
const days = (...args: Parameters<typeof routineDays>) => routineDays(...args).map((day) => Number(day.toFixed(9)));

describe("routineDays", () => {
  // By hand: a unit of which half is gone lasts 5 days more, every other 10; the end and the place's last day no more count
  it("finishes units one after the other, before the end and while the place is in service", () => {
    expect(days(place(0.5), 135)).toEqual([105, 115, 125]);
    expect(days(place(0.5), 136)).toEqual([105, 115, 125, 135]);
    expect(days(place(0.5, 100, 115), 999)).toEqual([105]);
    expect(days(place(0.5, 100, 115.5), 999)).toEqual([105, 115]);
    expect(days(place(0), 121)).toEqual([110, 120]);
    expect(days(place(0.5, 200), 150)).toEqual([]);
  });

  it("tells no more days than asked for", () => {
    expect(days(place(0.5), 999, 2)).toEqual([105, 115]);
    expect(days(place(0.5), 999, 0)).toEqual([]);
  });

  it("finishes none where nothing is consumed", () => {
    expect(routineDays({ ...place(0.5), routinePerYear: 0 }, 999)).toEqual([]);
  });

  // By hand: 7 units a year over ten years of 365.25 days
  it("finishes in the long run as many as the year says", () => {
    expect(routineDays({ ...place(0.5, 0), routinePerYear: 7 }, 3652.5)).toHaveLength(70);
  });
});
