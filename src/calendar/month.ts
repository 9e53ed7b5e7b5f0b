import { type Day, dayOfTime, partsOfDay } from "./day.ts";

/** A calendar month as year * 12 + (month - 1): 2027-03 is 24326. Months step by one. */
export type Month = number;

const ISO_MONTH = /^(\d{4})-(\d{2})$/;

/** The month of a year and a month number 1 to 12. */
export function monthFromParts(year: number, month: number): Month {
  return year * 12 + month - 1;
}

/** The month in which a day lies. */
export function monthOfDay(day: Day): Month {
  const { year, month } = partsOfDay(day);
  return monthFromParts(year, month);
}

/** The month's first day. */
export function firstDayOfMonth(month: Month): Day {
  return dayOfTime(new Date(Date.UTC(Math.floor(month / 12), month % 12, 1)));
}

/** The month's last day. */
export function lastDayOfMonth(month: Month): Day {
  return firstDayOfMonth(month + 1) - 1;
}

/** `YYYY-MM` of a month. */
export function monthText(month: Month): string {
  return `${String(Math.floor(month / 12)).padStart(4, "0")}-${String((month % 12) + 1).padStart(2, "0")}`;
}

/** The month of `YYYY-MM`, or null where the text is no such month. */
export function monthFromText(text: string): Month | null {
  const match = ISO_MONTH.exec(text);
  if (!match) return null;
  const number = Number(match[2]);
  return number >= 1 && number <= 12 ? monthFromParts(Number(match[1]), number) : null;
}
