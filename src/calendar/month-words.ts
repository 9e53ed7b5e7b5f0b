import type { Day } from "./day.ts";
import { type Month, monthOfDay } from "./month.ts";

const NAMES = "January February March April May June July August September October November December".split(" ");

/** "March 2027", "March to June 2027" or "November 2026 to June 2027". */
export function monthSpanWords(from: Month, to: Month): string {
  if (from === to) return monthWords(from);
  const start = year(from) === year(to) ? name(from) : monthWords(from);
  return `${start} to ${monthWords(to)}`;
}

/** "March 2027": the month of a day. */
export function monthOfDayWords(day: Day): string {
  return monthWords(monthOfDay(day));
}

/** The month of the year, 1 to 12, by its English name or its first letters, three or more; null where it is none. */
export function monthNamed(text: string): number | null {
  const named = NAMES.findIndex((one) => text.length > 2 && one.toLowerCase().startsWith(text.toLowerCase()));
  return named < 0 ? null : named + 1;
}

function monthWords(month: Month): string {
  return `${name(month)} ${year(month)}`;
}

function name(month: Month): string {
  return NAMES[month % 12]!;
}

function year(month: Month): number {
  return Math.floor(month / 12);
}
