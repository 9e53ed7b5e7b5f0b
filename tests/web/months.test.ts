import { describe, expect, it } from "vitest";
import { dayNumber, dayText, monthAfter, monthEnd, monthsBetween } from "../../web/months.ts";

describe("months as text", () => {
  it("step over a year's end both ways", () => {
    expect(monthAfter("2026-11", 3)).toBe("2027-02");
    expect(monthAfter("2027-02", -3)).toBe("2026-11");
    expect(monthsBetween("2026-11", "2027-02")).toEqual(["2026-11", "2026-12", "2027-01", "2027-02"]);
  });

  // Gregorian rule: 2028 is a leap year, 2100 is none.
  it("end on the calendar's last day", () => {
    expect(dayText(monthEnd("2028-02"))).toBe("2028-02-29");
    expect(dayText(monthEnd("2100-02"))).toBe("2100-02-28");
  });

  it("count days from 1 January 1970", () => {
    expect(dayNumber("1970-01-01")).toBe(0);
    expect(dayNumber("2000-03-01")).toBe(11017);
  });
});
