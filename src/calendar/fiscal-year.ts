import type { Month } from "./month.ts";

/**
 * The fiscal year of a month, named by the calendar year in which it starts and, where it runs
 * over a year's end, the one in which it ends: "2027", "2026/27".
 *
 * @param startsInMonth  1 (January) to 12
 */
export function fiscalYearOfMonth(month: Month, startsInMonth: number): string {
  const start = fiscalYearStart(month, startsInMonth);
  const year = Math.floor(start / 12);
  return startsInMonth === 1 ? String(year) : `${year}/${String((year + 1) % 100).padStart(2, "0")}`;
}

/** The first month of the fiscal year in which a month lies. */
export function fiscalYearStart(month: Month, startsInMonth: number): Month {
  const intoYear = ((((month % 12) - (startsInMonth - 1)) % 12) + 12) % 12;
  return month - intoYear;
}
