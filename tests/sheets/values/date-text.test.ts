import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../../src/calendar/day.ts";
import { readDateText } from "../../../src/sheets/values/date-text.ts";

function meaning(text: string): string | null {
  const written = readDateText(text);
  if (written === null) return null;
  if (written.kind === "bad") return "bad";
  if (written.kind === "ordered") {
    return Object.entries(written.days)
      .map(([order, day]) => `${order} ${day === null ? "-" : isoFromDay(day)}`)
      .join(", ");
  }
  const first = isoFromDay(written.first);
  return written.first === written.last ? first : `${first}/${isoFromDay(written.last)}`;
}

describe("readDateText", () => {
  // Source: ISO 8601 week dates and ordinal dates, as computed by a published calendar library.
  it.each([
    ["2004-W53-6", "2005-01-01"],
    ["2004-W53-7", "2005-01-02"],
    ["2005-W52-6", "2005-12-31"],
    ["2007-W01-1", "2007-01-01"],
    ["2008-W01-1", "2007-12-31"],
    ["2008-W52-7", "2008-12-28"],
    ["2009-W01-1", "2008-12-29"],
    ["2009-W53-7", "2010-01-03"],
    ["2020-W53-4", "2020-12-31"],
    ["2025-W01-1", "2024-12-30"],
    ["2026-W53-7", "2027-01-03"],
    ["2024-365", "2024-12-30"],
    ["2025-W53-1", "bad"],
    ["2025-366", "bad"],
  ])("reads the ISO 8601 date %s as %s", (text, expected) => {
    expect(meaning(text)).toBe(expected);
  });

  // Source: published pairs of the 1900 date system.
  it.each([
    ["36161", "1999-01-01"],
    ["40179", "2010-01-01"],
    ["45351", "2024-02-29"],
    ["46351", "2026-11-25"],
    ["46351.75", "2026-11-25"],
  ])("reads the day number %s as %s", (text, expected) => {
    expect(meaning(text)).toBe(expected);
  });

  // By hand, from the calendar; common practice, no source.
  it.each([
    ["Mo 14.05.2026", "dmy 2026-05-14, mdy -, ymd -"],
    ["Tue, 03/31/2026", "dmy -, mdy 2026-03-31, ymd -"],
    ["end 2027", "2027-12-31"],
    ["Ende 2028", "2028-12-31"],
    ["end of 03/2027", "2027-03-31"],
    ["fr 45292", null],
    ["2027年3月31日", "2027-03-31"],
    ["2027年3月", "2027-03-01/2027-03-31"],
    ["31/12/2026", "dmy 2026-12-31, mdy -, ymd -"],
    ["03/04/2027", "dmy 2027-04-03, mdy 2027-03-04, ymd -"],
    ["27-03-31", "dmy 2031-03-27, mdy -, ymd 2027-03-31"],
    ["14-Mar-27", "2027-03-14"],
    ["Mar-27", "2027-03-01/2027-03-31"],
    ["March 2027", "2027-03-01/2027-03-31"],
    ["1er avril 2027", "2027-04-01"],
    ["15. August 2027", "2027-08-15"],
    ["15 août 2027", "2027-08-15"],
    ["15 de agosto de 2027", "2027-08-15"],
    ["15 augustus 2027", "2027-08-15"],
    ["Febuary 2028", "2028-02-01/2028-02-29"],
    ["Q2 2027", "2027-04-01/2027-06-30"],
    ["2027-Q4", "2027-10-01/2027-12-31"],
    ["3. Quartal 2027", "2027-07-01/2027-09-30"],
    ["KW 14/2027", "2027-04-05/2027-04-11"],
    ["end of March 2027", "2027-03-31"],
    ["2027-03-31T23:59:59+02:00", "2027-03-31"],
    ["3/31/2027 11:59 PM", "dmy -, mdy 2027-03-31, ymd -"],
    ["20270331", "2027-03-31"],
    ["01/89", "2089-01-01/2089-01-31"],
    ["01/90", "1990-01-01/1990-01-31"],
    ["2027-13", "bad"],
    ["29.02.2027", "bad"],
    ["27 Mar", "bad"],
    ["2027", "bad"],
    ["soon", null],
    ["B1", null],
  ])("reads %s as %s", (text, expected) => {
    expect(meaning(text)).toBe(expected);
  });
});
