import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../src/calendar/day.ts";
import { firstDayOfMonth, monthText } from "../../src/calendar/month.ts";
import type { ItemDemand } from "../../src/demand/types.ts";
import type { Policy } from "../../src/fleet/policy.ts";
import type { CatalogueRow } from "../../src/fleet/rows.ts";
import { lotsOfSchedule } from "../../src/orders/lots-of-schedule.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import type { OrderLine } from "../../src/orders/types.ts";
import type { UsableLot } from "../../src/supplies/types.ts";
import { device } from "../fleet/make-rows.ts";
import {
  AS_OF,
  catalogueRow,
  certainDemand,
  day,
  fleetWith,
  poissonDemand,
  policyWith,
  shelfLot,
  supplierRow,
} from "./made-up.ts";

const ITEM = "Pads, adult";
const months = (length: number, units: number) => new Array<number>(length).fill(units);

function schedule(
  demand: ItemDemand,
  facts: Partial<CatalogueRow> = {},
  lots: UsableLot[] = [],
  policy: Policy = policyWith({ horizonMonths: demand.months }),
) {
  const fleet = fleetWith({ catalogue: [catalogueRow({ item: ITEM, ...facts })], suppliers: [supplierRow()] });
  return scheduleOrders(fleet, policy, [demand], lots);
}

const units = (orders: readonly OrderLine[]) => orders.reduce((sum, line) => sum + line.quantity, 0);

describe("scheduleOrders: when an order must leave", () => {
  // By hand: 2027-03-01 less 14 days less 45 days = 59 days = 31 (January) + 28 (February)
  it("leaves safety days and lead time before the need", () => {
    const [line] = schedule(certainDemand(ITEM, [0, 0, 0, 0, 6, 0]), { leadDays: 45 }).orders;
    expect(isoFromDay(line!.orderBy)).toBe("2027-01-01");
    expect(isoFromDay(line!.arriveBy)).toBe("2027-02-15");
    expect(line).toMatchObject({ late: false, uncoveredUntil: null, quantity: 6 });
    expect(line!.id).toBe(`North Supplies|${ITEM}|2027-03`);
  });

  // By hand: the 95 % quantile of a lead with sd 10 days is 1.6449 * 10 days longer, so 17 whole days
  it("plans with the lead time's quantile and expects its mean", () => {
    const [line] = schedule(certainDemand(ITEM, [0, 0, 0, 0, 6, 0]), { leadDays: 45, leadSdDays: 10 }).orders;
    expect(isoFromDay(line!.orderBy)).toBe("2026-12-15");
    expect(line!.arriveBy - line!.orderBy).toBe(45);
  });

  // By hand: needed on 2026-12-01, to leave by 2026-10-18; ordered at as-of it arrives 30 days later
  it("says an order is late, when it can arrive and what is uncovered until then", () => {
    const [line] = schedule(certainDemand(ITEM, [0, 4, 0])).orders;
    expect(line).toMatchObject({ orderBy: AS_OF, arriveBy: AS_OF + 30, late: true, uncoveredUntil: AS_OF + 29 });
  });

  // By hand: the fiscal year starts in April, quarters on 1 April, July, October, January
  it("keeps to the supplier's order days, and leaves them only for what is late", () => {
    const fleet = fleetWith({
      catalogue: [catalogueRow({ item: ITEM })],
      suppliers: [supplierRow({ orderEveryMonths: 3 })],
    });
    const policy = policyWith({ fiscalYearStarts: 4, horizonMonths: 12 });
    const needs = certainDemand(ITEM, [0, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2]);
    const { orders } = scheduleOrders(fleet, policy, [needs], []);
    expect(orders[0]).toMatchObject({ orderBy: AS_OF, late: true });
    for (const line of orders.slice(1)) expect(isoFromDay(line.orderBy)).toMatch(/-(01|04|07|10)-01$/);
    expect(units(orders)).toBe(22);
  });

  it("never orders later for a longer lead", () => {
    fc.assert(
      fc.property(fc.array(fc.nat(5), { minLength: 8, maxLength: 8 }), fc.nat(90), fc.nat(60), (needs, lead, more) => {
        const first = (leadDays: number) => schedule(certainDemand(ITEM, needs), { leadDays }).orders[0]?.orderBy ?? 0;
        expect(first(lead + more)).toBeLessThanOrEqual(first(lead));
      }),
      { seed: 2, numRuns: 60 },
    );
  });
});

describe("scheduleOrders: what is bought", () => {
  // By hand: 10 needed by May, 4 on the shelf until March serve the 4 needed by then, boxes of 5: 6 short = 2 boxes
  it("nets stock, first expired first out, and buys whole boxes", () => {
    const lots = [shelfLot({ item: "PADS, Adult", quantity: 9, usableUntil: day("2027-03-31") })];
    const { orders } = schedule(certainDemand(ITEM, [0, 0, 2, 0, 2, 3, 3]), { unitsPerBox: 5 }, lots);
    expect(orders.map((line) => [monthText(line.covers.from), line.quantity, line.boxes])).toEqual([
      ["2027-04", 10, 2],
    ]);
  });

  it("does not buy again what is on order", () => {
    const demand = poissonDemand(ITEM, months(18, 2.5));
    const facts = { unitsPerBox: 4, arrivesWithMonths: 10 };
    const first = schedule(demand, facts);
    expect(units(first.orders)).toBeGreaterThan(0);
    const fleet = fleetWith({ catalogue: [catalogueRow({ item: ITEM, ...facts })], suppliers: [supplierRow()] });
    const onOrder = lotsOfSchedule(first.orders, fleet, policyWith());
    expect(schedule(demand, facts, onOrder).orders).toEqual([]);
  });

  it("covers no need past the usable life of what it buys, and every span at the service level", () => {
    const any = fc.record({
      mean: fc.double({ min: 0.2, max: 4, noNaN: true }),
      life: fc.integer({ min: 2, max: 20 }),
      box: fc.integer({ min: 1, max: 6 }),
      stock: fc.nat(12),
      until: fc.integer({ min: 30, max: 400 }),
      minimum: fc.nat(12),
    });
    fc.assert(
      fc.property(any, ({ mean, life, box, stock, until, minimum }) => {
        const demand = poissonDemand(ITEM, months(18, mean));
        const policy = policyWith({ horizonMonths: 18 });
        const facts = { arrivesWithMonths: life, unitsPerBox: box, minimumOrder: minimum };
        const lots = [shelfLot({ item: ITEM, quantity: stock, usableUntil: AS_OF + until })];
        const { orders } = schedule(demand, facts, lots, policy);
        const fleet = fleetWith({ catalogue: [catalogueRow({ item: ITEM, ...facts })] });
        const bought = lotsOfSchedule(orders, fleet, policy);
        orders.forEach((line, index) => {
          expect(firstDayOfMonth(line.covers.to)).toBeLessThanOrEqual(bought[index]!.usableUntil!);
          expect(line.quantity % box).toBe(0);
          expect(line.quantity).toBeGreaterThanOrEqual(minimum);
        });
        // from the first month that an order can reach in time (30 days of lead and 14 of safety: February 2027)
        const supply = [...lots, ...bought];
        for (let after = 2; after < 17; after++) {
          for (let through = after + 1; through < 18; through++) {
            const start = firstDayOfMonth(demand.from + after + 1);
            const end = firstDayOfMonth(demand.from + through);
            const usable = supply
              .filter((lot) => lot.availableFrom <= end && lot.usableUntil! >= start)
              .reduce((sum, lot) => sum + lot.quantity, 0);
            expect(usable).toBeGreaterThanOrEqual(demand.needsQuantile(after, through, 0.95));
          }
        }
      }),
      { seed: 3, numRuns: 60 },
    );
  });

  it("never buys less for a higher service level", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 4, noNaN: true }), fc.integer({ min: 1, max: 5 }), (mean, box) => {
        const bought = [0.5, 0.8, 0.95, 0.99].map((serviceLevel) =>
          units(schedule(poissonDemand(ITEM, months(12, mean)), { unitsPerBox: box, serviceLevel }).orders),
        );
        expect(bought).toEqual([...bought].sort((a, b) => a - b));
      }),
      { seed: 4, numRuns: 40 },
    );
  });

  // By hand: 10 % of 21 packs in use is 2.1, so 3 spares to keep, and none is there; the 10 of devices that have left are in no use
  it("keeps spare packs on the shelf beside the needs", () => {
    const pack = { item: ITEM, site: null, made: null, inService: null, cycles: null, cyclesOn: null, retired: null };
    const rest = { retiredBecause: null, temperatureC: null, held: null, source: { file: "p", sheet: null, line: 2 } };
    const packs = Array.from({ length: 31 }, (_, n) => ({ ...pack, ...rest, serial: `P${n}`, device: `D${n}` }));
    const devices = packs.slice(21).map((row) => device(row.device, { retired: day("2026-01-01") }));
    const fleet = fleetWith({ devices, packs, catalogue: [catalogueRow({ item: ITEM, kind: "pack" })] });
    const { orders } = scheduleOrders(
      fleet,
      policyWith({ sparesPercent: 10 }),
      [certainDemand(ITEM, [0, 0, 0, 2])],
      [],
    );
    expect(units(orders)).toBe(5);
  });
});

describe("scheduleOrders: from whom", () => {
  // By hand: 10 units: South 10 * 8 + 60 = 140, North 10 * 10 + 25 = 125; 40 units: South 380, North 425
  // GTINs with the prefix 952 that GS1 keeps for examples (from memory)
  it("names the trade item as the supplier that is ordered from knows it", () => {
    const catalogue = [
      catalogueRow({ item: ITEM, supplier: "North Supplies", price: "10.00", gtin: " 09521234543213 " }),
      catalogueRow({ item: ITEM, supplier: "South Supplies", price: "30.00", gtin: "09521101530001" }),
    ];
    const gtins = (rows: CatalogueRow[]) =>
      scheduleOrders(
        fleetWith({ catalogue: rows }),
        policyWith(),
        [certainDemand(ITEM, [0, 0, 0, 0, 6])],
        [],
      ).orders.map(({ supplier, gtin }) => [supplier, gtin]);
    expect(gtins(catalogue)).toEqual([["North Supplies", "09521234543213"]]);
    expect(gtins([catalogue[1]!])).toEqual([["South Supplies", "09521101530001"]]);
    expect(gtins([catalogueRow({ item: ITEM, gtin: " " })])).toEqual([["North Supplies", null]]);
  });

  it("takes the cheaper of two suppliers for each order", () => {
    const fleet = fleetWith({
      catalogue: [catalogueRow({ item: ITEM }), catalogueRow({ item: ITEM, supplier: "South Medical", price: "8" })],
      suppliers: [supplierRow(), supplierRow({ supplier: "South Medical", orderFee: "60" })],
    });
    const buy = (needed: number) =>
      scheduleOrders(fleet, policyWith({ horizonMonths: 5 }), [certainDemand(ITEM, [0, 0, 0, 0, needed])], [])
        .orders[0];
    expect(buy(10)).toMatchObject({ supplier: "North Supplies", lineCost: 10_000, feeShare: 2_500 });
    expect(buy(40)).toMatchObject({ supplier: "South Medical", lineCost: 32_000, feeShare: 6_000 });
  });

  it("still schedules an item that the catalogue does not hold, and says so", () => {
    const { orders, cautions } = scheduleOrders(fleetWith({}), policyWith(), [certainDemand("Gel 60", [0, 3])], []);
    expect(orders[0]).toMatchObject({ supplier: "unnamed supplier", quantity: 3, lineCost: 0, unitPrice: "0.00" });
    expect(cautions.join(" ")).toContain("Gel 60 is not in the catalogue");
    expect(orders[0]!.reason).toContain("No price is known.");
  });

  // nothing speaks for buying early what has no price, and much against it: it ages on the shelf
  it("buys what has no price no earlier than it is needed", () => {
    const needs = certainDemand("Gel 60", [0, 3, 0, 0, 0, 2]);
    const { orders } = scheduleOrders(fleetWith({}), policyWith({ horizonMonths: 6 }), [needs], []);
    expect(orders.map(({ quantity }) => quantity)).toEqual([3, 2]);
    expect(orders[1]!.orderBy - orders[0]!.orderBy).toBeGreaterThan(90);
  });

  it("never compares prices in different currencies", () => {
    const fleet = fleetWith({
      catalogue: [
        catalogueRow({ item: ITEM }),
        catalogueRow({ item: ITEM, supplier: "South Medical", price: "900", currency: "JPY" }),
      ],
    });
    const { orders, cautions } = scheduleOrders(
      fleet,
      policyWith({ currency: "JPY" }),
      [certainDemand(ITEM, [0, 2])],
      [],
    );
    expect(orders[0]).toMatchObject({ currency: "JPY", lineCost: 1800, unitPrice: "900" });
    expect(cautions.join(" ")).toContain("cannot be compared");
  });

  it("tells a price without a currency as that, and not by the code of none", () => {
    const fleet = fleetWith({
      catalogue: [
        catalogueRow({ item: ITEM }),
        catalogueRow({ item: ITEM, supplier: "South Medical", currency: null }),
      ],
    });
    const { cautions } = scheduleOrders(fleet, policyWith(), [certainDemand(ITEM, [0, 2])], []);
    expect(cautions).toContain(
      `${ITEM} is sold in EUR and no named currency, which cannot be compared: only EUR is used.`,
    );
  });
});

describe("scheduleOrders: money", () => {
  const items = ["Gel 60", ITEM, "Paper 80"];
  const fleet = fleetWith({
    catalogue: items.map((item, n) =>
      catalogueRow({ item, price: `${n + 1}.33`, pricePer: "box", unitsPerBox: 3, leadDays: 30 }),
    ),
    suppliers: [supplierRow({ freeOver: "40" })],
  });
  const demands = items.map((item, n) => poissonDemand(item, months(24, n + 0.7)));
  const made = scheduleOrders(fleet, policyWith(), demands, []);

  it("makes totals equal the sums of their lines", () => {
    const all = made.orders.reduce((sum, line) => sum + line.lineCost + line.feeShare, 0);
    expect(made.budget.reduce((sum, year) => sum + year.planned, 0)).toBe(all);
    for (const year of made.budget) {
      expect(year.byItem.reduce((sum, item) => sum + item.planned, 0)).toBe(year.planned);
      expect(year.p50).toBeLessThanOrEqual(year.p80);
      expect(year.p80).toBeLessThanOrEqual(year.p95);
    }
  });

  it("charges one fee an order, none from free_over on", () => {
    const orders = new Map<string, OrderLine[]>();
    for (const line of made.orders) orders.set(line.order, [...(orders.get(line.order) ?? []), line]);
    for (const lines of orders.values()) {
      const total = lines.reduce((sum, line) => sum + line.lineCost, 0);
      expect(lines.reduce((sum, line) => sum + line.feeShare, 0)).toBe(total >= 4000 ? 0 : 2500);
    }
  });

  it("does not depend on the order of rows, items or lots", () => {
    const lots = [
      shelfLot({ item: ITEM, quantity: 3 }),
      shelfLot({ item: ITEM, quantity: 5, usableUntil: AS_OF + 90 }),
    ];
    const turned = { ...fleet, catalogue: [...fleet.catalogue].reverse() };
    expect(scheduleOrders(turned, policyWith(), [...demands].reverse(), [...lots].reverse())).toEqual(
      scheduleOrders(fleet, policyWith(), demands, lots),
    );
  });

  it("orders the same whatever else the catalogue lists that nobody needs", () => {
    // so many units over so many months that looking for orders to share ends before all was tried
    const items = ["a", "b", "c"];
    const needs = items.map((item, n) =>
      certainDemand(
        item,
        months(48, 0).map((_, m) => ((m * (7 + n)) % (5 + n)) * 3),
      ),
    );
    const idle = ["d", "e"];
    const rows = (names: string[], supplier: string) => names.map((item) => catalogueRow({ item, supplier }));
    const suppliers = ["Here", "There"].map((supplier) => supplierRow({ supplier, freeOver: "400" }));
    const policy = policyWith({ horizonMonths: 48 });
    const alone = scheduleOrders(fleetWith({ catalogue: rows(items, "Here"), suppliers }), policy, needs, []);
    const catalogue = [...rows(items, "Here"), ...rows(idle, "There")];
    const unneeded = idle.map((item) => certainDemand(item, months(48, 0)));
    expect(scheduleOrders(fleetWith({ catalogue, suppliers }), policy, [...needs, ...unneeded], []).orders).toEqual(
      alone.orders,
    );
  });

  // By hand: 100 at 3 % a year is 103 from the first anniversary of as-of and 106.09 from the second
  it("raises prices once a year, exactly", () => {
    const policy = policyWith({ priceRisePerYear: 0.03, horizonMonths: 36 });
    const rising = fleetWith({
      catalogue: [catalogueRow({ item: ITEM, kind: "pack", price: "100", minimumOrder: 1 })],
    });
    const needs = months(36, 0).map((_, n) => (n === 10 || n === 20 || n === 32 ? 1 : 0));
    const dear = scheduleOrders(rising, { ...policy, holdingRatePerYear: 1 }, [certainDemand(ITEM, needs)], []);
    expect(dear.orders.map((line) => line.unitPrice)).toEqual(["100.00", "103.00", "106.09"]);
  });
});
