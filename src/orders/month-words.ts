import type { Month } from "../calendar/month.ts";

const NAMES = "January February March April May June July August September October November December".split(" ");

/** "March 2027", "March to June 2027" or "November 2026 to June 2027". */
export function monthSpanWords(from: Month, to: Month): string {
  if (from === to) return `${name(from)} ${year(from)}`;
  const start = year(from) === year(to) ? name(from) : `${name(from)} ${year(from)}`;
  return `${start} to ${name(to)} ${year(to)}`;
}

function name(month: Month): string {
  return NAMES[month % 12]!;
}

function year(month: Month): number {
  return Math.floor(month / 12);
}
