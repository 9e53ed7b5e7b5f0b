import { partsOfDay } from "../../../src/calendar/day.ts";
import { day, two } from "../story.ts";

/** A cell of the register; a number may have a spreadsheet format of its own. */
export type RegisterCell = string | number | null | { value: number; numFmt: string };

/** How one column of the register writes its dates, given as ISO text. */
export type DateStyle = (iso: string) => RegisterCell;

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
/** Day 0 of the 1900 date system, as days before 1970-01-01. */
const SERIAL_OF_1970 = 25569;

const numbers = (iso: string) => {
  const [year = "", month = "", dayOfMonth = ""] = iso.split("-");
  return { year, month, dayOfMonth, monthName: MONTHS[Number(month) - 1] ?? "" };
};

/** A real spreadsheet date in a format. */
export const spreadsheetDate =
  (numFmt: string): DateStyle =>
  (iso) => ({ value: day(iso) + SERIAL_OF_1970, numFmt });

/** Text such as 30/02/2024. */
export const slashed: DateStyle = (iso) => {
  const { year, month, dayOfMonth } = numbers(iso);
  return `${dayOfMonth}/${month}/${year}`;
};

/** Text such as 18.10.26. */
export const dotted: DateStyle = (iso) => {
  const { year, month, dayOfMonth } = numbers(iso);
  return `${Number(dayOfMonth)}.${Number(month)}.${year.slice(2)}`;
};

/** Text such as 7-Feb-22. */
export const withMonthName: DateStyle = (iso) => {
  const { year, monthName, dayOfMonth } = numbers(iso);
  return `${Number(dayOfMonth)}-${monthName}-${year.slice(2)}`;
};

/** Text such as Feb 7, 2022. */
export const monthFirst: DateStyle = (iso) => {
  const { year, monthName, dayOfMonth } = numbers(iso);
  return `${monthName} ${Number(dayOfMonth)}, ${year}`;
};

/**
 * Text such as 08/2027, which means the month's last day.
 *
 * @throws RangeError where the day is another one, which would be lost
 */
export const monthAlone: DateStyle = (iso) => {
  const at = day(iso);
  const { year, month } = partsOfDay(at);
  if (partsOfDay(at + 1).dayOfMonth !== 1) throw new RangeError(`monthAlone: ${iso} is not the last day of a month`);
  return `${two(month)}/${year}`;
};
