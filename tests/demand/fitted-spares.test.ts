import { expect, it } from "vitest";
import { firstDayOfMonth, monthOfDay } from "../../src/calendar/month.ts";
import { forecastDemand } from "../../src/demand/forecast-demand.ts";
import { defaultPolicy, type Policy } from "../../src/fleet/policy.ts";
import { type DatedStockRow, emptyFleet } from "../../src/fleet/rows.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { day, pack, stock } from "../fleet/make-rows.ts";
import { certainIn, madeUpLife } from "./made-up-life.ts";

const byDefault = { ...defaultPolicy(day("2026-11-01")), horizonMonths: 36 };

/** Months in which packs are needed, with their number: two are due in months 1 and 4, and spares are due in some months. */
function needed(
  spares: readonly (number | null)[],
  item = "Pack",
  choices: Partial<Policy> = {},
  shelf: DatedStockRow[] = [],
) {
  const onShelf = spares.map((month, index) => ({
    pack: pack(`X${index}`, { item }),
    due: month === null ? null : firstDayOfMonth(monthOfDay(byDefault.asOf) + month) + 9,
  }));
  const packs = [1, 4].map((month) => ({ item: "Pack", due: [certainIn(month, 36)] }));
  const policy = { ...byDefault, ...choices };
  const life = { ...madeUpLife(36, packs, () => 0), stock: onShelf };
  const fleet = { ...emptyFleet(), datedStock: shelf, packs: [...life.packs, ...onShelf].map((one) => one.pack) };
  const demand = forecastDemand(policy, life, forecastDatedStock(fleet, policy)).find((one) => one.item === "Pack")!;
  const months = [...demand.mean.keys()].filter((month) => demand.mean[month]! > 0);
  return {
    needs: months.map((month) => [month, demand.needsQuantile(month - 1, month, 0.5)]),
    limits: months.map((month) => demand.causes.limit[month]),
  };
}

/*
 * By hand: the need of month 1 has the spare fitted that is due in month 3, which makes a need then. It is met by one of three
 * that are due in month 14, as is that of month 4; the third of them takes the place of neither in month 14, when they are due.
 * Instead the last two come in, of which one is due in month 30. What is due in month 1 is due on the shelf.
 */
it("needs a pack for a spare that will have been fitted when it is due itself", () => {
  const { needs, limits } = needed([14, 3, null, 14, 30, 1, 14, -2, 36]);
  expect(needs).toEqual([
    [1, 1],
    [3, 1],
    [4, 1],
    [14, 2],
    [30, 1],
  ]);
  expect(limits).toEqual([0, 1, 0, 2, 1]);
});

it("needs none for spares that are due on the shelf, or of another item", () => {
  const alone = [
    [1, 1],
    [4, 1],
  ];
  expect([needed([0, 1]).needs, needed([3, 14], "Other").needs]).toEqual([alone, alone]);
});

// By hand: three units without a serial expire on 10 March 2027, of which one is fitted in December; swapped 14 days before, it
// makes a need in February, month 3, and 9 days before in March, month 4, besides that of another pack. What is held is not fitted
it.each([
  [14, [1, 3, 4], [1, 1, 1]],
  [9, [1, 4], [1, 2]],
])(
  "counts of a battery's units on a shelf those that are swapped %i days before their expiry",
  (margin, months, counts) => {
    const shelf = [
      stock("Pack", "2027-03-10", "Store", { quantity: 3 }),
      stock("Pack", "2027-08-10", "Store", { held: "recalled" }),
    ];
    const { needs } = needed([], "Pack", { swapBeforeExpiryDays: margin }, shelf);
    expect(needs).toEqual(months.map((month, at) => [month, counts[at]]));
  },
);
