import { expect, it } from "vitest";
import { lastDayOfMonth, monthFromText } from "../../src/calendar/month.ts";
import { type Item, itemBook } from "../../src/fleet/item-book.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { swapDayOfReplacement } from "../../src/supplies/unit-life.ts";
import { catalogued, day } from "../fleet/make-rows.ts";

const MARCH = monthFromText("2027-03")!;

// By hand: what arrives in March with one month of life lasts to 30 April; with a margin of 14 days it is swapped on 16
// April, with one of 30 on 31 March, within the month in which it came
it("swapDayOfReplacement is never where the margin leaves no life: each replacement would be due at once, for ever", () => {
  const fleet = { ...emptyFleet(), catalogue: [catalogued("Gel", "gel", { arrivesWithMonths: 1 })] };
  const [item] = itemBook(fleet).items as [Item];
  const swapped = (swapBeforeExpiryDays: number) =>
    swapDayOfReplacement(item, MARCH, { ...defaultPolicy(day("2026-11-01")), swapBeforeExpiryDays });
  expect(swapped(14)).toBe(day("2027-04-16"));
  expect(swapped(29)).toBe(lastDayOfMonth(MARCH) + 1);
  expect(swapped(30)).toBe(Number.POSITIVE_INFINITY);
});
