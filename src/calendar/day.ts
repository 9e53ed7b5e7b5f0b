import { UTCDateMini } from "@date-fns/utc/date/mini";
import { addMonths as addMonthsToDate } from "date-fns";

/**
 * A civil day as the integer number of days since 1970-01-01 (negative before).
 * Days have no time and no zone: every date in the engine is one of these.
 */
export type Day = number;

const MS_PER_DAY = 86_400_000;
const ISO_DAY = /^(\d{4})-(\d{2})-(\d{2})$/;

/**
 * The day of a year, month and day of month on the Gregorian calendar.
 *
 * @param year   1000 to 9999
 * @param month  1 to 12
 * @param dayOfMonth  1 to 31
 * @returns the day, or null where the calendar has no such day (30 February)
 */
export function dayFromParts(year: number, month: number, dayOfMonth: number): Day | null {
  if (year < 1000 || year > 9999 || month < 1 || month > 12 || dayOfMonth < 1) return null;
  const at = new Date(Date.UTC(year, month - 1, dayOfMonth));
  if (at.getUTCMonth() !== month - 1 || at.getUTCDate() !== dayOfMonth) return null;
  return dayOfTime(at);
}

/** The day of an instant at its midnight, rounded: engines keep the quotient itself as a fraction. */
export function dayOfTime(at: Date): Day {
  return Math.round(at.getTime() / MS_PER_DAY);
}

/** The day of ISO 8601 text `YYYY-MM-DD`, or null where it is no such text or no such day. */
export function dayFromIso(text: string): Day | null {
  const match = ISO_DAY.exec(text);
  return match ? dayFromParts(Number(match[1]), Number(match[2]), Number(match[3])) : null;
}

/**
 * ISO 8601 text `YYYY-MM-DD` of a day.
 *
 * @throws RangeError where the day is no finite integer
 */
export function isoFromDay(day: Day): string {
  if (!Number.isInteger(day)) throw new RangeError(`isoFromDay: a day is a whole number, not ${day}`);
  return new Date(day * MS_PER_DAY).toISOString().slice(0, 10);
}

/** ISO 8601 text of a day; null where the day is not known. */
export function isoOrNull(day: Day | null): string | null {
  return day === null ? null : isoFromDay(day);
}

/** Year, month (1 to 12) and day of month of a day. */
export function partsOfDay(day: Day): { year: number; month: number; dayOfMonth: number } {
  const at = new Date(day * MS_PER_DAY);
  return { year: at.getUTCFullYear(), month: at.getUTCMonth() + 1, dayOfMonth: at.getUTCDate() };
}

/**
 * The day a whole number of months after an anchor; a day that the target month lacks
 * becomes its last day (31 January + 1 month = 28 or 29 February). Step from the anchor
 * each time: steps of a step drift.
 */
export function addMonths(day: Day, months: number): Day {
  return dayOfTime(addMonthsToDate(new UTCDateMini(day * MS_PER_DAY), months));
}
