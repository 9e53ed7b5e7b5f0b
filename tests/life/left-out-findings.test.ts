import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { forecastPacks } from "../../src/life/forecast-packs.ts";
import { leftOutFindings } from "../../src/life/left-out-findings.ts";
import { catalogued, day, pack, runtimeTest } from "../fleet/make-rows.ts";

const onLine = (line: number) => ({ file: "tests.csv", sheet: null, line });

describe("leftOutFindings", () => {
  const cold = (serial: string, line: number) => ({
    test: runtimeTest(serial, day("2026-01-05"), { percent: 61, temperatureC: 2, source: onLine(line) }),
    because: "too cold or too hot" as const,
  });

  it("name a test with its line, why it is not used, and what to do", () => {
    const found = leftOutFindings([cold("A", 7)]);
    expect(found).toMatchObject([{ code: "test-not-comparable", severity: "info", file: "tests.csv", line: 7 }]);
    expect(found[0]!.message).toBe('The test of "A" on 2026-01-05 is too cold or too hot: its capacity is not used.');
    expect(found[0]!.fix).toMatch(/full charge at 10 to 40 °C/);
  });

  it("are one a sheet and reason, with every line", () => {
    const elsewhere = { ...cold("B", 3), because: "in a measure that nothing rates" as const };
    const found = leftOutFindings([cold("A", 9), elsewhere, cold("A", 7), cold("C", 12)]);
    expect(found.map(({ code, line, lines }) => [code, line, lines])).toEqual([
      ["test-unrated", 3, []],
      ["test-not-comparable", 7, [9, 12]],
    ]);
    expect(found[1]!.message).toMatch(/; and 2 more rows\.$/);
  });
});

describe("forecastPacks", () => {
  it("finds the tests that nothing rates, rechargeable and not, and none of those yet to come", () => {
    const asOf = day("2026-11-01");
    const fleet = emptyFleet();
    fleet.catalogue = [catalogued("p", "pack", { ratedWh: 60 }), catalogued("cell", "primary")];
    fleet.packs = [
      pack("A", { item: "p", inService: day("2023-01-01") }),
      pack("B", { item: "cell", inService: day("2024-01-01") }),
    ];
    fleet.runtimeTests = [
      runtimeTest("A", day("2025-01-01"), { minutes: 60, source: onLine(2) }),
      runtimeTest("A", day("2026-01-01"), { wh: 55, source: onLine(3) }),
      runtimeTest("A", day("2027-01-01"), { minutes: 58, source: onLine(4) }),
      runtimeTest("B", day("2026-01-01"), { minutes: 30, source: onLine(5) }),
      runtimeTest("B", day("2026-02-01"), { result: "pass", source: onLine(6) }),
    ];
    const found = forecastPacks(fleet, defaultPolicy(asOf)).findings;
    expect(found.map(({ code, line, lines }) => [code, line, lines])).toEqual([
      ["test-unrated", 2, []],
      ["test-unrated", 5, []],
    ]);
  });
});
