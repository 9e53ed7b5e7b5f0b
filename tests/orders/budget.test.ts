import { describe, expect, it } from "vitest";
import type { ItemDemand } from "../../src/demand/types.ts";
import type { CatalogueRow } from "../../src/fleet/rows.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import { catalogueRow, certainDemand, fleetWith, policyWith, shelfLot, supplierRow } from "./made-up.ts";

/**
 * 4 units lie on the shelf for November, in which draw after draw uses another number of them. What February needs is
 * ordered on 19 December: what is left of the 4 is then known.
 */
function usedInNovember(item: string, february: number, used: readonly number[]): ItemDemand {
  const samplePath = (draw: number) => Int32Array.of(used[draw]!, 0, 0, february);
  return { ...certainDemand(item, [4, 0, 0, february]), draws: used.length, samplePath };
}

function budgetOf(demand: ItemDemand[], orderFee: string | null, price = "10.00") {
  const fleet = fleetWith({
    catalogue: demand.map(({ item }) => catalogueRow({ item, price })),
    suppliers: [supplierRow({ orderFee })],
  });
  const shelf = demand.map(({ item }) => shelfLot({ item, quantity: 4 }));
  return scheduleOrders(fleet, policyWith({ horizonMonths: 4 }), demand, shelf).budget;
}

describe("the spend of a year over its possible futures", () => {
  // By hand: 6 less what is left of 4 are 2, 3, 4, 5 or 6 units, each in one future of five; 80 % pay 50.00 or less
  it("is one that half, four in five and nineteen in twenty of them stay within", () => {
    const [year] = budgetOf([usedInNovember("Pads", 6, [0, 1, 2, 3, 4])], null);
    expect(year).toMatchObject({ fiscalYear: "2026", planned: 6000, p50: 4000, p80: 5000, p95: 6000 });
  });

  // By hand: 2 less what is left of 4 is nothing where 2 or fewer were used, then 1 and 2 units, and only these pay the fee
  it("has no fee where nothing is ordered", () => {
    const [year] = budgetOf([usedInNovember("Pads", 2, [0, 1, 2, 3, 4])], "25.00");
    expect(year).toMatchObject({ planned: 4500, p50: 0, p80: 3500, p95: 4500 });
  });

  /*
   * By hand: of gel as many are used as there are pads left, so that both together are 8 units and one fee, 105.00, in every
   * future. Planned are 12 and a fee, 145.00. Where 4 are 2, 3, 4, 5 or 6 units of 8, a fee of 25.00 is shared by cost:
   * 6.25, 9.375, 12.50, 15.625 and 18.75.
   */
  it("is that of all items together in each future, and of each item its own", () => {
    const demand = [usedInNovember("Gel", 6, [4, 3, 2, 1, 0]), usedInNovember("Pads", 6, [0, 1, 2, 3, 4])];
    const ofItem = { planned: 7250, p50: 5250, p80: 6563, p95: 7875 };
    expect(budgetOf(demand, "25.00")).toEqual([
      {
        fiscalYear: "2026",
        currency: "EUR",
        ...{ planned: 14_500, p50: 10_500, p80: 10_500, p95: 10_500 },
        byItem: [
          { item: "Gel", ...ofItem },
          { item: "Pads", ...ofItem },
        ],
      },
    ]);
  });

  // By hand: nothing costs anything, so that each line that is ordered bears an equal part of 25.00. In every other future
  // the 4 of gel last for February's 2, and pads are ordered alone
  it("shares a fee evenly where lines cost nothing", () => {
    const demand = [usedInNovember("Gel", 2, [4, 0]), usedInNovember("Pads", 2, [4, 4])];
    const [year] = budgetOf(demand, "25.00", "0");
    expect(year!.byItem.map(({ planned, p50, p95 }) => [planned, p50, p95])).toEqual([
      [1250, 0, 1250],
      [1250, 1250, 2500],
    ]);
  });

  // By hand: 2027-02-01 less 14 days of safety is 18 January; 18 days of lead before it is 31 December, 17 are 1 January
  it.each([
    [18, "2026"],
    [17, "2027"],
  ])("belongs to the year in which the order leaves: with %i days of lead %s", (leadDays, fiscalYear) => {
    const facts: Partial<CatalogueRow> = { leadDays };
    const fleet = fleetWith({ catalogue: [catalogueRow({ item: "Pads", ...facts })] });
    const { budget } = scheduleOrders(
      fleet,
      policyWith({ horizonMonths: 4 }),
      [certainDemand("Pads", [0, 0, 0, 1])],
      [],
    );
    expect(budget.map((year) => year.fiscalYear)).toEqual([fiscalYear]);
  });

  // By hand: what November 2026 and June 2028 need is ordered in 2026 and, 14 days and 30 of lead before 1 June, in 2028
  it("is nothing in a year without orders between two with some", () => {
    const fleet = fleetWith({ catalogue: [catalogueRow({ item: "Pads" })] });
    const needs = [1, ...new Array<number>(18).fill(0), 2];
    const { budget } = scheduleOrders(fleet, policyWith({ horizonMonths: 20 }), [certainDemand("Pads", needs)], []);
    expect(budget.map(({ fiscalYear, planned, p95 }) => [fiscalYear, planned, p95])).toEqual([
      ["2026", 1000, 1000],
      ["2027", 0, 0],
      ["2028", 2000, 2000],
    ]);
    expect(budget[1]).toMatchObject({ currency: "EUR", byItem: [] });
  });
});
