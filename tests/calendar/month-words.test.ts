import { describe, expect, it } from "vitest";
import { dayFromIso } from "../../src/calendar/day.ts";
import { monthFromText } from "../../src/calendar/month.ts";
import { monthNamed, monthOfDayWords, monthSpanWords } from "../../src/calendar/month-words.ts";

const span = (from: string, to: string) => monthSpanWords(monthFromText(from)!, monthFromText(to)!);

describe("months in words", () => {
  it("name the year once where both months lie in it", () => {
    expect(span("2027-03", "2027-03")).toBe("March 2027");
    expect(span("2027-03", "2027-06")).toBe("March to June 2027");
    expect(span("2026-11", "2027-06")).toBe("November 2026 to June 2027");
    expect(monthOfDayWords(dayFromIso("2027-12-31")!)).toBe("December 2027");
  });
  it("are known by three first letters or more, in any case, and by fewer never", () => {
    expect(["apr", "APRIL", "Sept", "sep", "may", "dec"].map(monthNamed)).toEqual([4, 4, 9, 9, 5, 12]);
    expect(["ap", "D", "", "march 2027", "mai"].map(monthNamed)).toEqual([null, null, null, null, null]);
  });
});
