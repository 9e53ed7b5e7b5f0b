import { expect, it } from "vitest";
import { fiscalYearOfMonth, fiscalYearStart } from "../../src/calendar/fiscal-year.ts";
import { monthFromText, monthText } from "../../src/calendar/month.ts";

// By hand, of years that start in January, in April, in December
it.each([
  ["2027-01", 1, "2027", "2027-01"],
  ["2027-12", 1, "2027", "2027-01"],
  ["2027-03", 4, "2026/27", "2026-04"],
  ["2027-04", 4, "2027/28", "2027-04"],
  ["2099-12", 4, "2099/00", "2099-04"],
  ["2027-11", 12, "2026/27", "2026-12"],
  ["2027-12", 12, "2027/28", "2027-12"],
])("%s, of years that start in month %i, lies in %s", (text, startsInMonth, name, from) => {
  const month = monthFromText(text)!;
  expect(fiscalYearOfMonth(month, startsInMonth)).toBe(name);
  expect(monthText(fiscalYearStart(month, startsInMonth))).toBe(from);
});
