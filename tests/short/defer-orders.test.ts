import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../src/calendar/day.ts";
import type { ItemDemand } from "../../src/demand/types.ts";
import type { Policy } from "../../src/fleet/policy.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import { deferOrders } from "../../src/short/defer-orders.ts";
import { forecastShort } from "../../src/short/forecast-short.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { certainDemand, poissonDemand, policyWith, supplierRow } from "../orders/made-up.ts";
import { fleetOf, NO_LIFE, PADS } from "./made-up.ts";

const GEL = "Gel 60";
/** So many months of needs that a year without money puts off more than a hundred lines. */
const MANY = [certainDemand(PADS, new Array<number>(112).fill(2))];
/** A schedule hangs on no budget, and one of many months takes its seconds. */
const schedules = new Map<ItemDemand[], ReturnType<typeof scheduleOrders>>();

function capped(demand: ItemDemand[], choices: Partial<Policy>, fleet = fleetOf(30)) {
  const policy = policyWith({ horizonMonths: demand[0]!.months, ...choices });
  const dated = forecastDatedStock(fleet, policy);
  const schedule = schedules.get(demand) ?? scheduleOrders(fleet, policy, demand, []);
  schedules.set(demand, schedule);
  const scheduled = { fleet, policy, life: NO_LIFE, dated, demand, lots: [], schedule };
  return { schedule, cut: deferOrders(scheduled), full: forecastShort(scheduled) };
}

describe("deferOrders", () => {
  // By hand: in 2027 pads for 5 needs in April cost 50, gel for 5 needs in November costs 50. With 50 to spend one waits
  // for 1 January 2028 and arrives on the 31st: pads would be short at nine month ends, gel at two, so gel waits.
  it("puts off what harms least per unit of money", () => {
    const pads = certainDemand(PADS, [0, 0, 0, 0, 0, 5, ...new Array<number>(12).fill(0)]);
    const gel = certainDemand(GEL, [...new Array<number>(12).fill(0), 5, 0, 0, 0, 0, 0]);
    const { cut } = capped([pads, gel], { budgetPerFiscalYear: "50" });
    expect(cut!.deferrals.map((one) => [one.item, isoFromDay(one.deferredTo), one.saves])).toEqual([
      [GEL, "2028-01-01", 5000],
    ]);
    expect(cut!.deferrals[0]!.deviceMonthsShort).toBeCloseTo(5 * 2, 9); // November and December ends; there in January
    const short = cut!.short.map((one) => Number(one.expected.toFixed(9)));
    expect(short.slice(11, 15)).toEqual([0, 5, 5, 0]);
  });

  // By hand: 2 of gel for November cost 20 and lack at two month ends, 0.2 device-months for each 1.00; 12 pads for April cost
  // 120 and lack at nine, 0.9. Of 140 with 100 to spend gel goes first, which is not enough; then the pads, of which no
  // fewer than 12 can be had, go as a whole, and leave room for the gel. In 2028 the pads alone cost too much again.
  it("keeps what a larger delay has made room for", () => {
    const pads = certainDemand(PADS, [0, 0, 0, 0, 0, 12, ...new Array<number>(12).fill(0)]);
    const gel = certainDemand(GEL, [...new Array<number>(12).fill(0), 2, 0, 0, 0, 0, 0]);
    const fleet = fleetOf(30);
    fleet.catalogue[0]!.minimumOrder = 12;
    const { cut } = capped([pads, gel], { budgetPerFiscalYear: "100" }, fleet);
    expect(cut!.deferrals.map(({ fiscalYear, item, saves }) => [fiscalYear, item, saves])).toEqual([
      ["2027", PADS, 12_000],
      ["2028", PADS, 12_000],
    ]);
    expect(cut!.deferrals[0]!.deviceMonthsShort).toBeCloseTo(12 * 9, 9);
  });

  // By hand: 8 of gel for November cost 80 and lack at two month ends, 80 pads for April 800 and lack at nine. Of 880 with 790
  // to spend all gel goes first, one by one; the 10 left over are one of the pads, not the 9 that 90 would have taken.
  it("puts off no more of a line than is left to be spared when its turn comes", () => {
    const pads = certainDemand(PADS, [0, 0, 0, 0, 0, 80, ...new Array<number>(12).fill(0)]);
    const gel = certainDemand(GEL, [...new Array<number>(12).fill(0), 8, 0, 0, 0, 0, 0]);
    const { cut } = capped([pads, gel], { budgetPerFiscalYear: "790" }, fleetOf(90));
    expect(cut!.deferrals.map(({ item, quantity, deviceMonthsShort }) => [item, quantity, deviceMonthsShort])).toEqual([
      [GEL, 8, 16],
      [PADS, 1, 9],
    ]);
  });

  // By hand: 24 pads for April cost 240, 30 more than the budget. An eighth, 3 pads, would do, but no fewer than 10 can be
  // had in 2028 either; of 18 those 10 would leave 8 in 2027, which cannot be had, so all 18 wait.
  it.each([
    [24, "210", 10],
    [18, "150", 18],
  ])("puts off no less than the minimum order: of %i units with %s to spend %i", (units, budget, deferred) => {
    const fleet = fleetOf(30);
    fleet.catalogue[0]!.minimumOrder = 10;
    const pads = certainDemand(PADS, [0, 0, 0, 0, 0, units, ...new Array<number>(6).fill(0)]);
    const { cut } = capped([pads], { budgetPerFiscalYear: budget }, fleet);
    const first = cut!.deferrals.find(({ fiscalYear }) => fiscalYear === "2027");
    expect([first!.quantity, first!.saves]).toEqual([deferred, deferred * 1000]);
  });

  // By hand: one order of 18 March 2027 brings, for needs of May, 5 pads for 50 and 3 gel for 45. Put off to 1 January, a unit
  // lacks at 8 month ends, so gel, dearer, goes first.
  // With a fee of 25 the order costs 120. Without gel it is 75, as the fee stays; a budget of 70 takes 1 of the pads, too. The
  // 3 gel and 1 of the pads are one order of January 2028, with one fee: 80, so 1 gel waits once more, lacking at 4 month ends.
  // Free from 90 on, it costs 95. One gel less would cost 80 and the fee, two less 65 and the fee: 90.
  it.each([
    ["its last line is gone", null, "70", [GEL, 3, 4500, 24], [PADS, 1, 1000, 8], [GEL, 1, 1500, 4]],
    ["it is free again", "90.00", "90", [GEL, 2, 500, 16]],
  ])("counts an order's fee until %s", (_, freeOver, budgetPerFiscalYear, ...deferred) => {
    const needs = (units: number) => Array.from({ length: 18 }, (_, month) => (month === 6 ? units : 0));
    const fleet = fleetOf(30, { suppliers: [supplierRow({ freeOver })] });
    fleet.catalogue[1]!.price = "15.00";
    const { cut } = capped(
      [certainDemand(PADS, needs(5)), certainDemand(GEL, needs(3))],
      { budgetPerFiscalYear, holdingRatePerYear: 0 },
      fleet,
    );
    const told = cut!.deferrals.map((one) => [one.item, one.quantity, one.saves, Math.round(one.deviceMonthsShort)]);
    expect(told).toEqual(deferred);
  });

  // By hand: nothing is known of what the order of March costs but its fee of 25. With nothing to spend both lines wait for
  // January 2028, and then for 2029: whichever goes first spares nothing, and the second takes the fee along.
  it("tells an order's fee of the last of its lines that are put off", () => {
    const needs = Array.from({ length: 18 }, (_, month) => (month === 6 ? 3 : 0));
    const fleet = fleetOf(30, { suppliers: [supplierRow({ freeOver: null })] });
    for (const row of fleet.catalogue) row.price = null;
    const demand = [PADS, GEL].map((item) => certainDemand(item, needs));
    const { cut } = capped(demand, { budgetPerFiscalYear: "0", currency: "EUR" }, fleet);
    const told = cut!.deferrals.map(({ fiscalYear, saves }) => [fiscalYear, saves]);
    expect(told).toEqual([
      ["2027", 0],
      ["2027", 2500],
      ["2028", 0],
      ["2028", 2500],
    ]);
  });

  it("leaves a schedule alone that the budget can pay", () => {
    const { cut, full } = capped([poissonDemand(PADS, new Array<number>(12).fill(1))], { budgetPerFiscalYear: "9999" });
    expect(cut!.deferrals).toEqual([]);
    expect(cut!.short).toEqual(full.map((one) => one.withSchedule));
  });

  it("keeps every fiscal year within the budget and is never better than the whole schedule", () => {
    const demand = [PADS, GEL].map((item) => poissonDemand(item, new Array<number>(18).fill(2)));
    const { schedule, cut, full } = capped(demand, { budgetPerFiscalYear: "250.00", fiscalYearStarts: 7 });
    const spend = new Map<string, number>();
    const add = (leaves: number, amount: number) => {
      const [year, month] = isoFromDay(leaves).split("-").map(Number);
      const fiscal = String(month! >= 7 ? year : year! - 1);
      spend.set(fiscal, (spend.get(fiscal) ?? 0) + amount);
    };
    for (const line of schedule.orders) add(line.orderBy, line.lineCost + line.feeShare);
    for (const one of cut!.deferrals) {
      add(one.orderBy, -one.saves);
      add(one.deferredTo, one.quantity * 1000); // 10.00 a unit, no fees
    }
    expect(cut!.deferrals.length).toBeGreaterThan(0);
    // beyond the plan's last fiscal year nothing is held against a budget
    for (const [year, sum] of spend) if (year < "2028") expect(sum).toBeLessThanOrEqual(30_000);
    const total = (all: readonly { expected: number }[]) => all.reduce((sum, one) => sum + one.expected, 0);
    expect(total(cut!.short)).toBeGreaterThanOrEqual(total(full.map((one) => one.withSchedule)));
  });

  // One item alone: device-months short of it are device-months short, and each delay's are those that it adds.
  it.each([
    ["few", [certainDemand(PADS, new Array<number>(18).fill(2))]],
    ["many", MANY],
  ])(
    "brings by its delays what the cut schedule lacks, of %s lines, and leaves nothing that nothing can pay",
    (_, demand) => {
      const { schedule, cut, full } = capped(demand, { budgetPerFiscalYear: "0" });
      const last = Math.max(...cut!.deferrals.map(({ deferredTo }) => deferredTo));
      const late = cut!.deferrals.filter(({ deferredTo }) => deferredTo === last);
      expect(late.length > 100).toBe(demand === MANY);
      const units = (all: readonly { quantity: number }[]) => all.reduce((sum, one) => sum + one.quantity, 0);
      expect(units(late)).toBe(units(schedule.orders));
      const total = (all: readonly number[]) => all.reduce((sum, one) => sum + one, 0);
      const brought = total(cut!.deferrals.map(({ deviceMonthsShort }) => deviceMonthsShort));
      const lacking = total(cut!.short.map(({ expected }) => expected));
      expect(brought).toBeCloseTo(lacking - total(full.map(({ withSchedule }) => withSchedule.expected)), 6);
    },
  );

  it("puts off as little of many lines as of few: no year is left over its budget, or more than a line under it", () => {
    const { schedule, cut } = capped(MANY, { budgetPerFiscalYear: "100" });
    const largest = Math.max(...schedule.orders.map((line) => line.lineCost + line.feeShare));
    const years = new Map<string, number>();
    const add = (day: number, amount: number) => {
      const year = isoFromDay(day).slice(0, 4);
      years.set(year, (years.get(year) ?? 0) + amount);
    };
    for (const line of schedule.orders) add(line.orderBy, line.lineCost + line.feeShare);
    for (const one of cut!.deferrals) {
      add(one.orderBy, -one.saves);
      add(one.deferredTo, one.saves); // no fees, one price
    }
    const ends = Math.max(...cut!.deferrals.map(({ deferredTo }) => Number(isoFromDay(deferredTo).slice(0, 4))));
    for (const [year, spend] of years) {
      if (Number(year) >= ends || !cut!.deferrals.some(({ fiscalYear }) => fiscalYear.startsWith(year))) continue;
      expect(spend).toBeLessThanOrEqual(10_000);
      expect(spend).toBeGreaterThan(10_000 - largest);
    }
  });

  // By hand: pads without a price are ordered first, gel for 5 needs in November 2027 costs 50 and the budget is 40.
  it("holds the budget's money against what has a price, whatever is ordered first", () => {
    const fleet = fleetOf(30);
    Object.assign(fleet.catalogue[0]!, { price: null, currency: null });
    const pads = certainDemand(PADS, [0, 5, ...new Array<number>(16).fill(0)]);
    const gel = certainDemand(GEL, [...new Array<number>(12).fill(0), 5, 0, 0, 0, 0, 0]);
    const { cut } = capped([pads, gel], { budgetPerFiscalYear: "40" }, fleet);
    expect(cut!.deferrals.map(({ item, currency }) => [item, currency])).toContainEqual([GEL, "EUR"]);
    expect(cut!.cautions).toEqual([]);
    // with a price, and still no currency, it is the first to leave, and the gel's currency is another
    fleet.catalogue[0]!.price = "10.00";
    expect(capped([pads, { ...gel }], { budgetPerFiscalYear: "40" }, fleet).cut!.cautions).toEqual([
      "The budget is taken to be in no named currency; orders in EUR are not held against it. Name the budget's currency in the policy.",
    ]);
  });

  it("does nothing without a budget", () => {
    expect(capped([certainDemand(PADS, [0, 1])], {}).cut).toBeNull();
  });
});
