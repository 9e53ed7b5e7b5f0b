import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayFromIso, isoFromDay } from "../../src/calendar/day.ts";
import { fiscalYearOfMonth, fiscalYearStart } from "../../src/calendar/fiscal-year.ts";
import {
  firstDayOfMonth,
  lastDayOfMonth,
  monthFromParts,
  monthFromText,
  monthOfDay,
  monthText,
} from "../../src/calendar/month.ts";

const month = (text: string) => monthFromText(text)!;

describe("months", () => {
  // GS1 General Specifications read "130200" as 28 February 2013 and "160200" as 29 February 2016.
  it.each([
    ["2013-02", "2013-02-28"],
    ["2016-02", "2016-02-29"],
    ["2026-06", "2026-06-30"],
    ["2000-02", "2000-02-29"],
    ["1999-12", "1999-12-31"],
  ])("%s ends on %s", (text, last) => {
    expect(isoFromDay(lastDayOfMonth(month(text)))).toBe(last);
  });

  it("hold every day between their first and last", () => {
    fc.assert(
      fc.property(fc.integer({ min: -20000, max: 60000 }), (day) => {
        const m = monthOfDay(day);
        expect(firstDayOfMonth(m)).toBeLessThanOrEqual(day);
        expect(lastDayOfMonth(m)).toBeGreaterThanOrEqual(day);
        expect(month(monthText(m))).toBe(m);
        expect(firstDayOfMonth(m + 1)).toBe(lastDayOfMonth(m) + 1);
      }),
      { seed: 2, numRuns: 300 },
    );
  });

  it("refuse text that is no month", () => {
    for (const text of ["2026-13", "2026-00", "2026-1", "2026", "2026-01-01"]) expect(monthFromText(text)).toBeNull();
  });
});

describe("fiscal years", () => {
  it("are calendar years where they start in January", () => {
    expect(fiscalYearOfMonth(month("2026-01"), 1)).toBe("2026");
    expect(fiscalYearOfMonth(month("2026-12"), 1)).toBe("2026");
  });

  it("carry both years where they run over a year's end", () => {
    expect(fiscalYearOfMonth(month("2026-03"), 4)).toBe("2025/26");
    expect(fiscalYearOfMonth(month("2026-04"), 4)).toBe("2026/27");
    expect(fiscalYearOfMonth(month("1999-10"), 10)).toBe("1999/00");
  });

  it("start in the stated month and hold twelve", () => {
    fc.assert(
      fc.property(fc.integer({ min: 23000, max: 26000 }), fc.integer({ min: 1, max: 12 }), (m, starts) => {
        const first = fiscalYearStart(m, starts);
        expect((first % 12) + 1).toBe(starts);
        expect(m - first).toBeGreaterThanOrEqual(0);
        expect(m - first).toBeLessThan(12);
      }),
      { seed: 3, numRuns: 200 },
    );
    expect(monthFromParts(2026, 4)).toBe(month("2026-04"));
    expect(dayFromIso("2026-04-01")).toBe(firstDayOfMonth(month("2026-04")));
  });
});
