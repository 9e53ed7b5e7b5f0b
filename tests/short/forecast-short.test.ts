import { describe, expect, it } from "vitest";
import { lastDayOfMonth } from "../../src/calendar/month.ts";
import type { ItemDemand } from "../../src/demand/types.ts";
import type { DatedStockRow, Fleet, PackRow } from "../../src/fleet/rows.ts";
import type { EndCause, PackLife } from "../../src/life/types.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import { forecastShort } from "../../src/short/forecast-short.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import type { UsableLot } from "../../src/supplies/types.ts";
import { pack } from "../fleet/make-rows.ts";
import { AS_OF, catalogueRow, certainDemand, poissonDemand, policyWith, shelfLot } from "../orders/made-up.ts";
import { device, fleetOf, NO_LIFE, PADS, SOURCE } from "./made-up.ts";

function short(fleet: Fleet, demand: ItemDemand[], lots: UsableLot[] = [], months = demand[0]!.months, life = NO_LIFE) {
  const policy = policyWith({ horizonMonths: months });
  const schedule = scheduleOrders(fleet, policy, demand, lots);
  const dated = forecastDatedStock(fleet, policy);
  return forecastShort({ fleet, policy, life, dated, demand, lots, schedule });
}

// shares of devices are binary fractions, not exact ones
const nearly = (value: number) => Number(value.toFixed(9));

describe("forecastShort", () => {
  // By hand: 1 unit on the shelf serves the first of 3 needs; a lead of 30 days brings the rest by 25 December
  it("counts what neither stock nor orders serve by each month's end", () => {
    const months = short(fleetOf(10), [certainDemand(PADS, [1, 2, 0])], [shelfLot({ item: PADS, quantity: 1 })]);
    expect(months.map((one) => nearly(one.withoutBuying.expected))).toEqual([0, 2, 2]);
    expect(months.map((one) => one.withoutBuying.anyChance)).toEqual([0, 1, 1]);
    expect(months.map((one) => one.withSchedule.expected)).toEqual([0, 0, 0]);
    expect(months.map((one) => one.devices)).toEqual([10, 10, 10]);
  });

  // By hand: lacking pads 5 of 10 devices, lacking gel 5 of 10, independent: 10 * (1 - 0.5 * 0.5) = 7.5
  it("counts a device once, whatever it lacks", () => {
    const [month] = short(fleetOf(10), [certainDemand(PADS, [5]), certainDemand("Gel 60", [5])]);
    expect(month!.withoutBuying.expected).toBeCloseTo(7.5, 9);
  });

  it("never counts more devices than there are", () => {
    const [month] = short(fleetOf(3), [certainDemand(PADS, [8])]);
    expect(month!.withoutBuying.expected).toBe(3);
  });

  // Source: Poisson, P(N > 2) = 1 - F(2) and E(N - 2)+ for mean 2 = 0.3233 and 0.54134 (computed with R 4.2.2);
  // 400 sampled paths: a standard error of about 0.023 and 0.05
  it("gives the chance of a shortage", () => {
    const [month] = short(fleetOf(50), [poissonDemand(PADS, [2])], [shelfLot({ item: PADS, quantity: 2 })]);
    expect(Math.abs(month!.withoutBuying.anyChance - 0.3233235838)).toBeLessThan(0.07);
    expect(Math.abs(month!.withoutBuying.expected - 0.54134113295)).toBeLessThan(0.15);
  });

  const due = (row: PackRow, on: number, dueChance: number[], because: EndCause = "age") =>
    ({
      pack: row,
      item: PADS,
      replaceBy: { kind: on <= AS_OF ? "already-due" : "within-horizon", p50: on, because },
      dueChance: Float64Array.from(dueChance),
    }) as PackLife;

  const row = (expiry: number, facts: Partial<DatedStockRow> = {}): DatedStockRow => ({
    item: PADS,
    expiry,
    lot: null,
    serial: null,
    quantity: 1,
    place: "D1",
    made: null,
    opened: null,
    label: null,
    held: null,
    source: SOURCE,
    ...facts,
  });

  // By hand: D1 holds two units of one day, D2 two of another, so that a lapse takes two. Four lapsing leave two devices short;
  // three, of which one was replaced, as well; two that lapse and two that are used are one lapse and two uses: three.
  it.each([
    [4, 0, 2],
    [3, 0, 2],
    [2, 2, 3],
  ])("counts units that lapse together as one device short: %i lapsing, %i used", (lapsing, used, devices) => {
    const fleet = fleetOf(10, {
      datedStock: [row(AS_OF - 9, { quantity: 2 }), ...[1, 2].map(() => row(AS_OF - 8, { place: "D2" }))],
    });
    const demand = certainDemand(PADS, [lapsing + used]);
    demand.causes = { ...demand.causes, use: Float64Array.of(used), expiry: Float64Array.of(lapsing) };
    expect(short(fleet, [demand])[0]!.withoutBuying.expected).toBeCloseTo(devices, 9);
  });

  // By hand: both of D1's units lapse in December, which leaves it short, one of D2's in January, so that two are; that those of
  // D3 and D4 lapse on days of their own, much later, bears on neither
  it("counts what lapses together by what has lapsed so far", () => {
    const singles = [50, 80, 140, 141, 142, 143].map((days, at) => row(AS_OF + days, { place: `D${2 + (at >> 1)}` }));
    const fleet = fleetOf(4, { datedStock: [row(AS_OF + 20, { quantity: 2 }), ...singles] });
    const demand = certainDemand(PADS, [0, 2, 1, 1, 0, 4]);
    demand.causes = { ...demand.causes, expiry: demand.mean };
    const months = short(fleet, [demand]);
    expect(months.slice(0, 3).map((one) => nearly(one.withoutBuying.expected))).toEqual([0, 1, 2]);
  });

  // By hand: the new device needs two units from December on and has none, which leaves one of ten short; with two more that are
  // used in January three of twenty are lacking, and a device has both of its own with chance 17/20 * 16/19
  it("counts a new device that lacks all its units once", () => {
    const fleet = fleetOf(9, { catalogue: [catalogueRow({ item: PADS, fits: ["Monitor"], perDevice: 2 })] });
    fleet.devices.push(device("new", { inService: AS_OF + 20 }));
    const demand = certainDemand(PADS, [0, 2, 2]);
    demand.causes = { ...demand.causes, growth: Float64Array.of(0, 2, 0), use: Float64Array.of(0, 0, 2) };
    expect(short(fleet, [demand]).map((one) => nearly(one.withoutBuying.expected))).toEqual([0, 1, 2.842105263]);
  });

  // By hand: N comes into service after the plan, so the pads that lapse in it before are no need, and no device lacks any
  it("counts nothing where all that lapses lies in a device that is not yet in service", () => {
    const devices = [device("D1"), device("N", { inService: AS_OF + 900 })];
    const fleet = fleetOf(0, { devices, datedStock: [row(AS_OF - 9, { place: "N" })] });
    const months = short(fleet, [certainDemand(PADS, [0, 0])]);
    expect(months.map(({ withoutBuying }) => withoutBuying)).toEqual([
      { expected: 0, anyChance: 0 },
      { expected: 0, anyChance: 0 },
    ]);
  });

  it("counts a unit as good to the end of its expiry day", () => {
    const december = lastDayOfMonth(certainDemand(PADS, [0]).from + 1);
    const at = (expiry: number) =>
      short(fleetOf(10, { datedStock: [row(expiry)] }), [certainDemand(PADS, [0, 1, 0])]).map((one) =>
        nearly(one.withoutBuying.expected),
      );
    expect(at(december)).toEqual([0, 0, 1]);
    expect(at(december - 1)).toEqual([0, 1, 1]);
  });

  it("follows devices that come and go", () => {
    const fleet = fleetOf(2);
    fleet.devices.push(
      device("new", { inService: AS_OF + 40 }),
      device("old", { retired: AS_OF + 40 }),
      device("gone"),
    );
    fleet.devices[4]!.retired = AS_OF - 1;
    expect(short(fleet, [certainDemand(PADS, [0, 0])]).map((one) => one.devices)).toEqual([3, 3]);
  });

  // By hand: the pads of D1 to D3 lapse on 20 December. D1 and D2 leave on 10 February, and what they lack with them.
  it("counts no device as short of what a device lacked that has left service", () => {
    const fleet = fleetOf(5, {
      datedStock: ["D1", "D2", "D3"].map((place) => row(AS_OF + 25, { place })),
    });
    for (const leaving of fleet.devices.slice(0, 2)) leaving.retired = AS_OF + 77;
    const months = short(fleet, [certainDemand(PADS, [0, 3, 0, 0, 0])]);
    expect(months.map((one) => one.devices)).toEqual([5, 5, 5, 3, 3]);
    expect(months.map((one) => nearly(one.withoutBuying.expected))).toEqual([0, 3, 3, 1, 1]);
  });

  // By hand: the pack is due now; D1 leaves on 4 January
  it("counts no device as short of a pack of a device that has left service", () => {
    const life = { ...NO_LIFE, packs: [due(pack("P1", { device: "D1" }), AS_OF, [1, 1, 1])] };
    const fleet = fleetOf(3);
    fleet.devices[0]!.retired = AS_OF + 40;
    const months = short(fleet, [certainDemand(PADS, [1, 0, 0])], [], 3, life);
    expect(months.map((one) => nearly(one.withoutBuying.expected))).toEqual([1, 1, 0]);
  });

  // By hand: the pool's pack and that in D1 are as likely to be due, with one need in all: it falls on a device with chance 1/2
  it("shares needs between the packs in devices and those of a pool", () => {
    const packs = [pack("P1"), pack("P2", { device: "D1" })];
    const life = { ...NO_LIFE, packs: packs.map((row) => due(row, AS_OF + 9, [0.5], "fade")) };
    const [month] = short(fleetOf(2, { packs }), [certainDemand(PADS, [1])], [], 1, life);
    expect([month!.devices, month!.withoutBuying]).toEqual([2, { expected: 0.5, anyChance: 0.5 }]);
  });

  const pairs = catalogueRow({ item: PADS, fits: ["Monitor"], perDevice: 2 });
  const ofLimits = (needs: number[]) => {
    const demand = certainDemand(PADS, needs);
    return { ...demand, causes: { ...demand.causes, limit: demand.mean } };
  };

  // By hand: both packs of each of four devices are due on 4 January. Of eight, four in stock make two devices whole, five leave
  // two short and seven one
  it.each([
    [0, 4],
    [4, 2],
    [5, 2],
    [7, 1],
  ])("counts two packs of one device that are due on one day as one device short: %i in stock", (quantity, devices) => {
    const packs = [1, 1, 2, 2, 3, 3, 4, 4].map((at, index) => pack(`P${index}`, { device: `D${at}` }));
    const life = { ...NO_LIFE, packs: packs.map((row) => due(row, AS_OF + 40, [0, 0, 1])) };
    const lots = quantity === 0 ? [] : [shelfLot({ item: PADS, quantity })];
    const months = short(fleetOf(4, { packs, catalogue: [pairs] }), [ofLimits([0, 0, 8])], lots, 3, life);
    expect(months.map((one) => nearly(one.withoutBuying.expected))).toEqual([0, 0, devices]);
  });

  // By hand: one pack of each device is due on 15 December, its other one in February. What is lacking is of as many devices
  it("counts packs of one device that are due by turns as of different devices", () => {
    const packs = [1, 2, 3, 1, 2, 3].map((at, index) => pack(`P${index}`, { device: `D${at}` }));
    const life = {
      ...NO_LIFE,
      packs: packs.map((row, index) =>
        index < 3 ? due(row, AS_OF + 20, [0, 1, 1, 1]) : due(row, AS_OF + 80, [0, 0, 0, 1]),
      ),
    };
    const months = short(fleetOf(3, { packs, catalogue: [pairs] }), [ofLimits([0, 3, 0, 3])], [], 4, life);
    expect(months.map((one) => nearly(one.withoutBuying.expected))).toEqual([0, 3, 3, 3]);
  });

  // By hand: in December the packs of both devices are due, the pool's two only in January
  it("counts of a pool's packs those that are due by then", () => {
    const packs = [pack("P1", { device: "D1" }), pack("P2", { device: "D2" }), pack("P3"), pack("P4")];
    const life = {
      ...NO_LIFE,
      packs: packs.map((row) =>
        row.device === null ? due(row, AS_OF + 40, [0, 0, 1]) : due(row, AS_OF + 20, [0, 1, 1]),
      ),
    };
    const months = short(fleetOf(2, { packs }), [ofLimits([0, 2, 2])], [], 3, life);
    expect(months[1]!.withoutBuying).toEqual({ expected: 2, anyChance: 1 });
  });

  it("is no worse with the schedule than without", () => {
    const demand = [poissonDemand(PADS, new Array(18).fill(1.5)), poissonDemand("Gel 60", new Array(18).fill(3))];
    for (const { withSchedule, withoutBuying } of short(fleetOf(40), demand)) {
      expect(withSchedule.expected).toBeLessThanOrEqual(withoutBuying.expected);
      expect(withSchedule.anyChance).toBeLessThanOrEqual(withoutBuying.anyChance);
    }
  });
});
