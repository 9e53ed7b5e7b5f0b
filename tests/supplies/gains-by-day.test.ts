import { expect, it } from "vitest";
import { GainsByDay } from "../../src/supplies/gains-by-day.ts";

it("GainsByDay knows the days asked, in whatever order, and the next later one", () => {
  const gains = new GainsByDay();
  expect([gains.at(5), gains.ofLater(5)]).toEqual([null, Number.POSITIVE_INFINITY]);
  for (const day of [30, 10, 20, 15]) gains.add(day, day / 10);
  expect([9, 10, 11, 15, 20, 30, 31].map((day) => gains.at(day))).toEqual([null, 1, null, 1.5, 2, 3, null]);
  expect([9, 10, 11, 16, 21, 30, 31].map((day) => gains.ofLater(day))).toEqual([1, 1, 1.5, 2, 3, 3, Infinity]);
});
