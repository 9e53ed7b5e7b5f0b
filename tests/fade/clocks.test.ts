import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { arrheniusFactor } from "../../src/fade/arrhenius.ts";
import { cycleHistory } from "../../src/fade/cycle-history.ts";
import { packClocks } from "../../src/fade/pack-clock.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { day, device, pack, runtimeTest } from "../fleet/make-rows.ts";

describe("arrheniusFactor", () => {
  // Source: exp[Ea/k (1/T1 - 1/T2)], k = 8.617333262e-5 eV/K, computed in 40-digit arithmetic outside this project.
  it.each([
    [0.3, 25, 45, 2.08345234460044],
    [0.5, 25, 35, 1.8805023223848951],
    [0.5, 25, 45, 3.398646162285684],
    [0.6, 20, 30, 2.18908876516907],
    [0.7, 25, 55, 12.070951603845774],
    [0.7, 55, 125, 77.6453820553027],
    [0.8, 20, 40, 7.557766213205407],
  ])("with %f eV from %i to %i °C is %f", (ev, from, to, factor) => {
    expect(arrheniusFactor(ev, to, from) / factor).toBeCloseTo(1, 10);
    expect(arrheniusFactor(ev, from, to) * factor).toBeCloseTo(1, 10);
  });

  // Source: the activation energy that doubles the rate from 20 to 30 °C, same computation.
  it("doubles where it should", () => {
    expect(arrheniusFactor(0.5308182196833785, 30, 20)).toBeCloseTo(2, 10);
    expect(arrheniusFactor(0.5, 25, 25)).toBe(1);
  });
});

describe("cycleHistory", () => {
  it("goes straight between counts and at the given rate after the last", () => {
    const history = cycleHistory(0, [
      { day: 100, cycles: 10 },
      { day: 300, cycles: 50 },
    ]);
    expect(history.at(50, 99)).toBe(5);
    expect(history.at(200, 99)).toBe(30);
    expect(history.at(300 + 365.25, 40)).toBe(90);
    expect(history.ownRate).toBeCloseTo((50 / 300) * 365.25, 9);
  });

  it("takes a falling count for a reset: what had been reached stays", () => {
    const history = cycleHistory(0, [
      { day: 100, cycles: 200 },
      { day: 200, cycles: 10 },
      { day: 300, cycles: 60 },
    ]);
    expect(history.at(100, 0)).toBe(200);
    expect(history.at(200, 0)).toBe(210);
    expect(history.at(300, 0)).toBe(260);
  });

  // By hand: 100 and 220 a year apart are 120 a year, whatever was written down between them
  it.each([2000, 22, 160])("takes a single count of %i between 100 and 220 for a slip where it falls", (slip) => {
    const history = cycleHistory(0, [
      { day: 100, cycles: 100 },
      { day: 300, cycles: slip },
      { day: 500, cycles: 220 },
    ]);
    expect(history.at(500, 0)).toBe(220);
    expect(history.at(300, 0)).toBe(160);
  });

  it("takes the smaller of two counts of a day for a slip where it falls behind, and neither where both can be", () => {
    const upTo = (cycles: number) => [
      { day: 100, cycles: 180 },
      { day: 200, cycles },
      { day: 200, cycles: 200 },
    ];
    expect(cycleHistory(0, upTo(20)).at(200, 0)).toBe(200);
    expect(cycleHistory(0, upTo(199)).at(200, 0)).toBe(200);
  });

  it("knows no rate of its own from one busy week", () => {
    expect(cycleHistory(0, [{ day: 20, cycles: 30 }]).ownRate).toBeNull();
    expect(cycleHistory(null, [{ day: 500, cycles: 30 }]).ownRate).toBeNull();
    expect(cycleHistory(null, []).at(100, 50)).toBe(0);
  });

  it("never falls, whatever the counts", () => {
    const counts = fc.array(fc.record({ day: fc.integer({ min: 1, max: 3000 }), cycles: fc.nat(5000) }), {
      maxLength: 8,
    });
    fc.assert(
      fc.property(counts, fc.integer({ min: 0, max: 4000 }), fc.nat(500), (list, from, step) => {
        const history = cycleHistory(0, list);
        expect(history.at(from + step, 30)).toBeGreaterThanOrEqual(history.at(from, 30) - 1e-9);
      }),
      { seed: 6, numRuns: 300 },
    );
  });
});

describe("packClocks", () => {
  const asOf = day("2026-11-01");
  const EV = 0.45;

  it("count age from made, else from in_service less the item's median gap", () => {
    const fleet = emptyFleet();
    fleet.packs = [
      pack("A", { item: "p", made: day("2024-01-01"), inService: day("2024-03-01") }),
      pack("B", { item: "p", made: day("2024-01-01"), inService: day("2024-05-01") }),
      pack("C", { item: "p", made: day("2024-01-01"), inService: day("2024-04-01") }),
      pack("D", { item: "p", inService: day("2025-04-01") }),
    ];
    const clocks = packClocks(fleet, asOf, EV);
    expect(clocks.get("a")!.start).toBe(day("2024-01-01"));
    // the gaps are 60, 121 and 91 days
    expect(clocks.get("d")!.start).toBe(day("2025-04-01") - 91);
  });

  it("count age from a test before in_service, as the pack was made by then, but from no test before made", () => {
    const fleet = emptyFleet();
    fleet.packs = [
      pack("A", { item: "p", inService: day("2026-01-01") }),
      pack("B", { item: "p", made: day("2026-01-01"), inService: day("2026-01-01") }),
    ];
    fleet.runtimeTests = ["A", "B"].map((serial) => runtimeTest(serial, day("2022-03-01"), { percent: 99 }));
    const clocks = packClocks(fleet, asOf, EV);
    expect(clocks.get("a")!.start).toBe(day("2022-03-01"));
    expect(clocks.get("b")!.start).toBe(day("2026-01-01"));
  });

  it("run faster in the heat and in harder use", () => {
    const fleet = emptyFleet();
    fleet.devices = [device("HOT", { temperatureC: 35 })];
    const inService = day("2024-11-01");
    const counted = { item: "p", inService, cyclesOn: asOf };
    fleet.packs = [
      pack("usual", { ...counted, cycles: 100 }),
      pack("usual-2", { ...counted, cycles: 100 }),
      pack("hot", { ...counted, cycles: 100, device: "hot" }),
      pack("hard", { ...counted, cycles: 300 }),
    ];
    const clocks = packClocks(fleet, asOf, EV);
    const at = (serial: string) => clocks.get(serial)!.momentAt(asOf);
    expect(at("usual").years).toBeCloseTo(730 / 365.25, 9);
    expect(at("usual").useYears).toBeCloseTo(at("usual").years, 9);
    expect(at("hot").years / at("usual").years).toBeCloseTo(arrheniusFactor(EV, 35, 25), 9);
    expect(at("hard").useYears / at("usual").useYears).toBeCloseTo(3, 9);
  });

  // By hand: k = 8.617333262e-5 eV/K, exp(0.6/k (1/298.15 - 1/308.15)) = 2.13368; with 0 eV warmth counts for nothing.
  it("take the activation energy that they are given", () => {
    const fleet = emptyFleet();
    fleet.packs = [pack("hot", { item: "p", made: day("2024-11-01"), temperatureC: 35 })];
    const yearsAt = (ev: number) => packClocks(fleet, asOf, ev).get("hot")!.momentAt(asOf).years;
    expect(yearsAt(0.6) / (730 / 365.25)).toBeCloseTo(2.13368, 4);
    expect(yearsAt(0)).toBeCloseTo(730 / 365.25, 9);
  });

  it("let storage before service age a pack, and not use it", () => {
    const fleet = emptyFleet();
    const inService = day("2025-11-01");
    fleet.packs = [
      pack("fresh", { item: "p", made: inService, inService, cycles: 100, cyclesOn: asOf }),
      pack("stored", { item: "p", made: day("2024-11-01"), inService, cycles: 100, cyclesOn: asOf }),
    ];
    const clocks = packClocks(fleet, asOf, EV);
    const [fresh, stored] = [clocks.get("fresh")!.momentAt(asOf), clocks.get("stored")!.momentAt(asOf)];
    expect(stored.years - fresh.years).toBeCloseTo(365 / 365.25, 9);
    expect(stored.useYears).toBeCloseTo(fresh.useYears, 9);
    expect(clocks.get("stored")!.momentAt(inService)).toEqual({ years: expect.closeTo(365 / 365.25, 9), useYears: 0 });
  });

  it("let a pack without counts run at its duty's rate, and one without any date have no age", () => {
    const fleet = emptyFleet();
    fleet.devices = [device("D1", { duty: "night" }), device("D2", { duty: "night" })];
    const inService = day("2024-11-01");
    fleet.packs = [
      pack("counted", { item: "p", inService, cycles: 200, cyclesOn: asOf, device: "D1" }),
      pack("uncounted", { item: "p", inService, device: "D2" }),
      pack("undated", { item: "p", device: "D2" }),
    ];
    const clocks = packClocks(fleet, asOf, EV);
    expect(clocks.get("uncounted")!.cyclesPerYear).toBeCloseTo(clocks.get("counted")!.cyclesPerYear!, 9);
    expect(clocks.get("undated")!.start).toBeNull();
  });

  // By hand: 200 cycles in two years are 100 a year; item "p night" on van duty is not item "p" on night van duty
  it("do not take the duty of one item for another item whose name ends as the duty begins", () => {
    const fleet = emptyFleet();
    fleet.devices = [device("D1", { duty: "night van" }), device("D2", { duty: "van" })];
    const inService = day("2024-11-01");
    fleet.packs = [
      pack("busy", { item: "p", inService, cycles: 2000, cyclesOn: asOf, device: "D1" }),
      pack("calm", { item: "p night", inService, cycles: 200, cyclesOn: asOf, device: "D2" }),
      pack("uncounted", { item: "p night", inService, device: "D2" }),
    ];
    const clocks = packClocks(fleet, asOf, EV);
    expect(clocks.get("uncounted")!.cyclesPerYear).toBeCloseTo((200 / 730) * 365.25, 9);
  });
});
