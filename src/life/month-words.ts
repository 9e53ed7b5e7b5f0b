import { type Day, partsOfDay } from "../calendar/day.ts";

const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

/** "March 2026", for sentences. */
export function monthInWords(day: Day): string {
  const { month, year } = partsOfDay(day);
  return `${MONTHS[month - 1]} ${year}`;
}
