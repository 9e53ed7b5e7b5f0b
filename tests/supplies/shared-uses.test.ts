import { expect, it } from "vitest";
import { SharedUses } from "../../src/supplies/shared-uses.ts";

function sharer(inService: number | null) {
  return { device: { inService }, place: { events: 0 } };
}

// By hand: the uses of days 10 and 20 are the first device's alone; that of day 30 and the two of day 40 are shared by
// two, the one of day 60 by three
it("shares each use among the devices in service by its day", () => {
  const [first, second, third] = [sharer(null), sharer(30), sharer(50)];
  const uses = new SharedUses([third, first, second], 0);
  expect([10, 20, 30, 40, 40, 60].map((day) => uses.add(day))).toEqual(new Array(6).fill(true));
  uses.deal();
  expect(first.place.events).toBeCloseTo(2 + 3 / 2 + 1 / 3, 12);
  expect(second.place.events).toBeCloseTo(3 / 2 + 1 / 3, 12);
  expect(third.place.events).toBeCloseTo(1 / 3, 12);
});

it("takes no use of a day on which no device was in service", () => {
  expect(new SharedUses([sharer(30)], 0).add(29)).toBe(false);
  expect(new SharedUses([], 0).add(29)).toBe(false);
});
