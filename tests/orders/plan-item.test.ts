import { describe, expect, it } from "vitest";
import { itemBook } from "../../src/fleet/item-book.ts";
import type { CatalogueRow } from "../../src/fleet/rows.ts";
import { seededRandom } from "../../src/maths/random.ts";
import { buyingOptions } from "../../src/orders/buying-options.ts";
import { itemCase } from "../../src/orders/collect-case.ts";
import { Ledger } from "../../src/orders/ledger.ts";
import { planItemLots } from "../../src/orders/plan-item.ts";
import { standInGround } from "../../src/orders/stand-ins.ts";
import { catalogueRow, certainDemand, fleetWith, poissonDemand, policyWith } from "./made-up.ts";

const ITEM = "Gel";

/** Lots of an item that is there on the day it is ordered. */
function lotsFor(demand: ReturnType<typeof certainDemand>, row: Partial<CatalogueRow>) {
  const fleet = fleetWith({ catalogue: [catalogueRow({ item: ITEM, leadDays: 0, ...row })] });
  const policy = policyWith({ horizonMonths: demand.months, orderBeforeNeedDays: 0, minLifeDays: 0 });
  const { itemCase: of } = itemCase(demand, [], standInGround(fleet, policy, itemBook(fleet, [ITEM]), []));
  return planItemLots(of.net, buyingOptions(of, new Ledger().market()))!;
}

describe("planItemLots", () => {
  /*
   * By hand: what comes in a month lasts to the end of the next. Of a minimum order of 10 for November's 1 nothing is left for
   * January, though 10 are more than all months need; nor of January's 10 for March.
   */
  it("buys anew what lapses before it is needed", () => {
    const { lots } = lotsFor(certainDemand(ITEM, [1, 0, 1, 0, 1]), { minimumOrder: 10, arrivesWithMonths: 1 });
    expect(lots.map(({ period, units, lapsing }) => [period, units, lapsing])).toEqual([
      [0, 10, 9],
      [2, 10, 9],
      [4, 10, 0],
    ]);
  });

  it("covers every span of months at the service level, whatever lapses between", () => {
    const random = seededRandom(5);
    const upTo = (n: number) => Math.floor(n * random.uniform());
    let lapsed = 0;
    for (let world = 0; world < 60; world++) {
      const months = 4 + upTo(8);
      const demand = poissonDemand(
        ITEM,
        Array.from({ length: months }, () => 3 * random.uniform()),
      );
      const { lots, cumulativeNeed } = lotsFor(demand, {
        arrivesWithMonths: 1 + upTo(4),
        unitsPerBox: [1, 1, 4][upTo(3)]!,
        minimumOrder: [1, 1, 8][upTo(3)]!,
      });
      expect(cumulativeNeed).toHaveLength(months);
      lapsed += lots.reduce((sum, lot) => sum + lot.lapsing, 0);
      for (let after = -1; after < months; after++) {
        for (let through = after + 1; through < months; through++) {
          const usable = lots.filter(({ period, slot }) => period <= through && slot.lastServed > after);
          const units = usable.reduce((sum, lot) => sum + lot.units, 0);
          expect(units, `world ${world}, ${after + 1} to ${through}`).toBeGreaterThanOrEqual(
            demand.needsQuantile(after, through, 0.95),
          );
        }
      }
    }
    expect(lapsed).toBeGreaterThan(0);
  });
});
