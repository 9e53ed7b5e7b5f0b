import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../src/calendar/day.ts";
import { exactText, numberFromExact } from "../../src/fleet/money.ts";
import type { Fleet } from "../../src/fleet/rows.ts";
import { normalCdf, normalDensity, normalQuantile } from "../../src/maths/normal.ts";
import { netNeeds } from "../../src/orders/net-needs.ts";
import { offersForItem } from "../../src/orders/offers.ts";
import { lineCostOf, unitPriceAt } from "../../src/orders/prices.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import {
  AS_OF,
  catalogueRow,
  certainDemand,
  fleetWith,
  poissonDemand,
  policyWith,
  shelfLot,
  supplierRow,
} from "./made-up.ts";

const ITEM = "Pads, adult";

function offerOf(fleet: Fleet) {
  return offersForItem(ITEM, fleet, policyWith(), 0.95).offers[0]!;
}

describe("unitPriceAt: all-units price breaks", () => {
  const yearly = (demand: number, setUp: number, rate: number, price: number, size: number) =>
    demand * price + (demand / size) * setUp + (size / 2) * rate * price;
  const fleetAt = (price: string, breaks: [number, string][]) =>
    fleetWith({
      catalogue: [catalogueRow({ item: ITEM, price, priceBreaks: breaks.map(([from, at]) => ({ from, price: at })) })],
    });
  const priceAt = (fleet: Fleet, units: number) =>
    numberFromExact(unitPriceAt(offerOf(fleet), policyWith(), AS_OF, units));

  // Source: a published worked answer (D 800, S 60, i 0.30; nursingexpertshelp.com), total cost of each order size
  it("prices the sizes of a worked example as printed, with the optimum at 200", () => {
    const fleet = fleetAt("53", [
      [50, "51.50"],
      [100, "49.50"],
      [200, "48"],
      [500, "47"],
    ]);
    const total = (size: number) => yearly(800, 60, 0.3, priceAt(fleet, size), size);
    expect(total(79)).toBeCloseTo(42417.87, 2);
    expect(total(100)).toBeCloseTo(40822.5, 2);
    expect(total(200)).toBeCloseTo(40080, 2);
    expect(total(500)).toBeCloseTo(41221, 2);
  });

  // Source: Krajewski & Ritzman, quantity discounts (D 936, S 45, H 25 %; prices from memory)
  it("prices a second one, with the optimum at the last break", () => {
    const fleet = fleetAt("60", [
      [300, "58.80"],
      [500, "57"],
    ]);
    const total = (size: number) => yearly(936, 45, 0.25, priceAt(fleet, size), size);
    expect(total(75)).toBeCloseTo(57284.1, 2);
    expect(total(300)).toBeCloseTo(57382.2, 2);
    expect(total(500)).toBeCloseTo(56998.74, 2);
  });

  // Source: Heizer & Render (from memory): D 5000, S 49, i 0.20
  it("prices a third one", () => {
    const fleet = fleetAt("5.00", [
      [1000, "4.80"],
      [2000, "4.75"],
    ]);
    const total = (size: number) => yearly(5000, 49, 0.2, priceAt(fleet, size), size);
    expect([700, 1000, 2000].map((size) => Number(total(size).toFixed(2)))).toEqual([25700, 24725, 24822.5]);
  });

  // By hand: 10.00 a box of 3; 7 units are 23.333..., so 23.33
  it("divides a price per box exactly and rounds the line once", () => {
    const fleet = fleetWith({ catalogue: [catalogueRow({ item: ITEM, pricePer: "box", unitsPerBox: 3 })] });
    expect(exactText(unitPriceAt(offerOf(fleet), policyWith(), AS_OF, 7), "EUR")).toBe("3.333333");
    expect(lineCostOf(offerOf(fleet), policyWith(), AS_OF, 7)).toBe(2333);
  });
});

describe("service levels", () => {
  // Source: computed with R 4.2.2 (qnorm; G(k) = dnorm(k) - k (1 - pnorm(k)))
  it("rest on safety factors and unit losses to ten digits", () => {
    const table: [number, number, number][] = [
      [0.8, 0.84162123357291, 0.111637673693],
      [0.95, 1.6448536269515, 0.0208929590278],
      [0.99, 2.3263478740408, 0.00338866346305],
      [0.999, 3.0902323061678, 0.000276857770896],
    ];
    for (const [level, factor, loss] of table) {
      const k = normalQuantile(level);
      expect(k).toBeCloseTo(factor, 10);
      expect(normalDensity(k) - k * (1 - normalCdf(k))).toBeCloseTo(loss, 10);
    }
  });

  // Source: newsvendor with Poisson demand, optimal sizes at the critical ratio (computed with R 4.2.2, qpois)
  it.each([
    [3.5, 9, 1, 6],
    [10, 4, 1, 13],
    [0.8, 20, 1, 2],
    [25, 3, 2, 26],
  ])("buy the newsvendor's quantity: mean %f, costs %f to %f: %i units", (mean, under, over, size) => {
    const fleet = fleetWith({ catalogue: [catalogueRow({ item: ITEM, serviceLevel: under / (under + over) })] });
    const needs = poissonDemand(ITEM, [0, 0, 0, 0, mean]);
    expect(scheduleOrders(fleet, policyWith({ horizonMonths: 5 }), [needs], []).orders[0]!.quantity).toBe(size);
  });
});

describe("netNeeds", () => {
  // By hand: 5 units serve only month 1, which needs none, and 1 serves months 0 to 2; months 0 and 2 need 1 each.
  // Every span seems covered (2 needed, 6 usable), and yet one unit is missing in month 2.
  it("does not count stock that only serves months which need nothing", () => {
    const spans = [
      { from: 0, to: 2, units: 1 },
      { from: 1, to: 1, units: 5 },
    ];
    expect(netNeeds(certainDemand(ITEM, [1, 0, 1]), spans, 0.95, 0).cumulative).toEqual([0, 0, 1]);
  });

  // By hand: 10 needed a month; 30 units lapse after month 1, so months 2 and 3 need 20 anew
  it("counts what lapses as gone", () => {
    const spans = [{ from: 0, to: 1, units: 30 }];
    expect(netNeeds(certainDemand(ITEM, [10, 10, 10, 10]), spans, 0.95, 0).cumulative).toEqual([0, 0, 10, 20]);
  });
});

describe("what a line's reason says", () => {
  const reasonOf = (fleet: Fleet, needs: number[], lots: Parameters<typeof scheduleOrders>[3] = []) =>
    scheduleOrders(fleet, policyWith({ horizonMonths: needs.length }), [certainDemand(ITEM, needs)], lots).orders[0]!;

  it("what it covers, in boxes, and what will lapse", () => {
    const fleet = fleetWith({
      catalogue: [catalogueRow({ item: ITEM, unitsPerBox: 10, arrivesWithMonths: 3, leadDays: 0 })],
    });
    // by hand: a box of 10 that arrives by 15 February lasts to 31 May less 14 days; 2 are needed by then
    const line = reasonOf(fleet, [0, 0, 0, 0, 2, 0, 0, 0, 0, 4]);
    expect(line.reason).toContain("Covers March to May 2027 at 95 %: 10 units. Bought as 1 box of 10.");
    expect(line.reason).toContain("Of these, 8 units cannot be needed before they lapse.");
    expect(line.expectedWaste).toBe(8);
  });

  it("what a lower level would save", () => {
    const fleet = fleetWith({ catalogue: [catalogueRow({ item: ITEM })] });
    const needs = poissonDemand(ITEM, [0, 0, 0, 0, 10]);
    const [line] = scheduleOrders(fleet, policyWith({ horizonMonths: 5 }), [needs], []).orders;
    // Source: Poisson quantiles for mean 10: 0.95 -> 15 (R 4.2.2), 0.8 -> 13; 2 units at 10.00
    expect(line!.reason).toContain("At 80 % it would be 2 units fewer, EUR 20.00 less.");
    expect(line!.reason).toContain("5 units are expected to be left then.");
  });

  // By hand: 12 at 10.00 and the fee of 25.00 are 145.00, 13 are 130.00 and free; the needs are certain at any level
  it("nothing of a lower level, where more is bought for free delivery alone", () => {
    const fleet = fleetWith({
      catalogue: [catalogueRow({ item: ITEM })],
      suppliers: [supplierRow({ freeOver: "130.00" })],
    });
    const { quantity, reason } = reasonOf(fleet, [0, 0, 0, 0, 12]);
    expect([quantity, reason]).toEqual([
      13,
      "Covers March 2027 at 95 %: 13 units. 1 unit is expected to be left then.",
    ]);
  });

  it("what is missing until a late order arrives, and what could stand in", () => {
    const fleet = fleetWith({
      catalogue: [catalogueRow({ item: ITEM, alternatives: ["Pads, any"] }), catalogueRow({ item: "Pads, any" })],
    });
    const lineWith = (quantity: number) => reasonOf(fleet, [2, 3, 4], [shelfLot({ item: "Pads, any", quantity })]);
    const line = lineWith(7);
    expect(line.reason).toContain(
      "it arrives on 2026-12-25 at the earliest; up to 5 units may be missing until 2026-12-24",
    );
    expect(line.reason).toContain("Until then: 7 of Pads, any on the shelf serve as well.");
    expect(lineWith(1).reason).toContain("Until then: 1 of Pads, any on the shelf serves as well.");
  });
});

describe("late orders and calendars", () => {
  it("go to the supplier who arrives first, on-time ones to the cheaper", () => {
    const fleet = fleetWith({
      catalogue: [
        catalogueRow({ item: ITEM, supplier: "Near", leadDays: 5, price: "20" }),
        catalogueRow({ item: ITEM, supplier: "Far", leadDays: 60, price: "10" }),
      ],
    });
    const needs = certainDemand(ITEM, [3, 0, 0, 0, 0, 0, 30]);
    const { orders } = scheduleOrders(fleet, policyWith({ horizonMonths: 7 }), [needs], []);
    expect(orders.map((line) => [line.supplier, line.quantity, line.late])).toEqual([
      ["Near", 3, true],
      ["Far", 30, false],
    ]);
  });

  // By hand: pads live 2 months, orders leave every 6: what must come between leaves outside the calendar
  it("leave outside a calendar that would let the stock lapse, and say so", () => {
    const fleet = fleetWith({
      catalogue: [catalogueRow({ item: ITEM, arrivesWithMonths: 2, leadDays: 10 })],
      suppliers: [supplierRow({ orderEveryMonths: 6 })],
    });
    const needs = certainDemand(ITEM, [0, 0, 0, 2, 2, 2, 2, 2, 2]);
    const { orders, cautions } = scheduleOrders(fleet, policyWith({ horizonMonths: 9 }), [needs], []);
    expect(orders.reduce((sum, line) => sum + line.quantity, 0)).toBe(12);
    expect(orders.some((line) => !isoFromDay(line.orderBy).endsWith("-01"))).toBe(true);
    expect(cautions.join(" ")).toContain("ordered outside its calendar");
  });

  // By hand: gel for October must leave 24 days ahead, so on 1 July, the calendar's last day before. To keep its 3 units of 300
  // two months longer costs 15: to join the pads' last order, of 8 May, would spare more, a fee of 25, but is no order day. To
  // keep them from 1 January on, the calendar's day before, costs 45.
  it("are not joined outside the calendar by what its order days serve", () => {
    const gel = "Gel 60";
    const fleet = fleetWith({
      catalogue: [
        catalogueRow({ item: ITEM, arrivesWithMonths: 2, leadDays: 10 }),
        catalogueRow({ item: gel, kind: "gel", leadDays: 10, price: "300" }),
      ],
      suppliers: [supplierRow({ orderEveryMonths: 6 })],
    });
    const pads = certainDemand(ITEM, [0, 0, 0, 2, 2, 2, 2, 2, 2, 0, 0, 0]);
    const october = certainDemand(gel, [...new Array<number>(11).fill(0), 3]);
    const { orders } = scheduleOrders(fleet, policyWith({ horizonMonths: 12 }), [pads, october], []);
    expect(orders.filter(({ item }) => item === gel).map(({ orderBy }) => isoFromDay(orderBy))).toEqual(["2027-07-01"]);
  });
});

// a fee can be added to a price of its own currency only
it("offersForItem says so where a supplier's fee is in another currency than its prices", () => {
  const cautionsWith = (currency: string | null) => {
    const catalogue = [catalogueRow({ item: ITEM, price: "40", currency: "EUR", supplier: "Fenwold" })];
    const suppliers = [supplierRow({ supplier: "Fenwold", orderFee: "25", currency })];
    const { offers, cautions } = offersForItem(ITEM, fleetWith({ catalogue, suppliers }), policyWith(), 0.95);
    return [offers[0]!.fee, ...cautions.map(({ one }) => one)];
  };
  expect(cautionsWith("USD")).toEqual([
    0,
    "is bought from Fenwold in EUR, whose order fee is in USD: it is not counted.",
  ]);
  expect(cautionsWith("EUR")).toEqual([2500]);
  expect(cautionsWith(null)).toEqual([2500]);
});

// an order counts as there on the day it leaves where nobody says how long it takes: the reader has to know
it("offersForItem names the suppliers whose lead time is not known", () => {
  const cautionsWith = (...leads: (number | null)[]) => {
    const suppliers = ["Fenwold", "Ostlane"];
    const catalogue = leads.map((leadDays, at) =>
      catalogueRow({ item: ITEM, price: "40", currency: "EUR", supplier: suppliers[at]!, leadDays }),
    );
    return offersForItem(ITEM, fleetWith({ catalogue }), policyWith(), 0.95).cautions.map(({ one }) => one);
  };
  expect(cautionsWith(0, 9)).toEqual([]);
  expect(cautionsWith(null, 9)).toEqual([
    "has no lead time for Fenwold in the catalogue: orders there are planned to arrive on the day they leave.",
  ]);
  expect(cautionsWith(null, null)).toEqual([
    "has no lead time in the catalogue: orders are planned to arrive on the day they leave.",
  ]);
  expect(cautionsWith()).toEqual([
    "is not in the catalogue: its orders have no price and no supplier, and are planned to arrive on the day they leave.",
  ]);
});

// a box of ten for 40.00 would cost ten times as much if each unit were taken for a box: the reader has to know
it("offersForItem says so where a price is a box's and nobody says what a box holds", () => {
  const cautionsWith = (pricePer: "unit" | "box" | null, unitsPerBox: number | null, price: string | null = "40") => {
    const catalogue = [
      catalogueRow({ item: ITEM, price, currency: "EUR", supplier: "Fenwold", pricePer, unitsPerBox, leadDays: 5 }),
    ];
    return offersForItem(ITEM, fleetWith({ catalogue }), policyWith(), 0.95).cautions.map(({ one }) => one);
  };
  expect(cautionsWith("box", null)).toEqual([
    "is priced by the box, and no units_per_box says what a box holds: each unit is counted as a box.",
  ]);
  expect(cautionsWith("box", 10)).toEqual([]);
  expect(cautionsWith("unit", null)).toEqual([]);
  expect(cautionsWith("box", null, null)).toEqual([
    "has no price in the catalogue: its orders count as 0 in every total.",
  ]);
});
