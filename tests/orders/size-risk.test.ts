import { describe, expect, it } from "vitest";
import type { ItemDemand } from "../../src/demand/types.ts";
import type { CatalogueRow } from "../../src/fleet/rows.ts";
import type { ItemCase } from "../../src/orders/item-case.ts";
import { netNeeds } from "../../src/orders/net-needs.ts";
import { offersForItem } from "../../src/orders/offers.ts";
import type { PlacedLot } from "../../src/orders/plan-item.ts";
import { sizeRisk } from "../../src/orders/size-risk.ts";
import type { SupplySpan } from "../../src/orders/supply-spans.ts";
import { AS_OF, catalogueRow, certainDemand, fleetWith, poissonDemand, policyWith } from "./made-up.ts";

const ITEM = "Pads";
const policy = policyWith();

function caseOf(demand: ItemDemand, supply: SupplySpan[], row: Partial<CatalogueRow> = {}, level = 0.95): ItemCase {
  const { offers } = offersForItem(
    ITEM,
    fleetWith({ catalogue: [catalogueRow({ item: ITEM, ...row })] }),
    policy,
    level,
  );
  const none = { slots: [], earlierSlot: () => expect.fail(), tiers: () => [] };
  return {
    ...{ item: ITEM, demand, level, supply, net: netNeeds(demand, supply, level, 0), stopgapsUntil: () => [] },
    offers: offers.map((offer) => ({ offer, ...none })),
  };
}

function lot(period: number, units: number, lastServed: number): PlacedLot {
  const slot = { orderBy: AS_OF, arriveBy: AS_OF, usableUntil: null, lastServed, offCadence: false };
  return { period, source: 0, units, coveredBefore: 0, coveredAfter: 0, lapsing: 0, slot, lineCost: 0 };
}

// Source: Poisson quantiles for mean 10 (R 4.2.2, qpois): 15 at 0.95, 13 at 0.8
const TEN = poissonDemand(ITEM, [0, 0, 10]);

describe("what a lower service level would take off an order", () => {
  it("is what its months take less, at the order's own prices", () => {
    const risk = sizeRisk(caseOf(TEN, []), lot(2, 15, 2), [], 2, policy);
    expect(risk).toEqual({ lower: { level: 0.8, boxes: 2, saves: 2000 }, expectedLeft: 5 });
  });

  // By hand: 15 and 13 are two boxes of 10; 15 are four boxes of 4, 13 too; of 7, 15 are three and 13 two
  it.each([
    [10, null, 10],
    [4, null, 6],
    [7, { level: 0.8, boxes: 1, saves: 7000 }, 11],
  ])("counts whole boxes of %i", (unitsPerBox, lower, expectedLeft) => {
    const units = Math.ceil(15 / unitsPerBox) * unitsPerBox;
    const risk = sizeRisk(caseOf(TEN, [], { unitsPerBox }), lot(2, units, 2), [], 2, policy);
    expect(risk).toEqual({ lower, expectedLeft });
  });

  // By hand: 13 units in stock leave nothing to order; of 12 one would be, and of a minimum order of 2 both
  it.each([
    [13, 1, 2],
    [12, 1, 2],
    [12, 3, 0],
  ])("is all where %i in stock are enough, but no less than a minimum order of %i", (stock, minimumOrder, boxes) => {
    const supply = [{ from: 0, to: 2, units: stock }];
    const bought = Math.max(15 - stock, minimumOrder);
    const { lower } = sizeRisk(caseOf(TEN, supply, { minimumOrder }), lot(2, bought, 2), [], 2, policy);
    expect(lower?.boxes ?? 0).toBe(boxes);
  });

  // By hand: 15 at 8.00 are 120.00, 13 at 10.00 are 130.00
  it("costs more where it misses a price break", () => {
    const of = caseOf(TEN, [], { priceBreaks: [{ from: 15, price: "8.00" }] });
    expect(sizeRisk(of, lot(2, 15, 2), [], 2, policy).lower).toEqual({ level: 0.8, boxes: 2, saves: -1000 });
  });

  it("is not told where the level is no higher", () => {
    expect(sizeRisk(caseOf(TEN, [], {}, 0.8), lot(2, 13, 2), [], 2, policy).lower).toBeNull();
    expect(sizeRisk(caseOf(TEN, [], {}, 0.5), lot(2, 10, 2), [], 2, policy).lower).toBeNull();
  });

  it("is no more than the order", () => {
    expect(sizeRisk(caseOf(TEN, []), lot(2, 1, 2), [], 2, policy).lower!.boxes).toBe(1);
  });

  // By hand: lots before brought 14, so that 1 is lacking at 0.95 and none at 0.8
  it("is taken off after what the lots before have brought", () => {
    const risk = sizeRisk(caseOf(TEN, []), lot(2, 1, 2), [lot(0, 14, 2)], 2, policy);
    expect(risk).toEqual({ lower: { level: 0.8, boxes: 1, saves: 1000 }, expectedLeft: 5 });
  });
});

describe("units left when the months covered are over", () => {
  const ONE_A_MONTH = certainDemand(ITEM, [1, 1, 1, 1]);
  const left = (supply: SupplySpan[], bought: PlacedLot, coversTo: number) =>
    sizeRisk(caseOf(ONE_A_MONTH, supply), bought, [], coversTo, policy).expectedLeft;

  // By hand: of 5 that lapse after the second month 2 are used, and the lot's 2 in the third and fourth
  it("are none of those that lapse before", () => {
    expect(left([{ from: 0, to: 1, units: 5 }], lot(2, 2, 3), 3)).toBe(0);
  });

  // By hand: what lapses with the month covered last is not left after it; of 9 to the plan's end 7 are left after two months
  it("are none of those that lapse with them, unless the plan ends there", () => {
    expect(left([], lot(0, 9, 1), 1)).toBe(0);
    expect(left([], lot(0, 9, 2), 1)).toBe(7);
    expect(left([], lot(0, 9, 3), 3)).toBe(5);
  });

  // By hand: the 3 for the first months come in the third; what has waited takes them, and 2 come later than the span
  it("are what is there then, after all that has waited", () => {
    expect(left([{ from: 3, to: 3, units: 2 }], lot(2, 4, 3), 2)).toBe(1);
  });

  // By hand: the lot lapses first and goes first: 2 of it, so that of 3 that last longer all 3 are left
  it("are of what lapses last", () => {
    expect(left([{ from: 0, to: 3, units: 3 }], lot(0, 2, 1), 1)).toBe(3);
  });
});
