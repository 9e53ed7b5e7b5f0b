import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../src/calendar/day.ts";
import { emptyFleet, type Fleet, type RuntimeTestRow } from "../../src/fleet/rows.ts";
import { swapFindings } from "../../src/life/reading-findings.ts";
import { withoutOldPacks } from "../../src/life/swapped-packs.ts";
import { day, pack } from "../fleet/make-rows.ts";

const asOf = day("2026-11-01");

const source = { file: "made-up.csv", sheet: null, line: 2 };

function test(iso: string, percent: number, cycles: number | null): RuntimeTestRow {
  const blank = { minutes: null, wh: null, ah: null, result: null, loadW: null, temperatureC: null };
  return { serial: "S-1", date: day(iso), percent, cycles, ...blank, fullCharge: null, atLeast: null, source };
}

/** One pack by its tests: date, percent, cycles. */
function fleetOf(tests: [string, number, number | null][]): Fleet {
  const row = pack("S-1", { item: "p", made: day("2022-12-01"), inService: day("2023-01-01") });
  return {
    ...emptyFleet(),
    packs: [row],
    runtimeTests: tests.map((row) => test(...row)),
  };
}

const OLD: [string, number, number][] = [
  ["2023-07-01", 98, 20],
  ["2024-07-01", 93, 90],
  ["2025-01-01", 85, 140],
];

describe("withoutOldPacks", () => {
  it("takes a pack whose counter began anew and whose capacity came back for a newer one, and says so", () => {
    const given = fleetOf([...OLD, ["2025-07-01", 99, 5], ["2026-07-01", 97, 60]]);
    const { fleet, swaps } = withoutOldPacks(given, asOf);
    expect(fleet.runtimeTests.map(({ percent }) => percent)).toEqual([99, 97]);
    expect(fleet.packs[0]).toMatchObject({ made: null, inService: day("2025-04-01") });
    const [found] = swapFindings(swaps);
    expect(found).toMatchObject({ code: "pack-swapped", severity: "warning", file: "made-up.csv", value: "5" });
    expect(found!.message).toBe(
      '"S-1" had 140 cycles on 2025-01-01 and 5 on 2025-07-01, and its capacity came back: it is taken for a newer pack, in service since 2025-04-01.',
    );
    // the same fleet gives the same answer, so that fits are kept
    expect(withoutOldPacks(given, asOf).fleet).toBe(fleet);
  });

  it.each([
    ["whose counter was only reset", [...OLD, ["2025-07-01", 84, 5], ["2026-07-01", 81, 60]]],
    // three points come back by the scatter of two tests
    [
      "whose counter was only reset before a good test",
      [OLD[0], ["2024-07-01", 86, 90], OLD[2], ["2025-07-01", 88, 5], ["2026-07-01", 87, 60]],
    ],
    ["whose capacity only looked low once", [...OLD.slice(0, 2), ["2025-01-01", 70, 140], ["2025-07-01", 91, 5]]],
    // 99 may be a bad test: the next lies among those before
    ["of which one test stands out after the reset", [...OLD, ["2025-07-01", 99, 5], ["2026-07-01", 90, 60]]],
    ["whose count was miscounted by a few", [...OLD, ["2025-07-01", 99, 130]]],
    ["that is counted nowhere", OLD.map(([date, percent]) => [date, percent, null])],
  ] as [string, [string, number, number | null][]][])("leaves a pack alone %s", (_, tests) => {
    const given = fleetOf(tests);
    expect(withoutOldPacks(given, asOf)).toEqual({ fleet: given, swaps: [] });
  });

  // By hand: capacity came back in July 2025, when a pack was swapped, and not in January 2026, when its counter was reset
  it("finds a pack that was swapped also where its counter was reset later on", () => {
    const given = fleetOf([...OLD, ["2025-07-01", 99, 60], ["2026-01-01", 98, 3], ["2026-07-01", 97, 40]]);
    const { fleet, swaps } = withoutOldPacks(given, asOf);
    expect(swaps.map(({ since }) => isoFromDay(since))).toEqual(["2025-04-01"]);
    expect(fleet.runtimeTests.map(({ percent }) => percent)).toEqual([99, 98, 97]);
  });

  it("keeps the sheet's dates where they are the newer pack's: in service between the last test of the old and the first of the new", () => {
    const given = fleetOf([...OLD, ["2025-07-01", 99, 5], ["2026-07-01", 97, 60]]);
    const since = (iso: string) => {
      const packs = [pack("S-1", { item: "p", made: day("2024-09-01"), inService: day(iso) })];
      const [row] = withoutOldPacks({ ...given, packs }, asOf).fleet.packs;
      return [row!.made, row!.inService].map((one) => one && isoFromDay(one));
    };
    expect(since("2025-01-02")).toEqual(["2024-09-01", "2025-01-02"]);
    expect(since("2025-07-01")).toEqual(["2024-09-01", "2025-07-01"]);
    expect(since("2025-01-01")).toEqual([null, "2025-04-01"]);
    expect(since("2025-07-02")).toEqual([null, "2025-04-01"]);
  });

  it("knows nothing of a swap that comes after as-of", () => {
    const given = fleetOf([...OLD, ["2025-07-01", 99, 5]]);
    expect(withoutOldPacks(given, day("2025-03-01")).swaps).toEqual([]);
    expect(isoFromDay(withoutOldPacks(given, asOf).swaps[0]!.after.date)).toBe("2025-07-01");
  });
});
