import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addMonths, dayFromIso, dayFromParts, isoFromDay, partsOfDay } from "../../src/calendar/day.ts";

const day = (iso: string) => dayFromIso(iso)!;

describe("dayFromIso and isoFromDay", () => {
  // Source: spreadsheet serial dates, 1900 system, date = 1899-12-30 + serial from serial 61 on (ECMA-376 part 1,
  // 18.17.4.1); pairs read in public texts: 61, 25569, 36161, 39448, 40179; others computed from the same rule.
  it.each([
    [61, "1900-03-01"],
    [25569, "1970-01-01"],
    [36161, "1999-01-01"],
    [36526, "2000-01-01"],
    [39448, "2008-01-01"],
    [40179, "2010-01-01"],
    [45351, "2024-02-29"],
    [46351, "2026-11-25"],
    [2958465, "9999-12-31"],
  ])("agree with spreadsheet serial %i = %s", (serial, iso) => {
    expect(day(iso) - day("1899-12-30")).toBe(serial);
    expect(isoFromDay(serial - 25569)).toBe(iso);
  });

  // Source: 1904 system, ECMA-376 part 1, 18.17.4.1: difference 1462 days.
  it.each([
    [0, "1904-01-01"],
    [24107, "1970-01-01"],
    [35064, "2000-01-01"],
    [44889, "2026-11-25"],
  ])("agree with 1904 serial %i = %s", (serial, iso) => {
    expect(day(iso) - day("1904-01-01")).toBe(serial);
  });

  it("refuse days that the calendar lacks and text that is no ISO day", () => {
    for (const text of [
      "2023-02-29",
      "2026-02-30",
      "2026-13-01",
      "2026-00-10",
      "2026-1-1",
      "01/02/2026",
      " 2026-01-01",
    ]) {
      expect(dayFromIso(text), text).toBeNull();
    }
    expect(dayFromParts(2024, 2, 29)).not.toBeNull();
    expect(dayFromParts(2100, 2, 29)).toBeNull();
  });

  it("undo each other", () => {
    fc.assert(
      fc.property(fc.integer({ min: -25567, max: 80000 }), (n) => {
        expect(day(isoFromDay(n))).toBe(n);
        const { year, month, dayOfMonth } = partsOfDay(n);
        expect(dayFromParts(year, month, dayOfMonth)).toBe(n);
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it("refuse half days", () => {
    expect(() => isoFromDay(0.5)).toThrow(RangeError);
  });
});

describe("addMonths", () => {
  // Common rule, no source: a day that the month lacks becomes its last day. Values computed with an independent
  // calendar library.
  it.each([
    ["2024-01-31", 1, "2024-02-29"],
    ["2023-01-31", 1, "2023-02-28"],
    ["2024-02-29", 12, "2025-02-28"],
    ["2024-02-29", 48, "2028-02-29"],
    ["2023-08-31", 6, "2024-02-29"],
    ["2026-11-30", 3, "2027-02-28"],
    ["2025-03-31", -1, "2025-02-28"],
  ])("%s + %i months = %s", (from, months, to) => {
    expect(isoFromDay(addMonths(day(from), months))).toBe(to);
  });

  it("never drifts when stepped from the anchor", () => {
    const anchor = day("2026-01-31");
    expect([1, 2, 3].map((n) => isoFromDay(addMonths(anchor, n)))).toEqual(["2026-02-28", "2026-03-31", "2026-04-30"]);
  });
});
