import { describe, expect, it } from "vitest";
import { readingsByPack } from "../../src/fade/capacity-readings.ts";
import { emptyFleet, type RuntimeTestRow } from "../../src/fleet/rows.ts";
import { catalogued, day, pack } from "../fleet/make-rows.ts";

const source = { file: "made-up.csv", sheet: null, line: 2 };

function test(date: string, facts: Partial<RuntimeTestRow>): RuntimeTestRow {
  const blank = { minutes: null, wh: null, ah: null, percent: null, result: null, loadW: null, temperatureC: null };
  return { serial: "A", date: day(date), ...blank, cycles: null, fullCharge: null, atLeast: null, source, ...facts };
}

function readingsOf(tests: RuntimeTestRow[], rated: Parameters<typeof catalogued>[2] = {}) {
  const fleet = emptyFleet();
  fleet.packs = [pack("A", { item: "p", inService: day("2024-01-01") })];
  fleet.catalogue = [catalogued("p", "pack", rated)];
  fleet.runtimeTests = tests;
  return readingsByPack(fleet, 0.8).get("a")!;
}

describe("readingsByPack", () => {
  // By hand: 60 W for 90 minutes is 90 Wh, of 100 Wh rated 0.9.
  it("turns load and minutes into a share of the rated energy", () => {
    const { readings } = readingsOf([test("2025-01-01", { minutes: 90, loadW: 60 })], { ratedWh: 100 });
    expect(readings).toMatchObject([{ day: day("2025-01-01"), capacity: 0.9 }]);
  });

  it("takes percent, Wh, Ah and minutes against their own rating", () => {
    const rated = { ratedWh: 100, ratedAh: 8, ratedMinutes: 240 };
    const { readings } = readingsOf(
      [
        test("2025-01-01", { percent: 95 }),
        test("2025-02-01", { wh: 92 }),
        test("2025-03-01", { ah: 7 }),
        test("2025-04-01", { minutes: 204 }),
      ],
      rated,
    );
    expect(readings.map((reading) => reading.capacity)).toEqual([0.95, 0.92, 0.875, 0.85]);
  });

  it("takes early tests for a missing rating, and says so", () => {
    const found = readingsOf([test("2024-02-01", { minutes: 200 }), test("2025-02-01", { minutes: 180 })]);
    expect(found.readings.map((reading) => reading.capacity)).toEqual([1, 0.9]);
    expect(found.ratedByEarlyTests).toBe(true);
  });

  // By hand: 180 days after 2024-01-01, in a leap year, is 2024-06-29
  it("takes a first test for early up to 180 days after the start of service", () => {
    const capacities = (date: string) => readingsOf([test(date, { minutes: 200 })]).readings.map((one) => one.capacity);
    expect(capacities("2024-06-29")).toEqual([1]);
    expect(capacities("2024-06-30")).toEqual([]);
  });

  it("has no reading where nothing rates it, and leaves the test out by name", () => {
    const unrated = test("2025-02-01", { minutes: 180 });
    const found = readingsOf([unrated]);
    expect(found.readings).toEqual([]);
    expect(found.leftOut).toEqual([{ test: unrated, because: "in a measure that nothing rates" }]);
  });

  // By hand: 54 Wh of 60 rated; of minutes the first test, 200, stands for a new pack, and 180 are 0.9 of it.
  it("takes early tests for the one measure that has no rating", () => {
    const tests = [
      test("2024-02-01", { minutes: 200 }),
      test("2025-02-01", { minutes: 180 }),
      test("2025-03-01", { wh: 54 }),
    ];
    const found = readingsOf(tests, { ratedWh: 60 });
    expect(found.readings.map((reading) => reading.capacity)).toEqual([1, 0.9, 0.9]);
    expect(found.ratedByEarlyTests).toBe(true);
    expect(found.leftOut).toEqual([]);
  });

  it("prefers a measure that is rated", () => {
    const found = readingsOf([test("2024-02-01", { wh: 57, minutes: 120 })], { ratedMinutes: 125 });
    expect(found.readings.map((reading) => reading.capacity)).toEqual([0.96]);
    expect(found.ratedByEarlyTests).toBe(false);
  });

  it("leaves out what no pack of its kind can give", () => {
    const tests = [
      test("2024-03-01", { minutes: 200 }),
      test("2025-02-01", { minutes: 1900 }),
      test("2025-03-01", { minutes: 190 }),
    ];
    const found = readingsOf(tests);
    expect(found.readings.map((reading) => reading.capacity)).toEqual([1, 0.95]);
    expect(found.leftOut).toEqual([{ test: tests[1], because: "far above new packs" }]);
  });

  it("leaves out tests not from full charge, too cold or too hot", () => {
    const found = readingsOf([
      test("2025-01-01", { percent: 60, fullCharge: false }),
      test("2025-02-01", { percent: 70, temperatureC: 2 }),
      test("2025-03-01", { percent: 90, temperatureC: 22 }),
    ]);
    expect(found.readings.map((reading) => reading.capacity)).toEqual([0.9]);
    expect(found.leftOut.map(({ because }) => because)).toEqual(["not from a full charge", "too cold or too hot"]);
  });

  it("compares tests from 10 to 40 °C, both included", () => {
    const left = [9.9, 10, 40, 40.1].map((temperatureC) => {
      return readingsOf([test("2025-02-01", { percent: 90, temperatureC })]).leftOut.length;
    });
    expect(left).toEqual([1, 0, 0, 1]);
  });

  it("takes a test stopped early for a lower bound", () => {
    const found = readingsOf([test("2025-01-01", { percent: 85, atLeast: true })]);
    expect(found.readings).toEqual([]);
    expect(found.bounds).toEqual([{ day: day("2025-01-01"), threshold: 0.85, below: false }]);
  });

  it("holds a failed test until a later pass clears it", () => {
    const fail = test("2025-01-01", { result: "fail" });
    const pass = test("2025-02-01", { result: "pass" });
    expect(readingsOf([fail]).failedOn).toBe(day("2025-01-01"));
    expect(readingsOf([pass, fail]).failedOn).toBeNull();
    // which of a day's two came first nothing tells: the times are dropped
    const passedThatDay = test("2025-01-01", { result: "pass" });
    for (const tests of [
      [fail, passedThatDay],
      [passedThatDay, fail],
    ])
      expect(readingsOf(tests).failedOn).toBe(day("2025-01-01"));
    expect(readingsOf([fail]).bounds[0]).toMatchObject({ threshold: 0.8, below: true });
  });
});
