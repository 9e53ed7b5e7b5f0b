import { dayFromIso, isoFromDay, lastDayOfMonth, monthFromText, monthText } from "../src/index.ts";

/** Months as `YYYY-MM` and days as `YYYY-MM-DD`, as plan.json writes them; both sort as text. */

const MS_PER_DAY = 86_400_000;

/** The month that lies `steps` after a month. */
export function monthAfter(month: string, steps: number): string {
  return monthText(monthFromText(month)! + steps);
}

/** Every month from one to another, both included. */
export function monthsBetween(from: string, to: string): string[] {
  const months: string[] = [];
  for (let month = from; month <= to; month = monthAfter(month, 1)) months.push(month);
  return months;
}

/** Day number (days since 1970-01-01) of `YYYY-MM-DD`. */
export function dayNumber(day: string): number {
  return dayFromIso(day)!;
}

/** `YYYY-MM-DD` of a day number; of a time of day, its day. */
export function dayText(day: number): string {
  return isoFromDay(Math.floor(day));
}

/** Day number of a month's last day. */
export function monthEnd(month: string): number {
  return lastDayOfMonth(monthFromText(month)!);
}

/** Day numbers of the last days of `count` months from one on. */
export function monthEnds(from: string, count: number): number[] {
  return Array.from({ length: count }, (_, index) => monthEnd(monthAfter(from, index)));
}

/** Today on the reader's own calendar, as a day number. The engine has no clock: this is where as-of comes from. */
export function todayHere(): number {
  const now = new Date();
  return Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / MS_PER_DAY;
}
