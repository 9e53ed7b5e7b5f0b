import { type Day, dayFromParts, partsOfDay } from "../../calendar/day.ts";
import { firstDayOfMonth, lastDayOfMonth, monthFromParts } from "../../calendar/month.ts";

/**
 * The full year of a label's two digits: the one within 49 years before and 50 after the current year.
 *
 * @see GS1 General Specifications, section 7.12 (determination of century in dates)
 */
export function labelYear(twoDigits: number, asOf: Day): number {
  const year = partsOfDay(asOf).year;
  const ahead = twoDigits - (year % 100);
  const century = year - (year % 100);
  if (ahead >= 51) return century - 100 + twoDigits;
  return ahead <= -50 ? century + 100 + twoDigits : century + twoDigits;
}

/**
 * The day of YYMMDD on a label; day 00 is the month's last day for a use-by date and its first for a
 * manufacturing date. null where the calendar has no such day.
 *
 * @see GS1 General Specifications, AI 17: day 00 is the last day of the noted month
 */
export function labelDay(text: string, asOf: Day, without: "first" | "last"): Day | null {
  if (!/^\d{6}$/.test(text)) return null;
  const year = labelYear(Number(text.slice(0, 2)), asOf);
  const month = Number(text.slice(2, 4));
  const day = Number(text.slice(4));
  return day === 0 ? monthEdge(year, month, without) : dayFromParts(year, month, day);
}

/** The first or last day of a month; null where no month has that number. */
export function monthEdge(year: number, month: number, edge: "first" | "last"): Day | null {
  if (month < 1 || month > 12) return null;
  const at = monthFromParts(year, month);
  return edge === "last" ? lastDayOfMonth(at) : firstDayOfMonth(at);
}

/** The day of a year and an ordinal day of the year, 1 to 366; null where the year has none. */
export function dayOfYear(year: number, ordinal: number): Day | null {
  const first = dayFromParts(year, 1, 1);
  if (first === null || ordinal < 1) return null;
  const day = first + ordinal - 1;
  return partsOfDay(day).year === year ? day : null;
}
